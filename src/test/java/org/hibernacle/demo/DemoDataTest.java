package org.hibernacle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed files are what the builders write today. */
class DemoDataTest {
  private static final Path DEMO = Path.of("demo-data");
  private static final Path INVENTORIES = Path.of("src/test/resources/inventories");

  @TempDir Path folder = Path.of("");

  @Test
  void theTemperaturesAreThoseOfTheBuilderByteForByte() throws IOException {
    DemoTemperatures.main(new String[] {folder.toString()});
    assertEquals(
        -1,
        Files.mismatch(DEMO.resolve("temperatures.csv"), folder.resolve("temperatures.csv")),
        "first differing byte");
  }

  @Test
  void theLoggerIsThatOfTheBuilderByteForByte() throws IOException {
    DemoLogger.main(new String[] {folder.toString()});
    String name = "stone-shed-logger.csv";
    assertEquals(-1, Files.mismatch(DEMO.resolve(name), folder.resolve(name)), "first difference");
  }

  @Test
  void theReviewedWinterIsThatOfTheBuilderByteForByte() throws IOException {
    assertEquals(DemoWinter.csv(), Files.readString(DEMO.resolve(DemoWinter.TEMPERATURES)));
    assertEquals(DemoWinter.loggerCsv(), Files.readString(DEMO.resolve(DemoWinter.LOGGER)));
  }

  @Test
  void theDemoInventoryIsThatOfTheBuilderCellForCell() throws IOException {
    DemoInventory.main(new String[] {folder.toString()});
    assertSameCells(DEMO.resolve("inventory.xlsx"), folder.resolve("inventory.xlsx"));
  }

  @Test
  void theInventoryWithTooLittleRoomIsThatOfTheBuilderCellForCell() throws IOException {
    TooLittleRoom.main(new String[] {folder.toString()});
    String name = "too-little-room.xlsx";
    assertSameCells(INVENTORIES.resolve(name), folder.resolve(name));
  }

  private static void assertSameCells(Path committed, Path fresh) throws IOException {
    List<String> cells = dump(committed);
    assertTrue(cells.size() > 100, "cells in " + committed + ": " + cells.size());
    assertEquals(String.join("\n", cells), String.join("\n", dump(fresh)));
  }

  /** One line a cell, with type and number format, and one a drop-down. */
  private static List<String> dump(Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        Workbook workbook = new XSSFWorkbook(in)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            lines.add(
                "%s!%s %s %s %s"
                    .formatted(
                        sheet.getSheetName(),
                        cell.getAddress(),
                        cell.getCellType(),
                        cell,
                        cell.getCellStyle().getDataFormatString()));
          }
        }
        for (DataValidation choice : sheet.getDataValidations()) {
          lines.add(
              sheet.getSheetName()
                  + " "
                  + List.of(choice.getRegions().getCellRangeAddresses())
                  + " "
                  + List.of(choice.getValidationConstraint().getExplicitListValues()));
        }
      }
    }
    return lines;
  }
}
