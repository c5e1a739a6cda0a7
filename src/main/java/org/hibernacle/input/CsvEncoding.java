package org.hibernacle.input;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.ZipException;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;

/**
 * How the characters of a file are written.
 *
 * @param charset in which all of it can be read
 * @param guessed whether UTF-8 had to be given up without a mark or an option that says so
 */
record CsvEncoding(Charset charset, boolean guessed) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  /** What Japanese programs call Shift_JIS, with the signs that they add to it. */
  private static final Charset JAPANESE = Charset.forName("windows-31j");

  /** "Air temperature", or "year, month, day": no text of another encoding reads like that. */
  private static final Pattern JAPANESE_HEADING =
      Pattern.compile("\u6C17\u6E29|\u5E74\u6708\u65E5");

  private static final ByteOrderMark[] MARKS = {
    ByteOrderMark.UTF_8, ByteOrderMark.UTF_16LE, ByteOrderMark.UTF_16BE
  };
  private static final byte[] OLD_WORKBOOK = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

  /** What reading a whole file in one encoding showed. */
  private enum Trial {
    TEXT,
    JAPANESE_TEXT,
    OTHER_BYTES,
    NOT_TEXT,
    EMPTY
  }

  /**
   * Finds it by reading the whole file: the one asked for, its mark, UTF-8, Japanese if headings
   * read so, else Windows-1252.
   */
  static CsvEncoding of(CsvSource source, Optional<Charset> asked) throws UnreadableCsv {
    try {
      refuseOldWorkbook(source);
      if (asked.isPresent()) {
        return asked(source, asked.get());
      }
      Charset marked = marked(source);
      if (isText(source, marked)) {
        return new CsvEncoding(marked, false);
      }
      if (trial(source, JAPANESE) == Trial.JAPANESE_TEXT) {
        return new CsvEncoding(JAPANESE, true);
      }
      if (isText(source, WINDOWS_1252)) {
        return new CsvEncoding(WINDOWS_1252, true);
      }
    } catch (IOException e) {
      throw unreadable(source, e);
    }
    throw new UnreadableCsv("IN-302", source.name());
  }

  /** As keepers know it. */
  String shown() {
    return charset.equals(WINDOWS_1252)
        ? "Windows-1252"
        : charset.equals(JAPANESE) ? "Shift_JIS" : charset.name();
  }

  /** The stream behind a byte-order mark. */
  BOMInputStream open(CsvSource source) throws IOException {
    return bytes(source);
  }

  static UnreadableCsv unreadable(CsvSource source, IOException e) {
    if (e instanceof CsvSource.TooLarge) {
      return new UnreadableCsv("IN-400.large", source.name(), CsvSource.LARGEST_UNPACKED >> 30);
    }
    if (e instanceof ZipException || e instanceof EOFException) {
      return new UnreadableCsv("IN-400.packed", source.name());
    }
    return new UnreadableCsv("IN-301", source.name());
  }

  private static CsvEncoding asked(CsvSource source, Charset charset)
      throws IOException, UnreadableCsv {
    if (!isText(source, charset)) {
      throw new UnreadableCsv("IN-401", source.name(), charset.name());
    }
    // The mark is skipped before decoding, so it has to tell which half of UTF-16 it is.
    Charset half = charset.equals(StandardCharsets.UTF_16) ? marked(source) : charset;
    return new CsvEncoding(half.equals(StandardCharsets.UTF_8) ? charset : half, false);
  }

  private static boolean isText(CsvSource source, Charset charset)
      throws IOException, UnreadableCsv {
    Trial trial = trial(source, charset);
    if (trial == Trial.NOT_TEXT) {
      throw new UnreadableCsv("IN-302", source.name());
    }
    if (trial == Trial.EMPTY) {
      throw new UnreadableCsv("IN-302.empty", source.name());
    }
    return trial != Trial.OTHER_BYTES;
  }

  private static Trial trial(CsvSource source, Charset charset) throws IOException {
    boolean empty = true;
    boolean japanese = false;
    try (Reader reader = CsvText.reader(charset, bytes(source))) {
      char[] buffer = new char[1 << 15];
      for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
        String part = new String(buffer, 0, n);
        if (part.indexOf('\0') >= 0) {
          return Trial.NOT_TEXT;
        }
        japanese |= empty && JAPANESE_HEADING.matcher(part).find();
        empty &= part.isBlank();
      }
    } catch (CharacterCodingException e) {
      return Trial.OTHER_BYTES;
    }
    return empty ? Trial.EMPTY : japanese ? Trial.JAPANESE_TEXT : Trial.TEXT;
  }

  private static Charset marked(CsvSource source) throws IOException {
    try (BOMInputStream in = bytes(source)) {
      return in.hasBOM() ? Charset.forName(in.getBOMCharsetName()) : StandardCharsets.UTF_8;
    }
  }

  private static void refuseOldWorkbook(CsvSource source) throws IOException, UnreadableCsv {
    try (InputStream in = source.open()) {
      if (Arrays.equals(in.readNBytes(4), OLD_WORKBOOK)) {
        throw new UnreadableCsv("IN-302.old-workbook", source.name());
      }
    }
  }

  private static BOMInputStream bytes(CsvSource source) throws IOException {
    return BOMInputStream.builder().setInputStream(source.open()).setByteOrderMarks(MARKS).get();
  }
}
