package org.hibernacle.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Phrase;

/** Opens a workbook from its bytes, so that the file itself is never written to. */
final class WorkbookFile {
  /** Largest file, and largest unpacked part of it, in bytes. A season's plan has under 1 MB. */
  private static final int LARGEST = 64 << 20;

  /** Length of the record that ends a zip archive, without its comment. */
  private static final int END_RECORD_BYTES = 22;

  private static final String ENCRYPTED_PART = "EncryptedPackage";

  static {
    ZipSecureFile.setMaxEntrySize(LARGEST);
    // What it unpacks to is counted before; sheets of equal rows pack a thousand to one.
    ZipSecureFile.setMinInflateRatio(0);
  }

  private WorkbookFile() {}

  /** Reads something from the bytes of a file; empty after errors. */
  interface Reading<T> {
    Optional<T> from(InputStream in) throws IOException;
  }

  /**
   * What a file holds, or empty with an error where it can not be opened or breaks off.
   *
   * @param expected kind of file, for messages
   */
  static <T> Optional<T> read(Path file, Phrase expected, Problems problems, Reading<T> reading) {
    try (InputStream in = Files.newInputStream(file)) {
      return reading.from(in);
    } catch (NoSuchFileException e) {
      problems.error("IN-101.none", file.toString(), expected);
    } catch (IOException e) {
      problems.error(Code.UNREADABLE_FILE, file.toString(), String.valueOf(e.getMessage()));
    }
    return Optional.empty();
  }

  /**
   * The workbook, or empty with one error that says what to do.
   *
   * @param in read to its end, not closed
   * @param file name for messages
   */
  static Optional<XSSFWorkbook> open(InputStream in, String file, Problems problems)
      throws IOException {
    byte[] bytes = in.readNBytes(LARGEST + 1);
    if (bytes.length == 0) {
      problems.error(Code.EMPTY_FILE, file);
      return Optional.empty();
    }
    if (bytes.length > LARGEST) {
      problems.error("IN-440.file", file);
      return Optional.empty();
    }
    return switch (FileMagic.valueOf(bytes)) {
      case OOXML -> parse(bytes, file, problems);
      case OLE2 -> refuseOldContainer(bytes, file, problems);
      default -> refuseOther(bytes, file, problems);
    };
  }

  private static Optional<XSSFWorkbook> parse(byte[] bytes, String file, Problems problems) {
    WorkbookParts parts = WorkbookParts.of(bytes);
    if (parts.kind().isPresent()) {
      problems.error(Code.NOT_A_WORKBOOK, file, parts.kind().get());
      return Optional.empty();
    }
    if (parts.tooLarge()) {
      problems.error("IN-440.parts", file);
      return Optional.empty();
    }
    if (parts.tooMany().isPresent()) {
      problems.error(Code.TOO_MUCH, file, parts.tooMany().get());
      return Optional.empty();
    }
    if (!parts.whole() || !hasEnd(bytes)) {
      return refuseDamaged(file, problems);
    }
    try {
      XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes));
      int promised = book.getCTWorkbook().getSheets().sizeOfSheetArray();
      if (promised > 0 && promised == book.getNumberOfSheets()) {
        return Optional.of(book);
      }
      book.close();
    } catch (IOException
        | POIXMLException
        | OpenXML4JRuntimeException
        | IllegalArgumentException
        | IllegalStateException e) {
      // Every one of these means the same to the keeper; the message below says what to do.
    }
    return refuseDamaged(file, problems);
  }

  private static Optional<XSSFWorkbook> refuseDamaged(String file, Problems problems) {
    problems.error(Code.DAMAGED, file);
    return Optional.empty();
  }

  /** The library reads what it can of a file that was cut off; half an inventory is none. */
  private static boolean hasEnd(byte[] bytes) {
    for (int i = bytes.length - END_RECORD_BYTES; i >= Math.max(0, bytes.length - 66_000); i--) {
      if (bytes[i] == 'P' && bytes[i + 1] == 'K' && bytes[i + 2] == 5 && bytes[i + 3] == 6) {
        return true;
      }
    }
    return false;
  }

  /** Workbooks of before 2007 and encrypted ones share a container. */
  private static Optional<XSSFWorkbook> refuseOldContainer(
      byte[] bytes, String file, Problems problems) {
    if (isEncrypted(bytes)) {
      problems.error(Code.ENCRYPTED, file);
    } else {
      problems.error(Code.OLD_WORKBOOK, file);
    }
    return Optional.empty();
  }

  private static boolean isEncrypted(byte[] bytes) {
    try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      return files.getRoot().hasEntryCaseInsensitive(ENCRYPTED_PART);
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      return false;
    }
  }

  private static Optional<XSSFWorkbook> refuseOther(byte[] bytes, String file, Problems problems) {
    problems.error(looksLikeText(bytes) ? "IN-103.text" : "IN-103.other", file);
    return Optional.empty();
  }

  private static boolean looksLikeText(byte[] bytes) {
    for (int i = 0; i < Math.min(bytes.length, 1000); i++) {
      if (bytes[i] >= 0 && bytes[i] < ' ' && "\t\r\n\f".indexOf(bytes[i]) < 0) {
        return false;
      }
    }
    return true;
  }
}
