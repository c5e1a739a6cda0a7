package org.hibernacle.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.hibernacle.model.Phrase;

/**
 * What an archive that may be a workbook unpacks to, counted without keeping it: whatever it claims
 * to be, no more than the limits is ever unpacked.
 *
 * @param whole whether it could be unpacked to its end
 * @param tooLarge whether it unpacks to more than a workbook may
 * @param tooMany which part holds too much for the memory there is, and of what
 * @param kind what else it is than an .xlsx workbook, if that is known
 */
record WorkbookParts(
    boolean whole, boolean tooLarge, Optional<Phrase> tooMany, Optional<Phrase> kind) {
  /** Most bytes that all parts together may unpack to. */
  static final long LARGEST = 64L << 20;

  /** Most parts; a workbook has some ten and two or three more a sheet. */
  static final int MOST_PARTS = 1000;

  /** Parts that are taken apart; pictures are not. */
  private static final Pattern MARKUP = Pattern.compile("(?i).*\\.(?:xml|rels|vml)");

  private static final int HEAD_BYTES = 4096;

  /** The namespace of the stricter of the two forms of .xlsx, which few programs write. */
  private static final String STRICT = "http://purl.oclc.org/ooxml/";

  static WorkbookParts of(byte[] archive) {
    return of(archive, Runtime.getRuntime().maxMemory());
  }

  /**
   * Counts.
   *
   * @param memoryBytes most that the program may use
   */
  static WorkbookParts of(byte[] archive, long memoryBytes) {
    Optional<Phrase> kind = Optional.empty();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      MarkupCount markup = new MarkupCount(memoryBytes);
      long unpacked = 0;
      int parts = 0;
      for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
        ZipEntry part = next;
        byte[] head = zip.readNBytes(HEAD_BYTES);
        if (kind.isEmpty()) {
          kind = kind(part.getName(), new String(head, StandardCharsets.UTF_8));
        }
        boolean counts = MARKUP.matcher(part.getName()).matches();
        Optional<MarkupCount> counted = counts ? Optional.of(markup) : Optional.empty();
        counted.ifPresent(m -> m.take(head, head.length));
        unpacked += head.length + skip(zip, LARGEST - unpacked, counted);
        if (unpacked > LARGEST || ++parts > MOST_PARTS) {
          return new WorkbookParts(true, true, Optional.empty(), kind);
        }
        Optional<Phrase> beyond = markup.beyond();
        if (beyond.isPresent()) {
          return new WorkbookParts(
              true, false, beyond.map(what -> Phrase.of("holds", part.getName(), what)), kind);
        }
      }
      return new WorkbookParts(true, false, Optional.empty(), kind);
    } catch (IOException | IllegalArgumentException e) {
      return new WorkbookParts(false, false, Optional.empty(), kind);
    }
  }

  /** Reads on to the end of the part, or until there are more bytes than allowed. */
  private static long skip(InputStream part, long allowed, Optional<MarkupCount> markup)
      throws IOException {
    byte[] buffer = new byte[1 << 16];
    long skipped = 0;
    for (int read = part.read(buffer); read >= 0; read = part.read(buffer)) {
      skipped += read;
      int length = read;
      markup.ifPresent(m -> m.take(buffer, length));
      if (skipped > allowed) {
        return skipped;
      }
    }
    return skipped;
  }

  private static Optional<Phrase> kind(String part, String head) {
    return switch (part) {
      case "mimetype" ->
          head.startsWith("application/vnd.oasis.opendocument")
              ? Optional.of(Phrase.of("kind.ods"))
              : Optional.empty();
      case "xl/workbook.bin" -> Optional.of(Phrase.of("kind.xlsb"));
      case "xl/workbook.xml" ->
          head.contains(STRICT) ? Optional.of(Phrase.of("kind.strict")) : Optional.empty();
      case "word/document.xml" -> Optional.of(Phrase.of("kind.document"));
      case "ppt/presentation.xml" -> Optional.of(Phrase.of("kind.presentation"));
      default -> Optional.empty();
    };
  }
}
