package org.hibernacle.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.SheetTable;

/** Reads what a season plan written earlier must hand on: the keeper's log. */
public final class EarlierPlan {
  private EarlierPlan() {}

  /**
   * The log of a plan file.
   *
   * @param file a season plan
   * @param logSheet name of its log sheet
   * @return empty if the file has no log, or can not be read, which is an error in {@code problems}
   */
  public static Optional<SheetTable> log(Path file, String logSheet, Problems problems) {
    String name = String.valueOf(file.getFileName());
    try (InputStream in = Files.newInputStream(file)) {
      Optional<XSSFWorkbook> opened = WorkbookFile.open(in, name, problems);
      if (opened.isEmpty()) {
        return Optional.empty();
      }
      try (XSSFWorkbook book = opened.get()) {
        Sheet sheet = book.getSheet(logSheet);
        return sheet == null
            ? Optional.empty()
            : Optional.of(SheetReader.read(name, sheet).table(0));
      }
    } catch (IOException e) {
      problems.error(
          Code.UNREADABLE_FILE,
          file.toString(),
          "the file can not be read (" + e.getMessage() + ")",
          "a file this account may read");
      return Optional.empty();
    }
  }
}
