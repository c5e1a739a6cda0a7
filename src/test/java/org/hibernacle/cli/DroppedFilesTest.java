package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files given without a command. */
class DroppedFilesTest {
  private static final Path TEMPLATE = Path.of("templates", "inventory.xlsx");

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path inventory;
  private Path weather;

  @BeforeEach
  void putFilesIntoTheFolder() throws IOException {
    inventory = Files.copy(TEMPLATE, folder.resolve("my garden & more.XLSX"));
    weather = Files.writeString(folder.resolve("station.csv"), "date,tmin_c,tmax_c\n");
  }

  private int run(Object... args) {
    String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), words);
  }

  @Test
  void theWorkbookIsPlannedWithTheOthersWhereverItStandsAmongThem() {
    assertEquals(ExitCode.BAD_INPUT, run(weather, inventory), "nothing is filled in");
    assertTrue(
        out.toString()
            .startsWith("No command given: my garden & more.XLSX is planned with station.csv."),
        out.toString());
    assertTrue(err.toString().contains("sheet Plants"), err.toString());
    assertTrue(err.toString().contains("station.csv"), err.toString());
  }

  @Test
  void theyAreThoseOfTheCommandWithTheWorkbooksFolder() {
    DroppedFiles dropped =
        DroppedFiles.of(new String[] {weather.toString(), inventory.toString()}, Set.of("plan"))
            .orElseThrow();
    assertEquals(
        List.of("plan", "-o", folder, inventory, weather).stream().map(Object::toString).toList(),
        dropped.words());
  }

  @Test
  void twoWorkbooksOrNoneOrOneAloneAreRefused() throws IOException {
    Path other = Files.copy(TEMPLATE, folder.resolve("other.xlsm"));
    assertEquals(ExitCode.WRONG_USE, run(inventory, weather, other));
    assertTrue(
        err.toString().startsWith("2 workbooks given, my garden & more.XLSX, other.xlsm; "),
        err.toString());
    err.getBuffer().setLength(0);
    assertEquals(ExitCode.WRONG_USE, run(weather));
    assertTrue(err.toString().startsWith("No workbook (.xlsx) among station.csv; "), err::toString);
    err.getBuffer().setLength(0);
    assertEquals(ExitCode.WRONG_USE, run(inventory));
    assertTrue(err.toString().startsWith("No temperature file (.csv) beside "), err::toString);
    assertEquals("", out.toString());
  }

  @Test
  void aSeasonPlanIsNotReplacedByItsOwnPlan() throws IOException {
    Path plan = Files.copy(TEMPLATE, folder.resolve("season-plan.xlsx"));
    byte[] before = Files.readAllBytes(plan);
    assertEquals(ExitCode.NOT_WRITTEN, run(plan, weather));
    assertTrue(err.toString().contains("season-plan.xlsx is an input."), err::toString);
    assertTrue(err.toString().contains("copy it there under another name"), err::toString);
    assertEquals(before.length, Files.size(plan));
  }

  @Test
  void whatIsNoFileIsTakenForAWrongCommand() {
    assertEquals(ExitCode.WRONG_USE, run(folder.resolve("missing.xlsx"), weather));
    assertTrue(err.toString().startsWith("Unmatched argument"), err::toString);
    err.getBuffer().setLength(0);
    assertEquals(ExitCode.WRONG_USE, run("--quick", inventory, weather));
    assertTrue(err.toString().startsWith("Unknown options: '--quick'"), err::toString);
  }
}
