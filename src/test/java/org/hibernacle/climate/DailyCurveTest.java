package org.hibernacle.climate;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.model.DailyExtremes;
import org.junit.jupiter.api.Test;

class DailyCurveTest {
  private static final DailyExtremes YESTERDAY = new DailyExtremes(1, 9);
  private static final DailyExtremes TODAY = new DailyExtremes(-3, 7);
  private static final DailyExtremes TOMORROW = new DailyExtremes(2, 12);

  /**
   * Linvill's form, run elsewhere (checks/SOURCES.md). From sunrise to midnight ours is the same.
   * In the morning that run steps at midnight, ours does not; 0.85 K is the largest gap.
   */
  @Test
  void agreesWithAnIndependentRun() {
    List<CSVRecord> rows = CheckTable.rows("linvill_hourly_chillr");
    assertEquals(15 * 24, rows.size());
    for (CSVRecord row : rows) {
      double latitudeDeg = number(row, "latitude");
      int dayOfYear = (int) number(row, "day_of_year");
      int hour = (int) number(row, "hour");
      DayLength sun = spencer(latitudeDeg, dayOfYear);
      double airC =
          DailyCurve.hours(
              new DailyCurve.Day(YESTERDAY, spencer(latitudeDeg, dayOfYear - 1)),
              new DailyCurve.Day(TODAY, sun),
              new DailyCurve.Day(TOMORROW, spencer(latitudeDeg, dayOfYear + 1)))[hour];
      double toleranceK = hour <= sun.sunriseSolarH() ? 0.85 : 1e-5;
      assertEquals(number(row, "temp_C"), airC, toleranceK, row.toString());
    }
  }

  /** Checks the day length used above against the same source's own table. */
  @Test
  void theDayLengthOfThisTestIsSpencers() {
    List<CSVRecord> rows = CheckTable.rows("daylength_spencer_chillr");
    assertEquals(80, rows.size());
    for (CSVRecord row : rows) {
      DayLength day = spencer(number(row, "latitude"), (int) number(row, "day_of_year"));
      assertEquals(number(row, "daylength_h"), day.lengthH(), 1e-5, row.toString());
    }
  }

  @Test
  void isContinuousAtMidnight() {
    DayLength day = DayLength.at(50, LocalDate.of(2024, 1, 15));
    DailyExtremes steady = new DailyExtremes(-3, 7);
    double[] airC = hours(steady, steady, steady, day);
    double stepBefore = airC[23] - airC[22];
    double stepOver = airC[0] - airC[23];
    double stepAfter = airC[1] - airC[0];
    assertTrue(stepBefore < stepOver && stepOver < stepAfter && stepAfter < 0);
  }

  @Test
  void staysWithinItsBoundsWhateverTheFront() {
    Random random = new Random(20240115);
    for (int i = 0; i < 2000; i++) {
      DailyExtremes yesterday = anyDay(random);
      DailyExtremes today = anyDay(random);
      DailyExtremes tomorrow = anyDay(random);
      DayLength day = DayLength.at(-66 + random.nextInt(133), LocalDate.ofEpochDay(i));
      for (double airC : hours(yesterday, today, tomorrow, day)) {
        assertTrue(airC <= today.maxC(), "above the maximum");
        assertTrue(airC >= Math.min(today.minC(), tomorrow.minC()), "below the minima");
      }
    }
  }

  @Test
  void aPolarNightStandsAtTheMiddle() {
    for (double airC : hours(YESTERDAY, TODAY, TOMORROW, new DayLength(12, 12))) {
      assertEquals(2, airC);
    }
  }

  /** Three days on which the Sun is up as long. */
  private static double[] hours(
      DailyExtremes yesterday, DailyExtremes today, DailyExtremes tomorrow, DayLength sun) {
    return DailyCurve.hours(
        new DailyCurve.Day(yesterday, sun),
        new DailyCurve.Day(today, sun),
        new DailyCurve.Day(tomorrow, sun));
  }

  private static DailyExtremes anyDay(Random random) {
    double minC = -30 + 50 * random.nextDouble();
    return new DailyExtremes(minC, minC + 25 * random.nextDouble());
  }

  /** Spencer J.W. 1971, Search 2(5):172, with the Sun's centre at -0.8333° at sunrise. */
  private static DayLength spencer(double latitudeDeg, int dayOfYear) {
    double g = 2 * Math.PI * (dayOfYear - 1) / 365;
    double declination =
        0.006918
            - 0.399912 * Math.cos(g)
            + 0.070257 * Math.sin(g)
            - 0.006758 * Math.cos(2 * g)
            + 0.000907 * Math.sin(2 * g)
            - 0.002697 * Math.cos(3 * g)
            + 0.00148 * Math.sin(3 * g);
    double latitude = Math.toRadians(latitudeDeg);
    double cosHourAngle =
        (Math.sin(Math.toRadians(-0.8333)) - Math.sin(latitude) * Math.sin(declination))
            / (Math.cos(latitude) * Math.cos(declination));
    double halfH = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosHourAngle)))) / 15;
    return new DayLength(12 - halfH, 12 + halfH);
  }
}
