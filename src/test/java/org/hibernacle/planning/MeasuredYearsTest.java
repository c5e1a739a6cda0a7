package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.input.Problems;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.input.TemperatureUnit;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;

/**
 * A maple left on an open bench through whole years: when it stands bare, when it wakes. The ranges
 * are what growers see: common practice, no source.
 */
class MeasuredYearsTest {
  private static final Path CITIES = Path.of("src", "test", "resources", "noaa", "weather.csv");
  private static final Path DEMO = Path.of("demo-data", "temperatures.csv");

  /** Measured days; see noaa/README.md. */
  @Test
  void mapleLeavesFallFromLateOctoberToNovemberOnBothCoasts() {
    for (Year year : years(CITIES, Optional.of("New York"), 40.7)) {
      assertWithin(10, 20, 11, 30, year.bare(), year);
    }
    for (Year year : years(CITIES, Optional.of("Seattle"), 47.6)) {
      assertWithin(10, 20, 11, 30, year.bare(), year);
    }
  }

  @Test
  void mapleLeavesFallInOctoberOrEarlyNovemberInland() {
    List<Year> years = years(DEMO, Optional.empty(), 48);
    assertEquals(10, years.size());
    for (Year year : years) {
      assertWithin(10, 5, 11, 15, year.bare(), year);
    }
  }

  @Test
  void maplesBreakBudInAprilOrEarlyMayInNewYork() {
    List<Year> years = years(CITIES, Optional.of("New York"), 40.7);
    assertEquals(3, years.size());
    for (Year year : years) {
      assertWithin(4, 1, 5, 10, year.wakes(), year);
    }
  }

  private record Year(Season season, LocalDate bare, LocalDate wakes) {}

  private static void assertWithin(
      int fromMonth, int fromDay, int toMonth, int toDay, LocalDate found, Year year) {
    MonthDay day = MonthDay.from(found);
    assertTrue(
        !day.isBefore(MonthDay.of(fromMonth, fromDay)) && !day.isAfter(MonthDay.of(toMonth, toDay)),
        year.toString());
  }

  private static List<Year> years(Path file, Optional<String> station, double latitudeDeg) {
    TemperatureCsv.Options options =
        new TemperatureCsv.Options(
            station, Optional.of(TemperatureUnit.C), Optional.empty(), Optional.empty());
    WinterSelection selection =
        WinterSelection.of(
            TemperatureCsv.read(List.of(file), options, new Problems()).orElseThrow(), false);
    List<Winter> winters =
        selection.winters().stream()
            .map(UsableWinter::season)
            .map(s -> Winter.of(s, new HourlyAir(selection.series(), latitudeDeg), 1.5))
            .toList();
    WintersOnFile onFile =
        new WintersOnFile(
            new Season(2026, false),
            winters,
            List.of(SomePlace.of(PlaceKind.BENCH).open().place()),
            latitudeDeg);
    Trial trial = new Trial(SomePlant.of("Acer palmatum").plant(), onFile, 2);
    return winters.stream().map(w -> year(w, trial.atHome(winters.indexOf(w), 0))).toList();
  }

  private static Year year(Winter winter, Lived lived) {
    int bare = 0;
    while (!lived.state().bare()[bare]) {
      bare++;
    }
    LocalDate wakes = winter.first().plusDays(lived.state().budBreak());
    return new Year(winter.season(), winter.first().plusDays(bare), wakes);
  }
}
