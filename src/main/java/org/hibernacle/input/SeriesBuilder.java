package org.hibernacle.input;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Phrase;

/** Puts the rows of all files together, by day, and finds rows that contradict each other. */
final class SeriesBuilder {
  private static final int LISTED_DAYS = 5;

  /** September to November, and half a year later in the south. */
  private static final Set<Month> AUTUMNS =
      EnumSet.of(
          Month.SEPTEMBER, Month.OCTOBER, Month.NOVEMBER, Month.MARCH, Month.APRIL, Month.MAY);

  private final Optional<ZoneId> zone;
  private final QualityPolicy quality;
  private final Problems problems;
  private final TreeMap<LocalDate, DayFigures> days = new TreeMap<>();
  private final TreeMap<LocalDate, TreeMap<Integer, PartOfDay>> parts = new TreeMap<>();
  private final TreeMap<LocalDate, Double> snowCm = new TreeMap<>();
  private final TreeMap<LocalDate, DayReadings> readings = new TreeMap<>();
  private final TreeMap<LocalDate, Origin> origins = new TreeMap<>();
  private final TreeSet<LocalDate> hourTwice = new TreeSet<>();
  private Optional<LocalDate> open = Optional.empty();
  private DayReadings openReadings = new DayReadings();

  /**
   * @param options with the zone whose rules tell when clocks go back, if they are known
   */
  SeriesBuilder(TemperatureCsv.Options options, Problems problems) {
    this.zone = options.zone();
    this.quality = options.quality();
    this.problems = problems;
  }

  /** Adds one or both extremes of a day; true if an earlier row said the same. */
  boolean add(LocalDate day, OptionalDouble minC, OptionalDouble maxC, Origin where) {
    DayFigures more = new DayFigures(minC, maxC);
    DayFigures before = days.getOrDefault(day, DayFigures.NONE);
    if (before.contradicts(more)) {
      problems.error("IN-316.days", where.where(), day, more.shown(), before.shown());
      return false;
    }
    days.put(day, before.with(more));
    origins.putIfAbsent(day, where);
    return before.says(more);
  }

  /** Adds extremes of a part of a day; true if an earlier row said the same. */
  boolean addPart(LocalDate day, int secondOfDay, PartOfDay part, Origin where) {
    origins.putIfAbsent(day, where);
    PartOfDay before =
        parts.computeIfAbsent(day, d -> new TreeMap<>()).putIfAbsent(secondOfDay, part);
    if (before != null && !before.equals(part)) {
      problems.error("IN-316.parts", where.where(), day, time(secondOfDay));
    }
    return part.equals(before);
  }

  /** Adds the depth of snow of a day. */
  void addSnow(LocalDate day, double depthCm, Origin where) {
    Double before = snowCm.putIfAbsent(day, depthCm);
    if (before != null && before != depthCm) {
      problems.error(
          "IN-316.snow", where.where(), day, DayFigures.round(depthCm), DayFigures.round(before));
    }
  }

  /**
   * Adds a reading; true if an earlier row said the same. The hour that comes twice when clocks go
   * back is kept twice.
   */
  boolean add(LocalDate day, int secondOfDay, double airC, Origin where) {
    DayReadings ofDay = goOnTo(day, where);
    OptionalDouble before = ofDay.at(secondOfDay);
    if (before.isPresent()) {
      if (before.getAsDouble() == airC) {
        return true;
      }
      if (!clocksGoBack(day, secondOfDay)) {
        problems.error(
            "IN-316.times",
            where.where(),
            day,
            time(secondOfDay),
            DayFigures.round(airC),
            DayFigures.round(before.getAsDouble()));
        return false;
      }
      hourTwice.add(day);
    }
    ofDay.add(secondOfDay, airC);
    return false;
  }

  /** Takes in extremes between the readings of a day that has some. */
  void widen(LocalDate day, double minC, double maxC) {
    Optional.ofNullable(readings.get(day)).ifPresent(ofDay -> ofDay.widen(minC, maxC));
  }

  /** Lets the day go that was read last; to be called at the end of each file too. */
  void close() {
    open.flatMap(day -> Optional.ofNullable(readings.get(day)).filter(r -> r.condense() < 0))
        .ifPresent(r -> problems.error("IN-316.readings", origin(open.get()), open.get()));
    open = Optional.empty();
  }

  private DayReadings goOnTo(LocalDate day, Origin where) {
    if (open.isEmpty() || !open.get().equals(day)) {
      close();
      open = Optional.of(day);
      openReadings = readings.computeIfAbsent(day, d -> new DayReadings());
      origins.putIfAbsent(day, where);
    }
    return openReadings;
  }

