package org.hibernacle.input;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.apache.commons.io.input.BoundedInputStream;

/**
 * Where the bytes of one table come from: a file, a compressed file, or a file in an archive. It
 * can be opened as often as needed, so that nothing has to be kept in memory.
 *
 * @param name for messages: {@code winter.zip, 2025.csv}
 * @param opener of a fresh stream
 */
record CsvSource(String name, Opener opener) {
  /** Far more than a century of readings by the minute, bytes after unpacking. */
  static final long LARGEST_UNPACKED = 4L << 30;

  /** An archive of more files than that is not a download of temperatures. */
  static final int MOST_FILES = 2000;

  private static final Pattern TABLE = Pattern.compile("(?i).*\\.(csv|txt|tsv|tab|dat|asc)");
  private static final List<String> WORKBOOK_PARTS = List.of("[content_types].xml", "mimetype");

  /** Opens a fresh stream of the bytes. */
  interface Opener {
    InputStream open() throws IOException;
  }

  /** More came out of a packed file than anybody measures. */
  static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1;
  }

  /** The file itself, what is in a compressed file, or each table of an archive by name. */
  static List<CsvSource> of(Path path) throws UnreadableCsv {
    int[] start = start(path);
    if (start[0] == 'P' && start[1] == 'K' && start[2] == 3 && start[3] == 4) {
      return inArchive(path);
    }
    if (start[0] == 0x1F && start[1] == 0x8B) {
      return List.of(
          new CsvSource(
              path.toString(),
              () -> bounded(new GZIPInputStream(Files.newInputStream(path), 1 << 16))));
    }
    return List.of(new CsvSource(path.toString(), () -> Files.newInputStream(path)));
  }

  InputStream open() throws IOException {
    return opener.open();
  }

  private static int[] start(Path path) throws UnreadableCsv {
    int[] start = new int[4];
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(4);
      for (int i = 0; i < bytes.length; i++) {
        start[i] = bytes[i] & 0xFF;
      }
      return start;
    } catch (NoSuchFileException e) {
      throw new UnreadableCsv("IN-301.none", path.toString());
    } catch (IOException e) {
      throw new UnreadableCsv(
          Files.isDirectory(path) ? "IN-301.folder" : "IN-301", path.toString());
    }
  }

  private static List<CsvSource> inArchive(Path path) throws UnreadableCsv {
    List<String> names;
    // Names that are not UTF-8 are of no weight here: they are shown, never opened on the disk.
    try (ZipFile zip = new ZipFile(path.toFile(), StandardCharsets.ISO_8859_1)) {
      if (zip.size() > MOST_FILES) {
        throw new UnreadableCsv("IN-400.many", path.toString(), zip.size());
      }
      names = zip.stream().filter(e -> !e.isDirectory()).map(ZipEntry::getName).toList();
    } catch (IOException e) {
      throw new UnreadableCsv("IN-400.archive", path.toString());
    }
    if (names.stream().anyMatch(n -> WORKBOOK_PARTS.contains(n.toLowerCase(Locale.ROOT)))) {
      throw new UnreadableCsv("IN-302.workbook", path.toString());
    }
    List<CsvSource> tables =
        names.stream()
            .filter(CsvSource::isTable)
            .sorted(Comparator.naturalOrder())
            .map(entry -> new CsvSource(path + ", " + entry, () -> entry(path, entry)))
            .toList();
    if (tables.isEmpty()) {
      throw new UnreadableCsv("IN-400.no-table", path.toString());
    }
    return tables;
  }

  /** Leaves out what packing programs add of their own. */
  private static boolean isTable(String entry) {
    String name = entry.substring(entry.lastIndexOf('/') + 1);
    return !entry.startsWith("__MACOSX/") && !name.startsWith(".") && TABLE.matcher(name).matches();
  }

  private static InputStream entry(Path path, String name) throws IOException {
    ZipFile zip = new ZipFile(path.toFile(), StandardCharsets.ISO_8859_1);
    try {
      InputStream in = zip.getInputStream(zip.getEntry(name));
      if (in == null) {
        throw new ZipException(name);
      }
      return bounded(
          new FilterInputStream(in) {
            @Override
            public void close() throws IOException {
              super.close();
              zip.close();
            }
          });
    } catch (IOException e) {
      zip.close();
      throw e;
    }
  }

  private static InputStream bounded(InputStream in) throws IOException {
    return BoundedInputStream.builder()
        .setInputStream(in)
        .setMaxCount(LARGEST_UNPACKED)
        .setOnMaxCount(
            (most, count) -> {
              throw new TooLarge();
            })
        .get();
  }
}
