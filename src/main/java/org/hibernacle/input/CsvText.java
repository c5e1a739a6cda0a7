package org.hibernacle.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;

/**
 * A text file of known encoding, read row by row. The only place that meets the CSV library and its
 * exceptions.
 *
 * @param path of the file
 * @param charset in which all of it can be read
 */
record CsvText(Path path, Charset charset) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final byte[] ZIP = {'P', 'K', 3, 4};
  private static final byte[] OLD_WORKBOOK = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
  private static final ByteOrderMark[] MARKS = {
    ByteOrderMark.UTF_8, ByteOrderMark.UTF_16LE, ByteOrderMark.UTF_16BE
  };

  /**
   * One row.
   *
   * @param line of the file on which it ends, from 1
   * @param cells trimmed
   */
  record Row(long line, List<String> cells) {
    boolean blank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  /** Finds the encoding by reading the whole file once: its mark, UTF-8, else Windows-1252. */
  static CsvText open(Path path) throws UnreadableCsv {
    try (BOMInputStream in = bytes(path)) {
      refuseWorkbook(path);
      Charset marked =
          in.hasBOM() ? Charset.forName(in.getBOMCharsetName()) : StandardCharsets.UTF_8;
      if (readsAs(marked, in, path)) {
        return new CsvText(path, marked);
      }
    } catch (NoSuchFileException e) {
      throw new UnreadableCsv("IN-301", path.toString(), "no such file", "a temperature file");
    } catch (IOException e) {
      throw unreadable(path);
    }
    try (BOMInputStream in = bytes(path)) {
      if (readsAs(WINDOWS_1252, in, path)) {
        return new CsvText(path, WINDOWS_1252);
      }
    } catch (IOException e) {
      throw unreadable(path);
    }
    throw notText(path, "bytes that are not text");
  }

  /** Whether UTF-8 had to be given up. */
  boolean guessedEncoding() {
    return charset.equals(WINDOWS_1252);
  }

  /** Hands on every row that is not blank until {@code more} says false. */
  void rows(char delimiter, Predicate<Row> more) throws UnreadableCsv {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter)
            .setIgnoreSurroundingSpaces(delimiter != '\t')
            .setTrim(true)
            .get();
    long line = 0;
    try (RowLimitReader text = new RowLimitReader(reader(charset, bytes(path)));
        CSVParser parser = CSVParser.builder().setReader(text).setFormat(format).get()) {
      Iterator<CSVRecord> records = parser.iterator();
      while (records.hasNext()) {
        Row row = new Row(parser.getCurrentLineNumber(), records.next().toList());
        line = row.line();
        text.rowDone();
        if (!row.blank() && !more.test(row)) {
          return;
        }
      }
    } catch (UncheckedIOException | IOException e) {
      throw malformed(line + 1, e);
    }
  }

  private UnreadableCsv malformed(long line, Exception e) {
    String where = path + ", from line " + line;
    Throwable cause = e.getCause() instanceof IOException io ? io : e;
    if (cause instanceof RowLimitReader.TooLong) {
      return new UnreadableCsv("IN-304", where, "a row without an end", "one row a line");
    }
    return cause instanceof CSVException
        ? new UnreadableCsv(
            "IN-304", where, "quotes that do not match", "each quoted cell closed by a quote")
        : unreadable(path);
  }

  /** Whether the rest of the stream is text in that encoding. */
  private static boolean readsAs(Charset charset, InputStream in, Path path)
      throws IOException, UnreadableCsv {
    Reader reader = reader(charset, in);
    char[] buffer = new char[8192];
    boolean empty = true;
    try {
      for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
        String part = new String(buffer, 0, n);
        if (part.indexOf('\0') >= 0) {
          throw notText(path, "bytes that are not text");
        }
        empty &= part.isBlank();
      }
    } catch (CharacterCodingException e) {
      return false;
    }
    if (empty) {
      throw new UnreadableCsv("IN-302", path.toString(), "an empty file", "a heading and rows");
    }
    return true;
  }

  private static void refuseWorkbook(Path path) throws IOException, UnreadableCsv {
    try (InputStream in = Files.newInputStream(path)) {
      byte[] start = in.readNBytes(4);
      if (Arrays.equals(start, ZIP) || Arrays.equals(start, OLD_WORKBOOK)) {
        throw notText(path, "a workbook or an archive");
      }
    }
  }

  private static UnreadableCsv notText(Path path, String found) {
    return new UnreadableCsv(
        "IN-302",
        path.toString(),
        found,
        "text in UTF-8 or Windows-1252; a workbook can be saved as CSV");
  }

  private static BOMInputStream bytes(Path path) throws IOException {
    return BOMInputStream.builder()
        .setInputStream(Files.newInputStream(path))
        .setByteOrderMarks(MARKS)
        .get();
  }

  private static Reader reader(Charset charset, InputStream in) {
    return new InputStreamReader(
        in,
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT));
  }

  private static UnreadableCsv unreadable(Path path) {
    String found = Files.isDirectory(path) ? "a folder" : "a file that can not be read";
    return new UnreadableCsv("IN-301", path.toString(), found, "a readable temperature file");
  }
}
