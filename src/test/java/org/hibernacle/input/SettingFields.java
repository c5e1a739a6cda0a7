package org.hibernacle.input;

import java.util.List;

/** The settings as the blank form lists them. */
final class SettingFields {
  private SettingFields() {}

  static List<FormField> all() {
    return List.of(
        setting(Column.SITE, "Name of the garden, for titles.")
            .example("Example garden (write your own)"),
        setting(
                Column.SITE_COLDER_BY,
                "How much colder clear nights are at your benches than at the thermometer of the"
                    + " temperature file: a difference. Empty: 1.5 K (2.7 °F).")
            .between(-5, 15)
            .example(1.5, 2.7),
        setting(
                Column.LATITUDE,
                "Needed. Degrees, negative south of the equator. Sets the length of the day and"
                    + " when winter comes.")
            .between(-66, 66)
            .example(50, 41),
        setting(Column.LONGITUDE, "Degrees, negative west of Greenwich. Empty: 0.")
            .between(-180, 180)
            .example(14, -85),
        setting(Column.TIME_ZONE, "Such as Europe/Vienna or America/Chicago. Empty: UTC.")
            .example("Europe/Vienna", "America/Chicago"),
        setting(
                Column.UNITS,
                "metric or US, for what the program prints. Headings with their units decide how this workbook is read.")
            .from("units")
            .example("metric", "US"),
        setting(
                Column.SAFETY_MARGIN,
                "How far every plant is kept above its limit: a difference. Empty: 2 K (3.6 °F).")
            .between(0, 10)
            .example(2, 3.6),
        setting(
                Column.ACCEPTED_RISK,
                "In how many winters out of ten the safety margin may be used up. Empty: 0.")
            .wholeBetween(0, 9)
            .example(0),
        setting(
                Column.MOVING_DAYS,
                "Weekdays on which you are willing to carry pots: Sat, Sun, or weekend, or any. Empty: Sat, Sun.")
            .example("Sat, Sun"),
        setting(
            Column.AWAY,
            "When nobody is there, first and last day: 2026-12-20 to 2027-01-06. Several with ;"
                + " between."),
        setting(
            Column.EXTRA_MOVING_DAYS,
            "Days besides on which you will carry pots, even while away: 2026-11-04. Several with ;"
                + " between."),
        setting(
                Column.PLANTS_PER_DAY,
                "The most plants you carry on one day. Empty: as many as need be.")
            .wholeBetween(1, 10_000),
        setting(
                Column.MINUTES_PER_DAY,
                "The most minutes of carrying on one day. Empty: as many as need be.")
            .wholeBetween(1, 1440),
        setting(Column.PAPER, "A4 or Letter. Empty: A4.").from("papers").example("A4", "Letter"),
        setting(Column.FIRST_DAY_OF_WEEK, "First column of the calendar. Empty: Monday.")
            .from("weekdays")
            .example("Monday", "Sunday"),
        setting(Column.LANGUAGE_TAG, "For dates and numbers: en-GB, en-US, de-AT. Empty: en-GB.")
            .example("en-GB", "en-US"),
        setting(
                Column.LABEL_ROWS,
                "For pot labels, one a pot, all of one size: rows on a sheet of paper. Empty: 5.")
            .wholeBetween(1, 40),
        setting(Column.LABEL_COLUMNS, "Labels side by side. Empty: 3.").wholeBetween(1, 40),
        length(Column.LABEL_MARGIN_TOP, "Above the first row of labels."),
        length(Column.LABEL_MARGIN_BOTTOM, "Below the last row."),
        length(Column.LABEL_MARGIN_LEFT, "Left of the first column."),
        length(Column.LABEL_MARGIN_RIGHT, "Right of the last column."),
        length(Column.LABEL_GAP_DOWN, "Between two rows."),
        length(Column.LABEL_GAP_ACROSS, "Between two columns."));
  }

  private static FormField length(Column column, String help) {
    boolean gap = column == Column.LABEL_GAP_DOWN || column == Column.LABEL_GAP_ACROSS;
    String usual = gap ? " Empty: 0.4 cm (0.16 inches)." : " Empty: 1 cm (0.39 inches).";
    return setting(column, help + usual).between(0, 15);
  }

  private static FormField setting(Column column, String help) {
    return FormField.of(column, 34, help);
  }
}
