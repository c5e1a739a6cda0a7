package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.ics.CalendarFile;
import org.hibernacle.report.pdf.CalendarPdf;
import org.hibernacle.report.pdf.HandOutPdf;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * Every writer gives the same bytes whatever the machine's language and zone. The zones lie on both
 * sides of UTC, two of them with half hours, one with a half hour of summer. The words are compared
 * in all pairs, the files, which take longer, in pairs with each language and zone once.
 */
class EveryMachineTest {
  private static final SeasonPlan PLAN =
      Fixtures.firstPlants(
          Fixtures.plan(Fixtures.settings(Settings.Units.METRIC, Locale.GERMANY)), 4);

  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  private static final List<String> LANGUAGES = List.of("en", "de", "tr", "ja");
  private static final List<String> ZONES =
      List.of("UTC", "Asia/Tokyo", "America/St_Johns", "Australia/Lord_Howe");

  private static final Words WORDS = Words.of(Locale.GERMANY);

  private static SeasonReport report() {
    return ReportAuthor.write(PLAN, Fixtures.facts(), WORDS);
  }

  private static List<byte[]> files() throws IOException {
    RunFacts facts = Fixtures.facts();
    DateSpan days = new DateSpan(LocalDate.of(2026, 11, 1), LocalDate.of(2026, 11, 15));
    List<ByteArrayOutputStream> files = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      files.add(new ByteArrayOutputStream());
    }
    WorkbookWriter.write(report(), files.get(0));
    CalendarPdf.write(report(), Palette.standard(), files.get(1));
    CalendarFile.write(AgendaAuthor.write(PLAN, facts, WORDS), files.get(2));
    HandOutPdf.write(
        HandOutAuthor.editions(PLAN, facts, WORDS, days),
        Palette.standard(),
        Optional.empty(),
        files.get(3));
    return files.stream().map(ByteArrayOutputStream::toByteArray).toList();
  }

  private static void standOn(String language, String place) {
    Locale.setDefault(Locale.forLanguageTag(language));
    TimeZone.setDefault(TimeZone.getTimeZone(place));
  }

  @Test
  void everyWordIsTheSame() {
    standOn("en-GB", "Europe/London");
    SeasonReport expected = report();
    for (String language : LANGUAGES) {
      for (String place : ZONES) {
        standOn(language, place);
        assertEquals(expected, report(), language + " " + place);
      }
    }
  }

  @Test
  void everyFileHasTheSameBytes() throws IOException {
    standOn("en-GB", "Europe/London");
    List<byte[]> expected = files();
    for (int pair = 0; pair < ZONES.size(); pair++) {
      standOn(LANGUAGES.get(pair), ZONES.get(pair));
      List<byte[]> found = files();
      for (int i = 0; i < expected.size(); i++) {
        assertArrayEquals(expected.get(i), found.get(i), "file " + i + " in " + ZONES.get(pair));
      }
    }
  }
}
