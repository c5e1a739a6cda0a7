package org.hibernacle.physiology;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Year;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.SomePlant;
import org.hibernacle.climate.ChillingHours;
import org.hibernacle.climate.DayLength;
import org.hibernacle.climate.DynamicModel;
import org.hibernacle.climate.GrowingDegreeHours;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;

/**
 * Rest, waking and leaf fall against a forest: bud break of wild highbush blueberry, observed in
 * the Harvard Forest, Massachusetts, in twelve springs; checks/SOURCES.md says where from. There
 * are daily means only, so a day's wave of 11 K from low to high is laid round them: own choice.
 */
class MeasuredBudBreakTest {
  private static final double LATITUDE_DEG = 42.54;
  private static final double HALF_RANGE_K = 5.5;

  /** An early flusher with the middle need of chill, as highbush blueberry is. */
  private static final Plant EARLY = SomePlant.of("Larix decidua").plant();

  private static final TreeMap<LocalDate, Double> MEAN_C = means();
  private static final TreeMap<Integer, Double> SEEN = seen();

  /**
   * A sum of warmth is worth something if it tells springs apart: what is left over must be clearly
   * less than what a fixed calendar day leaves.
   */
  @Test
  void theWarmthAfterRestTellsEarlySpringsFromLateOnes() {
    assertEquals(12, SEEN.size());
    double[] late = SEEN.keySet().stream().mapToDouble(MeasuredBudBreakTest::daysLate).toArray();
    double calendar = spread(SEEN.values().stream().mapToDouble(Double::doubleValue).toArray());
    assertEquals(6.7, calendar, 0.1, "days from spring to spring");
    assertTrue(spread(late) < 0.6 * calendar, "left over: " + spread(late) + " days");
  }

  /** First green tips are seen before the tender leaves that the model means. */
  @Test
  void tenderGrowthIsForecastAFewDaysAfterTheFirstGreen() {
    double sum = 0;
    for (int year : SEEN.keySet()) {
      double late = daysLate(year);
      assertTrue(late >= 0 && late <= 16, year + ": " + late + " days after the first green");
      sum += late;
    }
    assertTrue(sum / SEEN.size() <= 10, "on average: " + sum / SEEN.size());
  }

  /** Leaves of the forest fall from early October to the end of the month; from memory. */
  @Test
  void leavesFallInOctober() {
    int days = 0;
    for (int year = 1990; year <= 2000; year++) {
      PlantState state = live(new Season(year, false));
      int bare = 0;
      while (!state.bare()[bare]) {
        bare++;
      }
      LocalDate day = new Season(year, false).day(bare);
      assertTrue(day.isAfter(LocalDate.of(year, 10, 4)), day.toString());
      assertTrue(day.isBefore(LocalDate.of(year, 11, 5)), day.toString());
      days += day.getDayOfYear();
    }
    LocalDate middle = LocalDate.ofYearDay(1999, days / 11);
    assertTrue(middle.isAfter(LocalDate.of(1999, 10, 8)), middle.toString());
    assertTrue(middle.isBefore(LocalDate.of(1999, 10, 25)), middle.toString());
  }

  private static double daysLate(int year) {
    Season season = new Season(year - 1, false);
    LocalDate forecast = season.day(live(season).budBreak());
    return forecast.getDayOfYear() - SEEN.get(year);
  }

  private static PlantState live(Season season) {
    int nights = season.days() - 1;
    double[] meanC = new double[nights];
    double[] minC = new double[nights];
    double[] dayLengthH = new double[nights];
    double[] portions = new double[nights];
    double[] hours = new double[nights];
    double[] heat = new double[nights];
    DynamicModel chill = new DynamicModel();
    for (int n = 0; n < nights; n++) {
      LocalDate day = season.day(n);
      meanC[n] = meanC(day);
      minC[n] = meanC[n] - HALF_RANGE_K;
      dayLengthH[n] = DayLength.at(LATITUDE_DEG, day).lengthH();
      for (int hour = 0; hour < 24; hour++) {
        double airC = meanC[n] + HALF_RANGE_K * Math.cos(2 * Math.PI * (hour - 15) / 24);
        portions[n] += chill.add(airC);
        hours[n] += ChillingHours.belowOfHour(airC);
        heat[n] += GrowingDegreeHours.ofHour(airC);
      }
    }
    return PlantState.live(
        EARLY,
        season,
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
            season.index(season.start().plusMonths(7))));
  }

  /** A few days at the end of each October are missing; the day before stands for them. */
  private static double meanC(LocalDate day) {
    var known = MEAN_C.floorEntry(day);
    return known == null ? 15 : known.getValue();
  }

  private static double spread(double[] values) {
    double mean = 0;
    for (double value : values) {
      mean += value / values.length;
    }
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean) / values.length;
    }
    return Math.sqrt(squares);
  }

  private static TreeMap<LocalDate, Double> means() {
    TreeMap<LocalDate, Double> means = new TreeMap<>();
    for (CSVRecord row : CheckTable.rows("blueberry_days")) {
      means.put(LocalDate.parse(row.get("date")), number(row, "mean_C"));
    }
    return means;
  }

  /** Mean day of the year on which the plants under watch broke bud, by year. */
  private static TreeMap<Integer, Double> seen() {
    return CheckTable.rows("blueberry_bud_break").stream()
        .collect(
            Collectors.groupingBy(
                row -> Year.parse(row.get("year")).getValue(),
                TreeMap::new,
                Collectors.averagingDouble(row -> number(row, "day_of_year"))));
  }
}
