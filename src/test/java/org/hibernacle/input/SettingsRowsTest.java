package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.LabelGrid;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Settings.Paper;
import org.hibernacle.model.Settings.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingsRowsTest {
  private static Settings settings(Object... namesAndValues) {
    return TestBook.least().settings(namesAndValues).read().sound().settings();
  }

  private static Reading with(String name, Object value) {
    return TestBook.least().settings("Latitude", 50, name, value).read();
  }

  /** A millimetre is a tenth of a centimetre, an inch 2.54 cm exactly (NIST SP 811, App. B.8). */
  @Test
  void readsTheGridOfLabels() {
    LabelGrid grid =
        settings(
                "Latitude", 50,
                "Label rows", 8,
                "Label columns", 2,
                "Label margin top (mm)", 15,
                "Label margin bottom in", 0.5,
                "Label margin left cm", 0.7,
                "Label margin right mm", 8,
                "Label gap down mm", 0,
                "Label gap between columns mm", 2.5)
            .labels();
    assertEquals(new LabelGrid(8, 2, 1.5, 1.27, 0.7, 0.8, 0, 0.25), grid);
    assertEquals(LabelGrid.USUAL, settings("Latitude", 50).labels());
    // ISO 216: A4 is 21.0 x 29.7 cm; ANSI/ASME Y14.1: Letter is 8.5 x 11 in.
    assertEquals((21.0 - 0.7 - 0.8 - 0.25) / 2, grid.labelWidthCm(Paper.A4), 1e-9);
    assertEquals((11 * 2.54 - 1.5 - 1.27) / 8, grid.labelHeightCm(Paper.LETTER), 1e-9);
  }

  @Test
  void rejectsMarginsThatLeaveNoLabel() {
    Reading reading =
        TestBook.least()
            .settings("Latitude", 50, "Label margin left mm", 110, "Label margin right mm", 95)
            .read();
    String text = reading.text("IN-380");
    assertTrue(text.contains("Label margin left mm \"110\""), reading::text);
    assertTrue(text.contains("labels -0.1 cm wide, 1 cm is the least"), text);
    assertTrue(with("Label rows", 0).text("IN-120").contains("from 1 to 40"));
  }

  @Test
  void readsEverySetting() {
    Settings settings =
        settings(
            "Site", "Mill garden",
            "Site colder than station by K", 2.5,
            "Latitude", -41.3,
            "Longitude", 174.8,
            "Time zone", "Pacific/Auckland",
            "Units", "us",
            "Safety margin K", 3,
            "Accepted risk", 1,
            "Moving days", "Sat, Sun",
            "Away", "2026-06-20 to 2026-07-06",
            "Plants per moving day", 12,
            "Minutes per moving day", 90,
            "Paper", "letter",
            "First day of week", "sunday",
            "Language tag", "en-NZ");
    assertEquals("Mill garden", settings.site());
    assertEquals(2.5, settings.siteColderByK());
    assertTrue(settings.southern());
    assertEquals(174.8, settings.longitudeDeg());
    assertEquals(ZoneId.of("Pacific/Auckland"), settings.zone());
    assertEquals(Units.US, settings.units());
    assertEquals(3, settings.safetyMarginK());
    assertEquals(1, settings.acceptedRiskOfTen());
    assertEquals(OptionalInt.of(12), settings.plantsPerMovingDay());
    assertEquals(OptionalInt.of(90), settings.minutesPerMovingDay());
    assertEquals(Paper.LETTER, settings.paper());
    assertEquals(DayOfWeek.SUNDAY, settings.firstDayOfWeek());
    assertEquals(Locale.forLanguageTag("en-NZ"), settings.language());
  }

  @Test
  void fillsInDefaultsAndListsEach() {
    Reading reading = TestBook.least().read();
    Settings settings = reading.sound().settings();
    assertEquals("", settings.site());
    assertEquals(1.5, settings.siteColderByK());
    assertEquals(0, settings.longitudeDeg());
    assertEquals(ZoneId.of("UTC"), settings.zone());
    assertEquals(Units.METRIC, settings.units());
    assertEquals(2, settings.safetyMarginK());
    assertEquals(0, settings.acceptedRiskOfTen());
    assertEquals(Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY), settings.movingDays());
    assertEquals(List.of(), settings.away());
    assertEquals(Paper.A4, settings.paper());
    assertEquals(DayOfWeek.MONDAY, settings.firstDayOfWeek());
    assertEquals("en-GB", settings.language().toLanguageTag());
    String notes = reading.text("IN-128");
    assertTrue(notes.contains("sheet Settings [IN-128]: Safety margin is empty; 2 K is used."));
    assertTrue(notes.contains("Moving days is empty; Saturday, Sunday is used."));
    assertTrue(notes.contains("Time zone is empty; UTC is used."));
    assertEquals(10, notes.lines().filter(l -> l.contains("sheet Settings")).count(), notes);
  }

  @Test
  void differencesInFahrenheitAreConvertedWithoutAnOffset() {
    Settings settings =
        settings("Latitude", 40, "Safety margin °F", 3.6, "Site colder than station by °F", 1.8);
    assertEquals(2, settings.safetyMarginK(), 1e-12);
    assertEquals(1, settings.siteColderByK(), 1e-12);
  }

  @Test
  void withoutALatitudeThereIsNoPlan() {
    Reading reading = TestBook.least().settings("Site", "Mill garden").read();
    assertTrue(reading.inventory().isEmpty());
    assertEquals(
        "ERROR inventory.xlsx, sheet Settings, column Setting [IN-152]: Latitude is empty; expected"
            + " the site's latitude in degrees, negative in the south, e.g. 52.5; day length hangs"
            + " on it; nothing was written.\n",
        reading.text("IN-152"));
  }

  @ParameterizedTest
  @CsvSource({
    "'Sat, Sun', 'SATURDAY SUNDAY'",
    "weekend, 'SATURDAY SUNDAY'",
    "Saturdays and Wednesdays, 'WEDNESDAY SATURDAY'",
    "mon/tue; THU, 'MONDAY TUESDAY THURSDAY'",
    "weekdays, 'MONDAY TUESDAY WEDNESDAY THURSDAY FRIDAY'",
    "any, 'MONDAY TUESDAY WEDNESDAY THURSDAY FRIDAY SATURDAY SUNDAY'",
    "every day, 'MONDAY TUESDAY WEDNESDAY THURSDAY FRIDAY SATURDAY SUNDAY'"
  })
  void understandsMovingDays(String text, String days) {
    EnumSet<DayOfWeek> expected = EnumSet.noneOf(DayOfWeek.class);
    for (String day : days.split(" ", -1)) {
      expected.add(DayOfWeek.valueOf(day));
    }
    assertEquals(expected, with("Moving days", text).sound().settings().movingDays());
  }

  @Test
  void anExtraMovingDayCountsEvenWhileAway() {
    Settings settings =
        settings(
            "Latitude", 50,
            "Moving days", "Sat",
            "Away", "2026-11-01 to 2026-11-30",
            "Extra moving days", "2026-11-04; 2026-11-10 to 2026-11-11");
    assertTrue(settings.isMovingDay(LocalDate.of(2026, 11, 4)), "a Wednesday");
    assertTrue(settings.isMovingDay(LocalDate.of(2026, 11, 11)));
    assertFalse(settings.isMovingDay(LocalDate.of(2026, 11, 7)), "a Saturday away");
    assertFalse(settings.isMovingDay(LocalDate.of(2026, 11, 12)));
  }

  @Test
  void theLastDayAwayBelongsToTheSpan() {
    Settings settings =
        settings(
            "Latitude",
            50,
            "Away",
            "2026-12-20 to 2027-01-06; 2027-02-14\n2027-03-01 to 2027-03-02");
    assertEquals(
        List.of(
            new DateSpan(LocalDate.of(2026, 12, 20), LocalDate.of(2027, 1, 7)),
            new DateSpan(LocalDate.of(2027, 2, 14), LocalDate.of(2027, 2, 15)),
            new DateSpan(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 3, 3))),
        settings.away());
    assertEquals(
        List.of(new DateSpan(LocalDate.of(2026, 12, 24), LocalDate.of(2026, 12, 25))),
        settings("Latitude", 50, "Away", LocalDate.of(2026, 12, 24)).away());
  }

  @ParameterizedTest
  @CsvSource({
    "Time zone, Middle Earth, 'Time zone \"Middle Earth\"; expected a time zone such as'",
    "Moving days, Caturday, 'Moving days \"Caturday\"; expected weekdays such as'",
    "Away, next week, 'Away \"next week\"; expected first and last day such as'",
    "Away, 2027-01-06 to 2026-12-20, 'expected first and last day such as'",
    "Away, 2026-12-20 to, 'expected first and last day such as'",
    "Language tag, not a tag!, 'Language tag \"not a tag!\"; expected a language tag such as'",
    "Paper, A5, 'Paper \"A5\"; expected one of A4, Letter'",
    "Units, furlongs, 'Units \"furlongs\"; expected one of metric, US'",
    "Accepted risk, 11, 'Accepted risk \"11\"; expected a number from 0 to 9'",
    "First day of week, Caturday, 'First day of week \"Caturday\"; expected one of Monday,'",
    "Safety margin K, -1, 'Safety margin K \"-1\"; expected a number from 0 to 10 K'"
  })
  void saysWhatIsWrongInItsCell(String name, String value, String message) {
    Reading reading = with(name, value.matches("-?\\d+") ? Double.valueOf(value) : value);
    assertTrue(reading.inventory().isEmpty());
    String error = reading.problems().sorted().get(0).toString();
    assertTrue(error.startsWith("inventory.xlsx, sheet Settings, B3 ["), error);
    assertTrue(error.contains(message), error);
  }

  @Test
  void unknownAndDoubledSettingsAreReported() {
    assertEquals(
        "WARNING inventory.xlsx, sheet Settings, A3 [IN-150]: setting \"Safety marge\" is not one"
            + " the program knows; expected \"Safety margin\" if that is meant; it is carried into"
            + " the plan as it stands, and nothing is read from it.\n",
        with("Safety marge", 3).text("IN-150"));
    assertTrue(
        with("latitude", 51)
            .text("IN-112")
            .contains("A3 [IN-112]: \"latitude\" and \"Latitude\" both mean Latitude"));
  }

  @Test
  void theSheetNeedsItsTwoHeadings() {
    String text = TestBook.least().sheet("Settings", "What|How much", "Latitude", 50).read().text();
    assertTrue(
        text.contains("sheet Settings [IN-111]: no headings \"Setting\" and \"Value\""), text);
  }
}
