package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;

/** What the keeper wrote into the log, and what it means. */
class LogRowsTest {
  private static final Inventory INVENTORY = Fixtures.plan().inventory();
  private static final String HOME = INVENTORY.plants().get(0).home();
  private static final String SHED = INVENTORY.places().get(2).name();
  private static final String BED = INVENTORY.places().get(1).name();
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 10);
  private static final LocalDate NOV_1 = LocalDate.of(2026, 11, 1);

  private final Problems problems = new Problems();

  private static final List<String> IDS =
      List.of("id", "real-move-down", "real-move-in", "real-step-out", "real-return", "stood-in");

  private static List<String> headings() {
    return IDS.stream().map(id -> Words.of(Locale.ENGLISH).text("column." + id)).toList();
  }

  private List<MoveMade> read(Object... cells) {
    List<Object> row = new ArrayList<>(List.of(cells));
    while (row.size() < 6) {
      row.add("");
    }
    EarlierPlan plan =
        new EarlierPlan(
            "season-plan.xlsx",
            new LogSheet(new SheetTable("Log", headings(), List.of(row)), IDS),
            List.of(
                new MovePlanned("P-01", "MOVE_DOWN", LocalDate.of(2026, 11, 7), BED),
                new MovePlanned("P-01", "MOVE_IN", LocalDate.of(2026, 12, 5), SHED)),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    return LogRows.read(plan, INVENTORY, AS_OF, problems);
  }

  private String codes() {
    return String.join(" ", problems.sorted().stream().map(p -> p.code()).toList());
  }

  @Test
  void theNamesAreThoseThatTheReportWrites() {
    Words words = Words.of(Locale.ENGLISH);
    for (PlanTable table : PlanTable.values()) {
      assertEquals(words.text("section." + table.id()), table.title());
      for (PlanColumn column : table.columns()) {
        String heading = words.text("column." + column.id(), "");
        assertTrue(column.titled(org.hibernacle.input.Words.key(heading)), heading);
      }
    }
  }

  @Test
  void aRealDateMeansThePlaceThatThePlanHadForTheMove() {
    assertEquals(List.of(new MoveMade("P-01", NOV_1, BED)), read("P-01", NOV_1));
    assertEquals("", codes());
  }

  @Test
  void realPlaceNamesAnotherForTheLastMoveOnly() {
    assertEquals(
        List.of(new MoveMade("P-01", NOV_1, BED), new MoveMade("P-01", NOV_1.plusDays(5), HOME)),
        read("P-01", NOV_1, NOV_1.plusDays(5), "", "", HOME.toUpperCase(Locale.ROOT)));
  }

  @Test
  void aReturnIsToItsHome() {
    assertEquals(
        List.of(new MoveMade("P-01", NOV_1, BED), new MoveMade("P-01", NOV_1.plusDays(2), HOME)),
        read("P-01", NOV_1, "", "", NOV_1.plusDays(2)));
  }

  @Test
  void aDateAsTextIsReadAndOtherTextIsAnError() {
    assertEquals(List.of(new MoveMade("P-01", NOV_1, BED)), read("P-01", "2026-11-01"));
    assertEquals(List.of(), read("P-01", "last week"));
    assertEquals("IN-341", codes());
    assertTrue(problems.sorted().get(0).where().contains("P-01, Real move-down"));
  }

  @Test
  void whatComesAfterTheDayIsNotMadeYet() {
    assertEquals(List.of(), read("P-01", AS_OF.plusDays(1)));
    assertEquals("IN-342", codes());
    assertEquals(1, read("P-01", AS_OF).size());
  }

  @Test
  void aPlaceMustBeKnownAndAMoveOutsideThePlanNeedsOne() {
    read("P-01", NOV_1, "", "", "", "Attic");
    assertEquals("IN-343", codes());
    read("P-01", "", "", NOV_1);
    assertEquals("IN-344 IN-343", codes());
    assertTrue(problems.hasErrors());
  }

  @Test
  void plantsThatAreGoneAndBlankRowsAreNoMoves() {
    assertEquals(List.of(), read("P-99", NOV_1));
    assertEquals(List.of(), read("P-01"));
    assertEquals(Optional.empty(), problems.sorted().stream().findAny());
  }
}
