package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Settings.Paper;
import org.hibernacle.model.Settings.Units;

/** Reads the settings. Only the latitude has no default, for the length of the day hangs on it. */
final class SettingsRows {
  static final double SITE_COLDER_K = 1.5;
  static final double SAFETY_MARGIN_K = 2;

  /** A year of them. */
  private static final int MOST_EXTRA_DAYS = 366;

  private static final Set<DayOfWeek> WEEKEND = EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

  private SettingsRows() {}

  static Optional<Settings> read(Row row) {
    if (row.isBlank(Column.LATITUDE)) {
      row.missing(Code.NO_LATITUDE, Column.LATITUDE);
    }
    if (!row.isBlank(Column.SITE)) {
      ExampleRow.warn(row, Column.SITE);
    }
    OptionalDouble latitude = row.number(Column.LATITUDE, -66, 66);
    Paper paper = row.choice(Column.PAPER, Choice.PAPER, Paper.A4);
    Settings settings =
        new Settings(
            row.text(Column.SITE),
            row.number(Column.SITE_COLDER_BY, -5, 15, SITE_COLDER_K),
            latitude.orElse(0),
            row.number(Column.LONGITUDE, -180, 180, 0),
            zone(row),
            row.choice(Column.UNITS, Choice.UNITS, Units.METRIC),
            row.number(Column.SAFETY_MARGIN, 0, 10, SAFETY_MARGIN_K),
            row.whole(Column.ACCEPTED_RISK, 0, 9, 0),
            movingDays(row),
            away(row),
            row.whole(Column.PLANTS_PER_DAY, 1, 10_000),
            row.whole(Column.MINUTES_PER_DAY, 1, 1440),
            paper,
            row.choice(Column.FIRST_DAY_OF_WEEK, Choice.WEEKDAY, DayOfWeek.MONDAY),
            language(row),
            extraMovingDays(row),
            LabelGridRows.read(row, paper));
    return latitude.isPresent() ? Optional.of(settings) : Optional.empty();
  }

  private static ZoneId zone(Row row) {
    if (row.isBlank(Column.TIME_ZONE)) {
      row.useDefault(Column.TIME_ZONE, "UTC");
    }
    return row.parsed(Column.TIME_ZONE, SettingsRows::zoneNamed, "IN-151.zone")
        .orElse(ZoneId.of("UTC"));
  }

  private static Optional<ZoneId> zoneNamed(String text) {
    try {
      return Optional.of(ZoneId.of(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Set<DayOfWeek> movingDays(Row row) {
    if (row.isBlank(Column.MOVING_DAYS)) {
      row.useDefault(Column.MOVING_DAYS, "Saturday, Sunday");
    }
    return row.parsed(Column.MOVING_DAYS, DayLists::weekdays, "IN-151.weekdays").orElse(WEEKEND);
  }

  private static List<DateSpan> away(Row row) {
    return row.parsed(Column.AWAY, DayLists::spans, "IN-151.spans").orElse(List.of());
  }

  private static Set<LocalDate> extraMovingDays(Row row) {
    List<DateSpan> spans =
        row.parsed(Column.EXTRA_MOVING_DAYS, DayLists::spans, "IN-151.days").orElse(List.of());
    return spans.stream()
        .flatMap(span -> span.fromInclusive().datesUntil(span.toExclusive()))
        .limit(MOST_EXTRA_DAYS)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Locale language(Row row) {
    if (row.isBlank(Column.LANGUAGE_TAG)) {
      row.useDefault(Column.LANGUAGE_TAG, "en-GB");
    }
    return row.parsed(Column.LANGUAGE_TAG, SettingsRows::localeTagged, "IN-151.language")
        .orElse(Locale.UK);
  }

  private static Optional<Locale> localeTagged(String text) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(text).build();
      return locale.getLanguage().isEmpty() ? Optional.empty() : Optional.of(locale);
    } catch (IllformedLocaleException e) {
      return Optional.empty();
    }
  }
}
