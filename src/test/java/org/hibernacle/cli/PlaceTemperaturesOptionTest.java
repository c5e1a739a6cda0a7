package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logger's file on the command line, to the words in the workbook. */
class PlaceTemperaturesOptionTest {
  private static final Path INVENTORY =
      Path.of("src", "test", "resources", "inventories", "too-little-room.xlsx");

  private static final Path WEATHER = Path.of("demo-data", "temperatures.csv");

  @TempDir Path folder = Path.of("");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void theLoggerIsUsedAndTheReportSaysHowFarTheModelWasOff() throws IOException {
    Path logger = logger("ground.csv", "2026-01-0");
    assertEquals(
        ExitCode.UNPROTECTED,
        plan("-o", folder, "-q", "--place-temperatures", "bare GROUND=" + logger),
        err::toString);
    List<String> notes = cells("Notes");
    assertTrue(notes.contains("place Bare ground [PL-430]"), notes.toString());
    assertTrue(
        notes.stream().anyMatch(n -> n.startsWith("over 96 hours of its logger the model was ")),
        notes.toString());
    assertTrue(
        notes.contains(
            "in these hours, which lie in 1 of 10 winters used, the logger's air is used"));
    assertTrue(notes.stream().anyMatch(n -> n.startsWith("Input ground.csv, SHA-256 ")));
    assertTrue(notes.contains("Option place-temperatures=bare GROUND"), notes.toString());
    List<String> places = cells("Place forecast");
    assertTrue(places.contains("Hours of the logger"), places.toString());
    assertTrue(places.contains("96"), places.toString());
    assertEquals("", err.toString());
  }

  @Test
  void aLoggerOfNoWinterUsedIsAWarning() throws IOException {
    Path logger = logger("ground.csv", "2003-01-0");
    assertEquals(
        ExitCode.UNPROTECTED,
        plan("-o", folder, "--dry-run", "--place-temperatures", "Bare ground=" + logger));
    assertTrue(
        err.toString()
            .contains(
                "warning: place Bare ground [PL-431]: a logger from 2003-01-01 to 2003-01-04;"),
        err.toString());
  }

  @Test
  void anUnknownPlaceAndAMissingFileStopTheRun() throws IOException {
    Path logger = logger("ground.csv", "2026-01-0");
    assertEquals(
        ExitCode.BAD_INPUT,
        plan(
            "-o",
            folder.resolve("out"),
            "--place-temperatures",
            "Bear ground=" + logger,
            "--place-temperatures",
            "Open bench=" + folder.resolve("none.csv")));
    assertTrue(err.toString().contains("[IN-340]: \"Bear ground\" for "), err.toString());
    assertTrue(err.toString().contains("(nearest: \"Bare ground\")"), err.toString());
    assertTrue(err.toString().contains("none.csv [IN-301]"), err.toString());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void aFileWithoutItsPlaceIsWrongUse() {
    for (String text : List.of("shed.csv", "=shed.csv", "Shed=")) {
      assertEquals(ExitCode.WRONG_USE, plan("--place-temperatures", text));
      assertTrue(err.toString().contains("\"" + text + "\" is not a place and a file, such as"));
    }
  }

  /** Four days of readings at -4 to -1 °C, the first of a month. */
  private Path logger(String name, String yearAndMonth) throws IOException {
    StringBuilder text = new StringBuilder("timestamp,temp_c\n");
    for (int day = 1; day <= 4; day++) {
      for (int hour = 0; hour < 24; hour++) {
        text.append("%s%d %02d:00,-%d.0\n".formatted(yearAndMonth, day, hour, 1 + hour / 6));
      }
    }
    return Files.writeString(folder.resolve(name), text);
  }

  private int plan(Object... options) {
    Stream<Object> words =
        Stream.concat(
            Stream.of("plan", INVENTORY, WEATHER, "--without-remedies"), Stream.of(options));
    return Hibernacle.run(
        new PrintWriter(out),
        new PrintWriter(err),
        words.map(Object::toString).toArray(String[]::new));
  }

  private List<String> cells(String sheetName) throws IOException {
    DataFormatter formatter = new DataFormatter();
    List<String> cells = new ArrayList<>();
    try (InputStream in = Files.newInputStream(folder.resolve("season-plan.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      Sheet sheet = book.getSheet(sheetName);
      for (Row row : sheet) {
        row.forEach(cell -> cells.add(formatter.formatCellValue(cell)));
      }
    }
    return cells;
  }
}
