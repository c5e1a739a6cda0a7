package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;
import org.junit.jupiter.api.Test;

/** What the table of places says of loggers. */
class PlaceTablesTest {
  private static final List<String> OF_LOGGERS =
      List.of("logger-hours", "model-mean", "model-rms", "model-largest", "model-largest-day");

  @Test
  void withoutALoggerTheTableHasNoColumnsForOne() {
    Section places = places(Fixtures.plan());
    assertTrue(places.columns().stream().noneMatch(c -> OF_LOGGERS.contains(c.id())));
  }

  @Test
  void theRowOfItsPlaceTellsHowFarTheModelWasOffAndTheOthersAreBlank() {
    Section places = places(Fixtures.withLogger(Fixtures.plan()));
    List<Cell> shed = ofLoggers(places, "Shed");
    assertEquals(Measures.count(1440), shed.get(0));
    assertEquals(new Cell.Quantity(-0.5, "", 1), shed.get(1));
    assertEquals(new Cell.Quantity(1.25, "", 1), shed.get(2));
    assertEquals(new Cell.Quantity(4.0, "", 1), shed.get(3));
    assertEquals(new Cell.Day(LocalDate.of(2025, 1, 22), true), shed.get(4));
    assertTrue(ofLoggers(places, "Hall").stream().allMatch(Cell.Gap.class::isInstance));
  }

  /** A difference of 5 K is one of 9 °F; no 32 comes into it. */
  @Test
  void differencesAreConvertedAsDifferences() {
    Settings us = Fixtures.settings(Settings.Units.US, Locale.US);
    List<Cell> shed = ofLoggers(places(Fixtures.withLogger(Fixtures.plan(us))), "Shed");
    assertEquals(new Cell.Quantity(-0.9, "", 1), shed.get(1));
    assertEquals(new Cell.Quantity(7.2, "", 1), shed.get(3));
  }

  private static Section places(SeasonPlan plan) {
    return PlaceTables.places(Material.of(plan, Fixtures.facts(), Words.of(Locale.UK)));
  }

  private static List<Cell> ofLoggers(Section places, String place) {
    List<Cell> cells =
        places.rows().stream()
            .map(Section.Row::cells)
            .filter(row -> row.get(0).equals(new Cell.Text(place)))
            .findFirst()
            .orElseThrow();
    return IntStream.range(0, cells.size())
        .filter(i -> OF_LOGGERS.contains(places.columns().get(i).id()))
        .mapToObj(cells::get)
        .toList();
  }
}
