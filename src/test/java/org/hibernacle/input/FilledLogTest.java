package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.InAndOut;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.KnownWinter;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.Season;
import org.hibernacle.model.SeasonLog;
import org.junit.jupiter.api.Test;

class FilledLogTest {
  private static final String HEADINGS =
      "Id|Name|Planned move-down|Planned move-in|Real move-down|Real move-in|Real step-out"
          + "|Real return|A blank day means|Stood in|Outcome|Noticed on|Remark|My own";
  private static final LocalDate DOWN = LocalDate.of(2026, 11, 14);

  private final Problems problems = new Problems();

  private static TestBook book(Object[]... logRows) {
    Object[] logRow = Arrays.stream(logRows).flatMap(Arrays::stream).toArray();
    return TestBook.least()
        .places("Place|Kind", "Bench", "bench", "Hedge", "ground", "Shed", "cold store")
        .sheet(
            "Moving days",
            "Date|Move|Id|Name|From|To",
            DOWN,
            "move-down",
            "A1",
            "",
            "Bench",
            "Hedge")
        .sheet("Occupancy", "Week from|Bench (m2)", LocalDate.of(2026, 7, 1), 1.0)
        .sheet(
            "Winters",
            "Winter|Coldest night (°F)|Coldest on",
            "2024/25",
            14.0,
            LocalDate.of(2025, 1, 20),
            "2023/24",
            23.0,
            LocalDate.of(2023, 12, 2))
        .sheet(
            "Tasks",
            "From|To|What|Place|Plants",
            LocalDate.of(2027, 3, 1),
            LocalDate.of(2027, 4, 1),
            "in and out",
            "Shed",
            "A1, Z9")
        .sheet("Log", HEADINGS, logRow);
  }

  private static Object[] row(Object... cells) {
    return cells;
  }

  private Optional<SeasonLog> read(TestBook book) throws IOException {
    Inventory inventory = book.read().sound();
    byte[] bytes = book.bytes();
    return FilledLog.read(
        new ByteArrayInputStream(bytes), TestBook.FILE, inventory, "in and out", problems);
  }

  private List<String> codes() {
    return problems.sorted().stream().map(Diagnostic::code).toList();
  }

  @Test
  void readsWhatWasPlannedAndWhatWasFilledIn() throws IOException {
    SeasonLog log =
        read(book(
                row(
                    "A1",
                    "x",
                    DOWN,
                    "",
                    LocalDate.of(2026, 11, 20),
                    "",
                    "",
                    "2027-03-10",
                    "Not moved",
                    "shed",
                    "Branches lost",
                    LocalDate.of(2027, 4, 2),
                    "sad",
                    3)))
            .orElseThrow();
    assertEquals(List.of(), codes());
    assertEquals(new Season(2026, false), log.season());
    assertEquals(List.of(new PlannedMove("A1", DOWN, "Bench", "Hedge")), log.moves());
    assertEquals(
        List.of(
            new LogEntry(
                "A1",
                Optional.of(LocalDate.of(2026, 11, 20)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(LocalDate.of(2027, 3, 10)),
                Optional.of("Shed"),
                Optional.of(IfBlank.NOT_MOVED),
                Optional.of(Outcome.BRANCHES),
                Optional.of(LocalDate.of(2027, 4, 2)),
                "sad")),
        log.entries());
    // 23 °F are -5 °C and 14 °F are -10 °C exactly.
    assertEquals(2, log.winters().size());
    KnownWinter first = log.winters().get(0);
    assertEquals(new Season(2023, false), first.season());
    assertEquals(-5, first.coldestNightC(), 1e-9);
    assertEquals(-10, log.winters().get(1).coldestNightC(), 1e-9);
    assertEquals(
        List.of(new InAndOut("A1", LocalDate.of(2027, 3, 1), LocalDate.of(2027, 4, 1), "Shed")),
        log.inAndOut());
  }

  @Test
  void aBlankLogIsBlank() throws IOException {
    assertEquals(
        List.of(LogEntry.blank("A1")),
        read(book(row("A1", "", "", "", "", "", "", "", "", "", "", "", "", "")))
            .orElseThrow()
            .entries());
    assertEquals(List.of(), codes());
  }

  @Test
  void everyMistakeIsToldWithItsCell() throws IOException {
    assertTrue(
        read(book(
                row(
                    "A1",
                    "",
                    "",
                    "",
                    "soon",
                    LocalDate.of(2027, 1, 9),
                    "",
                    LocalDate.of(2027, 1, 2),
                    "perhaps",
                    "Attic",
                    "poorly",
                    "",
                    "",
                    ""),
                row(
                    "A1",
                    "",
                    "",
                    "",
                    LocalDate.of(2025, 11, 1),
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    ""),
                row("B7", "", "", "", "", "", "", "", "", "", "dead", "", "", "")))
            .isEmpty());
    assertEquals(
        List.of("IN-352", "IN-358", "IN-353", "IN-354", "IN-353", "IN-355", "IN-357", "IN-356")
            .stream()
            .sorted()
            .toList(),
        codes().stream().sorted().toList());
    assertTrue(
        problems.sorted().stream()
            .anyMatch(
                d ->
                    d.where().equals("inventory.xlsx, sheet Log, E2")
                        && d.found().contains("soon")));
  }

  @Test
  void whatCanNotBeUsedIsTold() throws IOException {
    assertTrue(
        read(book(
                row(
                    "A1",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "Shed",
                    "no damage",
                    LocalDate.of(2027, 4, 2),
                    "",
                    "")))
            .isPresent());
    assertEquals(List.of("IN-359", "IN-360"), codes().stream().sorted().toList());
  }

  @Test
  void aWorkbookThatIsNoSeasonPlanIsRefused() throws IOException {
    assertTrue(read(TestBook.least()).isEmpty());
    assertEquals(List.of("IN-350"), codes());
  }

  @Test
  void withoutItsWeeksThePlanHasNoSeason() throws IOException {
    TestBook book = book(row("A1", "", "", "", "", "", "", "", "", "", "", "", "", ""));
    assertTrue(read(book.sheet("Occupancy", "Week from", "")).isEmpty());
    assertEquals(List.of("IN-361"), codes());
  }

  @Test
  void withoutItsHeadingsTheLogIsRefused() throws IOException {
    TestBook book = book(row("A1", "", "", "", "", "", "", "", "", "", "", "", "", ""));
    assertTrue(read(book.sheet("Log", "Plant nr", "A1")).isEmpty());
    assertEquals(List.of("IN-351"), codes());
  }
}
