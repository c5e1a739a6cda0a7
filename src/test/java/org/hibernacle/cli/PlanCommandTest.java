package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job as a keeper starts it: exit codes, messages, and what stands in the folder. */
class PlanCommandTest {
  private static final Path DEMO = Path.of("demo-data", "inventory.xlsx");
  private static final Path DEMO_WEATHER = Path.of("demo-data", "temperatures.csv");
  private static final String QUICK = "--without-remedies";
  private static final String HAND_OUT = "--handout=2026-12-20..2027-01-05";
  private static final Path TOO_LITTLE_ROOM =
      Path.of("src", "test", "resources", "inventories", "too-little-room.xlsx");

  @TempDir static Path shared;

  /** The last three winters of the demo, so that runs are short. */
  private static Path weather;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeAll
  static void keepThreeWinters() throws IOException {
    weather = shared.resolve("three-winters.csv");
    try (Stream<String> lines = Files.lines(DEMO_WEATHER)) {
      Files.write(weather, lines.filter(l -> l.compareTo("2023-07-01") >= 0).toList());
    }
  }

  private int run(Object... args) {
    String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), words);
  }

  @Test
  void theDemoIsPlannedAndNobodyIsLeftUnprotected() throws IOException {
    byte[] inventory = Files.readAllBytes(DEMO);
    byte[] temperatures = Files.readAllBytes(DEMO_WEATHER);
    assertEquals(ExitCode.DONE, run("plan", DEMO, DEMO_WEATHER, "-o", folder), err::toString);
    assertEquals(List.of("season-calendar.pdf", "season-plan.xlsx"), names(folder));
    assertTrue(out.toString().contains("Wrote " + folder.resolve("season-plan.xlsx")));
    assertTrue(out.toString().contains("10 winters on file, 2016/17 to 2025/26"), out.toString());
    assertArrayEquals(inventory, Files.readAllBytes(DEMO));
    assertArrayEquals(temperatures, Files.readAllBytes(DEMO_WEATHER));
  }

  @Test
  void tooLittleRoomIsDoneButSaidLoudlyAndTwiceTheSameBytes() throws IOException {
    Object[] args = {
      "plan", TOO_LITTLE_ROOM, weather, "-o", folder, QUICK, "--ics", "--labels", HAND_OUT
    };
    assertEquals(ExitCode.UNPROTECTED, run(args));
    assertTrue(out.toString().contains("CANNOT BE PROTECTED"), out.toString());
    List<String> names =
        List.of(
            "hand-out.pdf",
            "pot-labels.pdf",
            "season-calendar.pdf",
            "season-plan.ics",
            "season-plan.xlsx");
    assertEquals(names, names(folder));
    Map<String, byte[]> first = new TreeMap<>();
    for (String name : names) {
      assertTrue(out.toString().contains("Wrote " + folder.resolve(name)), out.toString());
      first.put(name, Files.readAllBytes(folder.resolve(name)));
    }
    assertEquals(ExitCode.UNPROTECTED, run(args));
    for (String name : names) {
      assertArrayEquals(first.get(name), Files.readAllBytes(folder.resolve(name)), name);
    }
  }

  @Test
  void aHandOutForDaysOfAnotherWinterIsRefused() throws IOException {
    String days = "--handout=2026-06-20..2026-07-02";
    int code = run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "--season", "2026", days);
    assertEquals(ExitCode.WRONG_USE, code);
    assertTrue(
        err.toString().contains("outside winter 2026/27, which runs from 2026-07-01 to 2027-06-30"),
        err.toString());
    assertEquals(List.of(), names(folder));
  }

  @Test
  void aFontThatIsNoneIsToldBeforeAnythingIsPlanned() throws IOException {
    Path font = folder.resolve("none.ttf");
    int code = run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "--font", font);
    assertEquals(ExitCode.BAD_INPUT, code);
    assertTrue(err.toString().contains("none.ttf [OU-631]: there is no such file"), err.toString());
    assertEquals(List.of(), names(folder));
  }

  @Test
  void whatWouldHelpStandsInTheSummary() throws IOException {
    assertEquals(ExitCode.UNPROTECTED, run("plan", TOO_LITTLE_ROOM, weather, "--dry-run"));
    String told = out.toString();
    assertTrue(told.contains("mulch 10 cm deep on Bare ground: protects T01 Larch"), told);
    assertTrue(told.contains("light warm room: protects T03 Old olive"), told);
  }

  @Test
  void aFilledInLogIsCarriedOverAndAnotherWintersLogIsNotReplaced() throws IOException {
    run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "-q", QUICK);
    Path plan = folder.resolve("season-plan.xlsx");
    edit(plan, "Log", "Remark", "stood in the lee of the wall");
    run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "-q", QUICK);
    assertEquals("stood in the lee of the wall", read(plan, "Log", "Remark"));

    byte[] before = Files.readAllBytes(plan);
    assertEquals(
        ExitCode.NOT_WRITTEN,
        run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "--season", "2031", QUICK));
    assertTrue(err.toString().contains("log of another winter"), err.toString());
    assertArrayEquals(before, Files.readAllBytes(plan));
  }

  @Test
  void aPlanIsAnInventoryToo() throws IOException {
    run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "-q", QUICK);
    Path second = folder.resolve("second");
    Path given = folder.resolve("season-plan.xlsx");
    int code = run("plan", given, weather, "-o", second, "--json", QUICK);
    assertEquals(ExitCode.UNPROTECTED, code, err::toString);
    JsonNode told = new ObjectMapper().readTree(out.toString());
    assertEquals("2026/27", told.get("season").asText());
    assertTrue(told.get("unprotected").size() > 0, told::toString);
    assertEquals(
        second.resolve("season-plan.xlsx").toString(), told.get("written").get(0).asText());
  }

  @Test
  void anInputIsNeverWrittenTo() throws IOException {
    Path given = folder.resolve("season-plan.xlsx");
    Files.copy(TOO_LITTLE_ROOM, given);
    for (Object where : List.of(folder, folder.resolve("x").resolve(".."))) {
      Files.createDirectories(folder.resolve("x"));
      assertEquals(ExitCode.NOT_WRITTEN, run("plan", given, weather, "-o", where, QUICK));
      assertTrue(err.toString().contains("season-plan.xlsx is an input"), err::toString);
    }
    assertEquals(ExitCode.NOT_WRITTEN, run("plan", given, weather, QUICK));
    assertArrayEquals(Files.readAllBytes(TOO_LITTLE_ROOM), Files.readAllBytes(given));
    assertEquals(List.of("season-plan.xlsx", "x"), names(folder));
  }

  @Test
  void aDryRunWritesNothing() throws IOException {
    assertEquals(
        ExitCode.UNPROTECTED,
        run("plan", TOO_LITTLE_ROOM, weather, "-o", folder.resolve("new"), "--dry-run", QUICK));
    assertEquals(List.of(), names(folder));
    assertTrue(out.toString().contains("Winters used"));
  }

  @Test
  void aDryRunTellsAScriptWhatItWouldWrite() throws IOException {
    Path there = folder.resolve("new");
    run("plan", TOO_LITTLE_ROOM, weather, "-o", there, "--dry-run", QUICK, "--json");
    JsonNode told = new ObjectMapper().readTree(out.toString());
    assertEquals(0, told.get("written").size());
    assertEquals(
        there.resolve("season-plan.xlsx").toString(), told.get("wouldWrite").get(0).asText());
  }

  @Test
  void aDryRunNamesTheFilesAskedFor() {
    Path there = folder.resolve("new");
    run("plan", TOO_LITTLE_ROOM, weather, "-o", there, "--dry-run", QUICK, "--ics", "--labels");
    for (String name : List.of("season-plan.xlsx", "season-plan.ics", "pot-labels.pdf")) {
      assertTrue(out.toString().contains("Would write " + there.resolve(name)), out.toString());
    }
  }

  /**
   * At 9 points a label of eight lines takes some 30 mm; 18 rows on A4 leave (297 - 2 x 10 - 17 x
   * 4) / 18.
   */
  @Test
  void labelsTooSmallForTheirWordsStopTheRunBeforeAnythingIsWritten() throws IOException {
    Path small = folder.resolve("small-labels.xlsx");
    try (InputStream in = Files.newInputStream(TOO_LITTLE_ROOM);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream to = Files.newOutputStream(small)) {
      Sheet settings = book.getSheet("Settings");
      Row row = settings.createRow(settings.getLastRowNum() + 1);
      row.createCell(column(settings, "Setting")).setCellValue("Label rows");
      row.createCell(column(settings, "Value")).setCellValue(18);
      book.write(to);
    }
    Path there = folder.resolve("new");
    assertEquals(ExitCode.BAD_INPUT, run("plan", small, weather, "-o", there, QUICK, "--labels"));
    String told = err.toString();
    assertTrue(told.contains("small-labels.xlsx, sheet Settings, Label rows [OU-660]"), told);
    assertTrue(told.contains("labels 11.6 mm high; expected "), told);
    assertFalse(Files.exists(there));
    assertEquals(
        ExitCode.UNPROTECTED, run("plan", small, weather, "-o", there, QUICK, "--dry-run"));
  }

  @Test
  void onePlantIsExplainedAndNothingIsWritten() throws IOException {
    assertEquals(
        ExitCode.UNPROTECTED,
        run("plan", TOO_LITTLE_ROOM, weather, "-o", folder.resolve("new"), "--explain", "T03"));
    assertEquals(List.of(), names(folder));
    assertTrue(out.toString().startsWith("T03 Old olive"), out.toString());
    assertTrue(out.toString().contains("What if"), out.toString());
    assertEquals(ExitCode.WRONG_USE, run("plan", TOO_LITTLE_ROOM, weather, "--explain", "Q99"));
    assertTrue(err.toString().contains("No plant has the Id \"Q99\""), err.toString());
  }

  @Test
  void badInputIsToldAtOnceAndNothingIsWritten() throws IOException {
    Path broken = folder.resolve("broken.csv");
    Files.writeString(broken, "date,tmin_c,tmax_c\n2020-01-01,5,1\n2020-01-02,cold,3\n");
    assertEquals(
        ExitCode.BAD_INPUT,
        run("plan", folder.resolve("none.xlsx"), broken, "-o", folder.resolve("out")));
    assertTrue(err.toString().contains("none.xlsx [IN-101]: there is no such file"));
    assertTrue(err.toString().contains("line 2"), err.toString());
    assertTrue(err.toString().contains("line 3"), err.toString());
    assertFalse(Files.exists(folder.resolve("out")));
    assertFalse(err.toString().contains("at org.hibernacle"), "no stack trace");
  }

  @Test
  void aScriptIsToldOfBadInputAsJson() throws IOException {
    Path broken = folder.resolve("broken.csv");
    Files.writeString(broken, "date,tmin_c,tmax_c\n2020-01-02,cold,3\n");
    int code = run("plan", TOO_LITTLE_ROOM, broken, "-o", folder.resolve("out"), "--json");
    assertEquals(ExitCode.BAD_INPUT, code);
    JsonNode told = new ObjectMapper().readTree(out.toString());
    assertTrue(told.get("errors").asInt() > 0, told::toString);
    assertEquals(2, told.get("problems").get(0).get("line").asInt(), told::toString);
    assertEquals("", err.toString());
  }

  @Test
  void jsonIsNotMixedWithOtherAnswers() {
    for (String other : List.of("--explain=T03", "--leave-one-out")) {
      assertEquals(
          ExitCode.WRONG_USE, run("plan", TOO_LITTLE_ROOM, weather, "--json", other), other);
      assertTrue(err.toString().contains("mutually exclusive"), err::toString);
    }
    assertEquals("", out.toString());
  }

  @Test
  void aSummerAloneIsNoWinter() throws IOException {
    Path summer = folder.resolve("summer.csv");
    Files.writeString(summer, "date,tmin_c,tmax_c\n2020-07-01,15,25\n2020-07-02,14,26\n");
    assertEquals(ExitCode.BAD_INPUT, run("plan", TOO_LITTLE_ROOM, summer, "-o", folder));
    assertTrue(err.toString().contains("[PL-400]: no usable winter"), err.toString());
    assertEquals(List.of("summer.csv"), names(folder));
  }

  @Test
  void aWorkbookOpenElsewhereIsLeftAlone() throws IOException {
    Files.createFile(folder.resolve(".~lock.season-plan.xlsx#"));
    assertEquals(ExitCode.NOT_WRITTEN, run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, QUICK));
    assertTrue(err.toString().contains("open in another program"), err.toString());
    assertEquals(List.of(".~lock.season-plan.xlsx#"), names(folder));
  }

  @Test
  void wrongUseIsExplainedInTwoLines() {
    assertEquals(ExitCode.WRONG_USE, run("plan", DEMO));
    assertTrue(err.toString().contains("TEMPERATURES.csv"));
    assertTrue(err.toString().contains("Try \"hibernacle plan --help\"."));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private static Path soFar(Path folder) throws IOException {
    Path file = folder.resolve("so-far.csv");
    StringBuilder text = new StringBuilder(Files.readString(weather));
    for (LocalDate d = LocalDate.of(2026, 7, 1);
        d.isBefore(LocalDate.of(2026, 11, 17));
        d = d.plusDays(1)) {
      double lowestC = d.isAfter(LocalDate.of(2026, 11, 10)) ? -9 : 18 - 0.1 * d.getDayOfYear() / 2;
      text.append(d).append(',').append(lowestC).append(',').append(lowestC + 7).append('\n');
    }
    return Files.writeString(file, text);
  }

  @Test
  void aPlanInTheSeasonGoesOnFromTheLogAndTellsWhatChanged() throws IOException {
    Path file = soFar(folder);
    run("plan", TOO_LITTLE_ROOM, weather, "-o", folder, "-q", QUICK);
    Path plan = folder.resolve("season-plan.xlsx");
    edit(plan, "Log", "Real move-in", "2026-11-07");
    edit(plan, "Log", "Stood in", read(plan, "Places", "Place"));
    out.getBuffer().setLength(0);
    Path next = folder.resolve("next");
    run("plan", plan, file, "--as-of", "2026-11-10", "-o", next, QUICK);
    assertTrue(out.toString().contains("Tonight "), out + err.toString());
    assertTrue(out.toString().contains("Tuesday 10 November 2026: down to -"));
    assertTrue(out.toString().contains("Changed since the last plan"), out::toString);
    Path written = next.resolve("season-plan.xlsx");
    assertEquals("2026-11-07", read(written, "Log", "Real move-in"));
    assertTrue(read(written, "Changes", "Why").length() > 20);
    Path again = folder.resolve("again");
    run("plan", plan, file, "--as-of", "2026-11-10", "-o", again, QUICK);
    for (String name : names(next)) {
      assertArrayEquals(
          Files.readAllBytes(next.resolve(name)), Files.readAllBytes(again.resolve(name)), name);
    }
  }

  @Test
  void aDayThatCanNotBePlannedFromIsWrongUseOrSaysWhatIsMissing() {
    assertEquals(ExitCode.WRONG_USE, run("plan", DEMO, weather, "--as-of", "10.11.2026"));
    assertTrue(err.toString().contains("such as 2026-11-10"), err::toString);
    assertEquals(
        ExitCode.WRONG_USE,
        run("plan", DEMO, weather, "--as-of", "2026-11-10", "--season", "2027"));
    assertTrue(err.toString().contains("lies in winter 2026/27"), err::toString);
    assertEquals(
        ExitCode.WRONG_USE, run("plan", DEMO, weather, "--as-of", "2026-11-10", "--leave-one-out"));
    assertEquals(ExitCode.WRONG_USE, run("plan", DEMO, weather, "--as-of", "2027-06-17"));
    assertTrue(err.toString().contains("up to 2027-06-16"), err::toString);
    assertEquals(ExitCode.BAD_INPUT, run("plan", DEMO, weather, "--as-of", "2023-11-10"));
    assertTrue(err.toString().contains("no usable winter before the one that holds 2023-11-10"));
  }

  private static void edit(Path file, String sheet, String heading, String text)
      throws IOException {
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      Row row = book.getSheet(sheet).getRow(1);
      row.getCell(column(book.getSheet(sheet), heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK)
          .setCellValue(text);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
  }

  private static String read(Path file, String sheet, String heading) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      Sheet log = book.getSheet(sheet);
      return log.getRow(1).getCell(column(log, heading)).getStringCellValue();
    }
  }

  private static int column(Sheet sheet, String heading) {
    for (int i = 0; i < sheet.getRow(0).getLastCellNum(); i++) {
      if (sheet.getRow(0).getCell(i).getStringCellValue().equals(heading)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no column " + heading);
  }
}
