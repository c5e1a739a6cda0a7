package org.hibernacle.climate;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.junit.jupiter.api.Test;

class DayLengthTest {
  /** Sources: see checks/SOURCES.md, sunrise_sunset.csv. 0.02 h is what both formulas allow. */
  @Test
  void agreesWithTwoIndependentEphemerides() {
    int checked = 0;
    for (CSVRecord row : CheckTable.rows("sunrise_sunset")) {
      double latitudeDeg = number(row, "latitude");
      if (Math.abs(latitudeDeg) > 65) {
        continue;
      }
      DayLength day = DayLength.at(latitudeDeg, LocalDate.parse(row.get("date")));
      assertEquals(number(row, "noaa_daylength_h"), day.lengthH(), 0.02, row.toString());
      assertEquals(number(row, "ephem_daylength_h"), day.lengthH(), 0.02, row.toString());
      checked++;
    }
    assertEquals(42, checked);
  }

  /**
   * The northernmost place of the same table, beyond the latitudes the program takes, where the Sun
   * grazes the horizon: a minute of time there is a hundredth of a degree. Blank cells are days
   * without sunrise.
   */
  @Test
  void holdsBeyondThePolarCircleToo() {
    int checked = 0;
    for (CSVRecord row : CheckTable.rows("sunrise_sunset")) {
      double latitudeDeg = number(row, "latitude");
      if (latitudeDeg < 65) {
        continue;
      }
      LocalDate date = LocalDate.parse(row.get("date"));
      double lengthH = DayLength.at(latitudeDeg, date).lengthH();
      if (row.get("noaa_daylength_h").isEmpty()) {
        assertEquals(date.getMonthValue() == 6 ? 24 : 0, lengthH, row.toString());
      } else {
        double toleranceH = number(row, "noaa_daylength_h") < 2 ? 0.15 : 0.05;
        assertEquals(number(row, "noaa_daylength_h"), lengthH, toleranceH, row.toString());
      }
      checked++;
    }
    assertEquals(7, checked);
  }

  /**
   * Spencer's series (checks/SOURCES.md) knows no leap years and holds the declination of the day's
   * beginning all day; an ephemeris does neither. What is left is less than the day length changes
   * from one day to the next: 0.06 h up to 55°, 0.14 h up to 70°.
   */
  @Test
  void agreesWithSpencersSeriesWithinADaysChange() {
    int checked = 0;
    for (CSVRecord row : CheckTable.rows("daylength_spencer_chillr")) {
      double latitudeDeg = number(row, "latitude");
      LocalDate day = LocalDate.ofYearDay(2023, (int) number(row, "day_of_year"));
      double toleranceH = Math.abs(latitudeDeg) <= 55 ? 0.06 : 0.14;
      assertEquals(
          number(row, "daylength_h"),
          DayLength.at(latitudeDeg, day).lengthH(),
          toleranceH,
          row.toString());
      checked++;
    }
    assertEquals(80, checked);
  }

  /** Printed yearly table for London (51.5° N), 2024; almanacs differ by up to 1.5 minutes. */
  @Test
  void agreesWithAPrintedTable() {
    assertEquals(7 + 55 / 60.0, lengthInLondonH("2024-01-01"), 0.025);
    assertEquals(8 + 20 / 60.0, lengthInLondonH("2024-01-15"), 0.025);
    assertEquals(9 + 6 / 60.0, lengthInLondonH("2024-01-31"), 0.025);
    assertEquals(9 + 59 / 60.0, lengthInLondonH("2024-02-15"), 0.025);
  }

  @Test
  void liesEvenlyAroundNoon() {
    DayLength day = DayLength.at(-37.8, LocalDate.of(2024, 6, 20));
    assertEquals(12 - day.sunriseSolarH(), day.sunsetSolarH() - 12, 1e-9);
  }

  @Test
  void polarDayAndNightAreWholeDays() {
    assertEquals(24, DayLength.at(75, LocalDate.of(2024, 6, 20)).lengthH());
    assertEquals(0, DayLength.at(75, LocalDate.of(2024, 12, 20)).lengthH());
    assertEquals(0, DayLength.at(-75, LocalDate.of(2024, 6, 20)).lengthH());
    assertEquals(24, DayLength.at(-75, LocalDate.of(2024, 12, 20)).lengthH());
  }

  @Test
  void neverJumpsNearThePolarCircle() {
    for (double latitudeDeg : new double[] {-66, 65, 66}) {
      LocalDate first = LocalDate.of(2023, 7, 1);
      double beforeH = DayLength.at(latitudeDeg, first).lengthH();
      for (LocalDate day = first.plusDays(1);
          day.isBefore(first.plusYears(1));
          day = day.plusDays(1)) {
        double lengthH = DayLength.at(latitudeDeg, day).lengthH();
        assertEquals(beforeH, lengthH, 1.0, latitudeDeg + "° on " + day);
        beforeH = lengthH;
      }
    }
  }

  private static double lengthInLondonH(String day) {
    return DayLength.at(51.5, LocalDate.parse(day)).lengthH();
  }
}
