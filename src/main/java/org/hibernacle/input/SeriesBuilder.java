package org.hibernacle.input;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.TemperatureSeries;

/** Puts the rows of all files together, by day, and finds rows that contradict each other. */
final class SeriesBuilder {
  private static final int LISTED_DAYS = 5;

  /** September to November, and half a year later in the south. */
  private static final Set<Month> AUTUMNS =
      EnumSet.of(
          Month.SEPTEMBER, Month.OCTOBER, Month.NOVEMBER, Month.MARCH, Month.APRIL, Month.MAY);

  private final Problems problems;
  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
  private final TreeMap<LocalDate, Double> snowCm = new TreeMap<>();
  private final TreeMap<LocalDate, DayReadings> readings = new TreeMap<>();
  private final TreeSet<LocalDate> hourTwice = new TreeSet<>();

  SeriesBuilder(Problems problems) {
    this.problems = problems;
  }

  /** Adds a day; true if an earlier row said the same. */
  boolean add(LocalDate day, DailyExtremes extremes, String where) {
    DailyExtremes before = days.putIfAbsent(day, extremes);
    if (before != null && !before.equals(extremes)) {
      problems.error(
          "IN-316",
          where,
          day + " with " + shown(extremes) + ", but an earlier row has " + shown(before),
          "each day once, or with the same values");
    }
    return extremes.equals(before);
  }

  /** Adds the depth of snow of a day. */
  void addSnow(LocalDate day, double depthCm, String where) {
    Double before = snowCm.putIfAbsent(day, depthCm);
    if (before != null && before != depthCm) {
      problems.error(
          "IN-316",
          where,
          day + " with " + round(depthCm) + " cm of snow, but an earlier row has " + round(before),
          "each day once, or with the same values");
    }
  }

  /**
   * Adds a reading; true if an earlier row said the same. The hour that comes twice when clocks go
   * back is kept twice.
   */
  boolean add(LocalDate day, int secondOfDay, double airC, String where) {
    DayReadings ofDay = readings.computeIfAbsent(day, d -> new DayReadings());
    OptionalDouble before = ofDay.at(secondOfDay);
    if (before.isPresent()) {
      if (before.getAsDouble() == airC) {
        return true;
      }
      if (!clocksMayGoBack(day, secondOfDay)) {
        problems.error(
            "IN-316",
            where,
            day
                + " "
                + time(secondOfDay)
                + " with "
                + round(airC)
                + " °C, but an earlier row has "
                + round(before.getAsDouble())
                + " °C",
            "each time once, or with the same value");
        return false;
      }
      hourTwice.add(day);
    }
    ofDay.add(secondOfDay, airC);
    return false;
  }

  /** Early on a Sunday of autumn, north or south. */
  private static boolean clocksMayGoBack(LocalDate day, int secondOfDay) {
    return day.getDayOfWeek() == DayOfWeek.SUNDAY
        && secondOfDay < 4 * 3600
        && AUTUMNS.contains(day.getMonth());
  }

  /** The series; reports an error and is empty if no day is left. */
  Optional<TemperatureSeries> build(String station, String where) {
    TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();
    List<LocalDate> incomplete = new ArrayList<>();
    List<LocalDate> hoursBridged = new ArrayList<>();
    readings.forEach(
        (day, ofDay) -> {
          if (!ofDay.complete()) {
            incomplete.add(day);
            return;
          }
          add(day, ofDay.extremes(), where);
          hours.put(day, ofDay.hours());
          if (ofDay.hoursFilled() < 24) {
            hoursBridged.add(day);
          }
        });
    tellIncomplete(incomplete, where);
    if (!hourTwice.isEmpty()) {
      problems.note(
          "IN-328",
          where,
          "times that come twice early on Sunday " + listed(hourTwice),
          "taken for the hour that is repeated when clocks go back; both readings are used");
    }
    if (!hoursBridged.isEmpty()) {
      problems.note(
          "IN-337",
          where,
          "days that lack up to "
              + (24 - DayReadings.LEAST_HOURS)
              + " of their 24 hours: "
              + listed(hoursBridged),
          "straight lines fill them, as over the hour that clocks skip in spring");
    }
    if (days.isEmpty()) {
      problems.error("IN-324", where, "no day with a temperature", "at least one");
      return Optional.empty();
    }
    return Optional.of(new TemperatureSeries(station, days, hours, snowCm));
  }

  private void tellIncomplete(List<LocalDate> incomplete, String where) {
    if (incomplete.isEmpty()) {
      return;
    }
    problems.warning(
        "IN-321",
        where,
        "days with too few readings: " + listed(incomplete),
        "readings in "
            + DayReadings.LEAST_HOURS
            + " hours of a day and no gap of more than "
            + DayReadings.LONGEST_GAP_H
            + " hours",
        "these days count as missing");
  }

  private static String listed(Collection<LocalDate> days) {
    List<String> listed = days.stream().limit(LISTED_DAYS).map(LocalDate::toString).toList();
    int more = days.size() - listed.size();
    return String.join(", ", listed) + (more > 0 ? " and " + more + " more" : "");
  }

  private static String shown(DailyExtremes extremes) {
    return round(extremes.minC()) + " to " + round(extremes.maxC()) + " °C";
  }

  private static double round(double airC) {
    return Math.round(airC * 100) / 100.0;
  }

  private static String time(int secondOfDay) {
    int hour = secondOfDay / 3600;
    int minute = secondOfDay / 60 % 60;
    int second = secondOfDay % 60;
    return two(hour) + ":" + two(minute) + (second == 0 ? "" : ":" + two(second));
  }

  private static String two(int number) {
    return (number < 10 ? "0" : "") + number;
  }
}
