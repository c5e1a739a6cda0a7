package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.junit.jupiter.api.Test;

/** Strips and place pages, held against the plan they are drawn from. */
class PaperPagesTest {
  private static final SeasonPlan PLAN = Fixtures.plan();
  private static final Paper PAPER =
      ReportAuthor.write(PLAN, Fixtures.facts(), Words.of(Locale.UK)).paper();
  private static final Strips STRIPS = PAPER.strips().orElseThrow();

  private static Strips.Strip strip(PlantPlan p) {
    return STRIPS.plants().stream()
        .filter(s -> s.id().equals(p.plant().id()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void barsFollowEachOtherWithoutGapsAndChangeWithTheMoves() {
    for (PlantPlan p : PLAN.plants()) {
      List<Strips.Bar> bars = strip(p).bars();
      assertEquals(STRIPS.from(), bars.get(0).from());
      assertEquals(STRIPS.toExclusive(), bars.get(bars.size() - 1).toExclusive());
      for (int i = 1; i < bars.size(); i++) {
        assertEquals(bars.get(i - 1).toExclusive(), bars.get(i).from(), p.plant().id());
        assertEquals(p.moves().get(i - 1).date(), bars.get(i).from(), p.plant().id());
      }
    }
  }

  @Test
  void ownDaysAreThoseOfThePlan() {
    int told = 0;
    for (PlantPlan p : PLAN.plants()) {
      for (int i = 0; i < p.moves().size(); i++) {
        Move move = p.moves().get(i);
        Optional<Strips.OwnDays> own = strip(p).moves().get(i).own();
        assertEquals(move.earliest(), own.map(Strips.OwnDays::early));
        assertEquals(move.typical(), own.map(Strips.OwnDays::typical));
        assertEquals(move.latest(), own.map(Strips.OwnDays::late));
        told += own.isPresent() ? 1 : 0;
      }
    }
    assertTrue(told > 0);
  }

  @Test
  void stripsBeginAndEndWithMonthsAndHoldAllMoves() {
    assertEquals(1, STRIPS.from().getDayOfMonth());
    assertEquals(1, STRIPS.toExclusive().getDayOfMonth());
    PLAN.movesByDate()
        .forEach(
            pm -> {
              LocalDate day = pm.move().date();
              assertFalse(day.isBefore(STRIPS.from()) || !day.isBefore(STRIPS.toExclusive()));
            });
  }

  @Test
  void eachPlaceInUseHasAPageWithAllThatEverStandThere() {
    for (PlacePage page : PAPER.places()) {
      Section stays = page.tables().get(page.tables().size() - 1);
      String told = stays.rows().toString();
      for (PlantPlan p : PLAN.plants()) {
        boolean there =
            p.stays().stream()
                .map(s -> s.place().wrapOf().orElse(s.place().name()))
                .anyMatch(page.title()::equals);
        assertEquals(
            there,
            told.matches("(?s).*\\b" + p.plant().id() + " .*"),
            page.title() + " " + p.plant().id());
      }
    }
    long used =
        PLAN.plants().stream()
            .flatMap(p -> p.stays().stream())
            .map(s -> s.place().wrapOf().orElse(s.place().name()))
            .distinct()
            .count();
    assertEquals(used, PAPER.places().size());
  }

  @Test
  void unitsAreTheKeepers() {
    SeasonReport us =
        ReportAuthor.write(
            Fixtures.plan(Fixtures.settings(Settings.Units.US, Locale.US)),
            Fixtures.facts(),
            Words.of(Locale.US));
    String shed =
        us.paper().places().stream()
            .filter(p -> p.title().equals("Shed"))
            .findFirst()
            .orElseThrow()
            .toString();
    // -2.2 and 9.5 degrees Celsius.
    assertTrue(shed.contains("28.0 \u00b0F") && shed.contains("49.1 \u00b0F"), shed);
    assertTrue(shed.contains("41 \u00b0F") && shed.contains("sq ft"), shed);
    assertFalse(shed.contains("\u00b0C") || shed.contains(" m2"), shed);
  }

  @Test
  void filesWithoutACalendarAreDatedByTheirSeason() {
    SeasonReport review =
        ReviewAuthor.write(ReviewFixtures.review(), Fixtures.facts(), Words.of(Locale.UK));
    assertEquals(ReviewFixtures.review().season().coreEndExclusive(), review.dated());
  }
}