  /** By the rules of the zone; else early on a Sunday of autumn, north or south. */
  private boolean clocksGoBack(LocalDate day, int secondOfDay) {
    if (zone.isPresent()) {
      return zone.get()
              .getRules()
              .getValidOffsets(day.atStartOfDay().plusSeconds(secondOfDay))
              .size()
          == 2;
    }
    return day.getDayOfWeek() == DayOfWeek.SUNDAY
        && secondOfDay < 4 * 3600
        && AUTUMNS.contains(day.getMonth());
  }

  /** All that was read; reports an error and is empty if no day is left. */
  Optional<ReadSeries> build(String station, String where) {
    close();
    TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();
    TreeSet<LocalDate> incomplete = new TreeSet<>();
    TreeSet<LocalDate> hoursBridged = new TreeSet<>();
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
    parts.forEach(
        (day, ofDay) -> {
          if (ofDay.values().stream().mapToInt(PartOfDay::hours).sum() < 24) {
            incomplete.add(day);
          } else {
            add(day, PartOfDay.extremes(ofDay.values()), where);
          }
        });
    tellIncomplete(incomplete, where);
    tellHourTwice(where);
    tellHoursBridged(hoursBridged, where);
    int before = problems.errorCount();
    NavigableMap<LocalDate, DailyExtremes> whole = whole(where);
    if (problems.errorCount() > before) {
      return Optional.empty();
    }
    if (whole.isEmpty()) {
      problems.error("IN-324.temperature", where);
      return Optional.empty();
    }
    return Optional.of(new ReadSeries(station, whole, hours, snowCm, origins));
  }

  private void add(LocalDate day, DailyExtremes extremes, String where) {
    Origin origin = origins.getOrDefault(day, new Origin(where, 0));
    add(day, OptionalDouble.of(extremes.minC()), OptionalDouble.of(extremes.maxC()), origin);
  }

  /** Days that have both extremes, and the right way round. */
  private NavigableMap<LocalDate, DailyExtremes> whole(String where) {
    TreeMap<LocalDate, DailyExtremes> whole = new TreeMap<>();
    TreeSet<LocalDate> noLowest = new TreeSet<>();
    TreeSet<LocalDate> noHighest = new TreeSet<>();
    for (Map.Entry<LocalDate, DayFigures> day : days.entrySet()) {
      DayFigures figures = day.getValue();
      if (figures.minC().isEmpty()) {
        noLowest.add(day.getKey());
      } else if (figures.maxC().isEmpty()) {
        noHighest.add(day.getKey());
      } else if (figures.minC().getAsDouble() > figures.maxC().getAsDouble()) {
        tellCrossed(day.getKey(), figures);
      } else {
        whole.put(
            day.getKey(),
            new DailyExtremes(figures.minC().getAsDouble(), figures.maxC().getAsDouble()));
      }
    }
    tellHalf(noLowest, Phrase.of("lowest"), days.size(), where);
    tellHalf(noHighest, Phrase.of("highest"), days.size(), where);
    return whole;
  }

  private void tellCrossed(LocalDate day, DayFigures figures) {
    if (quality.drops()) {
      problems.note("IN-421.crossed-day", origin(day), day, figures.shown());
    } else {
      problems.error("IN-315.day", origin(day), day, figures.shown());
    }
  }

  private Phrase origin(LocalDate day) {
    return Objects.requireNonNull(origins.get(day)).where();
  }

  private void tellHalf(Set<LocalDate> half, Phrase what, int all, String where) {
    if (half.isEmpty()) {
      return;
    }
    if (half.size() == all) {
      problems.error("IN-409", where, what);
    } else {
      problems.warning("IN-410", where, what, listed(half));
    }
  }

  private void tellIncomplete(Set<LocalDate> incomplete, String where) {
    if (!incomplete.isEmpty()) {
      problems.warning(
          "IN-321", where, listed(incomplete), DayReadings.LEAST_HOURS, DayReadings.LONGEST_GAP_H);
    }
  }

  private void tellHourTwice(String where) {
    if (!hourTwice.isEmpty()) {
      problems.note(zone.isPresent() ? "IN-328" : "IN-328.sunday", where, listed(hourTwice));
    }
  }

  private void tellHoursBridged(Set<LocalDate> hoursBridged, String where) {
    if (!hoursBridged.isEmpty()) {
      problems.note("IN-337", where, 24 - DayReadings.LEAST_HOURS, listed(hoursBridged));
    }
  }

  private static Phrase listed(Collection<LocalDate> days) {
    return Phrase.listed(days, LISTED_DAYS);
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
