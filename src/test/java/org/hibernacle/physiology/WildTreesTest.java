package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.SomePlant;
import org.hibernacle.climate.ChillingHours;
import org.hibernacle.climate.DynamicModel;
import org.hibernacle.climate.GrowingDegreeHours;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Thirteen springs and autumns of wild trees, with the air measured beside them (Harvard Forest;
 * phenology/README.md), against bud break and leaf fall as the program forecasts them outdoors.
 * Nothing was fitted to them: heat to bud break and leaf fall were chosen before these were read.
 */
class WildTreesTest {
  private static final double LATITUDE_DEG = 42.5;
  private static final int FIRST_AUTUMN = 2001;
  private static final int WINTERS = 13;
  private static final HourlyAir AIR = air();

  /**
   * Late is positive. Species of the table stand in for relatives of their class: the mean over the
   * springs is held to {@code meanDays} on either side, the worst spring to {@code worstDays}.
   */
  @ParameterizedTest
  @CsvSource({
    "Acer palmatum,      Acer rubrum,        3,  8",
    "Acer palmatum,      Acer saccharum,     9, 14",
    "Fagus sylvatica,    Fagus grandifolia,  3, 12",
    "Quercus robur,      Quercus rubra,      3, 10",
    "Fraxinus excelsior, Fraxinus americana, 6, 18"
  })
  void budsBreakInTheWeekInWhichTheyDidInTheWood(
      String row, String seen, double meanDays, double worstDays) {
    DoubleSummaryStatistics late = budBreakDaysLate(row, seen);
    assertEquals(WINTERS, late.getCount());
    assertEquals(0, late.getAverage(), meanDays, late.toString());
    assertEquals(0, late.getMax(), worstDays, late.toString());
    assertEquals(0, late.getMin(), worstDays, late.toString());
  }

  /**
   * Early flushers wake on less heat; the birch of the wood broke its buds up to a fortnight on.
   */
  @Test
  void earlyFlushersWakeEarlyRatherThanLate() {
    DoubleSummaryStatistics late = budBreakDaysLate("Betula pendula", "Betula papyrifera");
    assertTrue(late.getAverage() > -9 && late.getAverage() < -3, late.toString());
    assertTrue(late.getMin() > -16 && late.getMax() <= 4, late.toString());
  }

  /** The forecast is one for all species: later than the first to drop, sooner than the last. */
  @Test
  void leavesFallBetweenTheFirstAndTheLastOfTheWood() {
    DoubleSummaryStatistics sugarMaple = leafFallDaysLate("Acer saccharum");
    assertEquals(0, sugarMaple.getAverage(), 4, sugarMaple.toString());
    assertEquals(0, sugarMaple.getMax(), 14, sugarMaple.toString());
    assertEquals(0, sugarMaple.getMin(), 14, sugarMaple.toString());
    assertTrue(leafFallDaysLate("Acer rubrum").getMin() > 0, "after the red maple in every year");
    for (String last : List.of("Quercus rubra", "Fagus grandifolia")) {
      DoubleSummaryStatistics late = leafFallDaysLate(last);
      assertTrue(late.getAverage() < -5 && late.getAverage() > -15, last + " " + late);
    }
  }

  /** In that climate plain hours end rest of the middle class, in December, before the portions. */
  @Test
  void restEndsInDecemberWhereWintersAreLong() {
    for (int year = FIRST_AUTUMN; year < FIRST_AUTUMN + WINTERS; year++) {
      Season season = new Season(year, false);
      LocalDate end = season.day(lived("Acer palmatum", season).restEnd());
      assertEquals(12, end.getMonthValue(), end.toString());
    }
  }

  private static DoubleSummaryStatistics budBreakDaysLate(String row, String seen) {
    DoubleSummaryStatistics late = new DoubleSummaryStatistics();
    for (CSVRecord spring : CheckTable.rows("../phenology/bud-break")) {
      LocalDate there = LocalDate.parse(spring.get("year") + "-" + spring.get(seen));
      Season season = new Season(there.getYear() - 1, false);
      late.accept(lived(row, season).budBreak() - season.index(there));
    }
    return late;
  }

  private static DoubleSummaryStatistics leafFallDaysLate(String seen) {
    DoubleSummaryStatistics late = new DoubleSummaryStatistics();
    for (CSVRecord autumn : CheckTable.rows("../phenology/leaf-fall")) {
      LocalDate there = LocalDate.parse(autumn.get("year") + "-" + autumn.get(seen));
      Season season = new Season(there.getYear(), false);
      boolean[] bare = lived("Acer palmatum", season).bare();
      int night = 0;
      while (!bare[night]) {
        night++;
      }
      late.accept(night - season.index(there));
    }
    return late;
  }

  /** Outside in the open; summer, which is not on file, at 20 °C. */
  private static PlantState lived(String row, Season season) {
    int nights = season.days() - 1;
    double[] meanC = new double[nights];
    double[] minC = new double[nights];
    double[] dayLengthH = new double[nights];
    double[] portions = new double[nights];
    double[] hours = new double[nights];
    double[] heat = new double[nights];
    DynamicModel chill = new DynamicModel();
    for (int n = 0; n < nights; n++) {
      dayLengthH[n] = AIR.sun(season.day(n)).lengthH();
      minC[n] = Double.POSITIVE_INFINITY;
      for (int hour = 12; hour < 36; hour++) {
        double airC = airC(season.day(n).plusDays(hour / 24), hour % 24);
        meanC[n] += airC / 24;
        minC[n] = Math.min(minC[n], airC);
        portions[n] += chill.add(airC);
        hours[n] += ChillingHours.belowOfHour(airC);
        heat[n] += GrowingDegreeHours.ofHour(airC);
      }
    }
    Surroundings outside =
        new Surroundings(
            meanC,
            meanC,
            minC,
            dayLengthH,
            portions,
            hours,
            heat,
            season.index(season.coreStart()),
            season.index(season.midwinter()),
            season.index(season.start().plusMonths(7)));
    return PlantState.live(SomePlant.of(row).plant(), season, outside);
  }

  private static double airC(LocalDate day, int hour) {
    return AIR.series().days().containsKey(day) ? AIR.on(day)[hour] : 20;
  }

  private static HourlyAir air() {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (CSVRecord row : CheckTable.rows("../phenology/air")) {
      days.put(
          LocalDate.parse(row.get("date")),
          new DailyExtremes(CheckTable.number(row, "tmin_c"), CheckTable.number(row, "tmax_c")));
    }
    return new HourlyAir(new TemperatureSeries("HF001", days, new TreeMap<>()), LATITUDE_DEG);
  }
}
