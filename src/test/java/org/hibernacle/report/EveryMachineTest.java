package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every writer gives the same bytes whatever the machine's language and zone. The zones lie on both
 * sides of the date line's day, two of them with half hours, one with a half hour of summer.
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

  private static List<byte[]> files() throws IOException {
    Words words = Words.of(Locale.GERMANY);
    RunFacts facts = Fixtures.facts();
    SeasonReport report = ReportAuthor.write(PLAN, facts, words);
    DateSpan days = new DateSpan(LocalDate.of(2026, 11, 1), LocalDate.of(2026, 11, 15));
    List<ByteArrayOutputStream> files = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      files.add(new ByteArrayOutputStream());
    }
    WorkbookWriter.write(report, files.get(0));
    CalendarPdf.write(report, Palette.standard(), files.get(1));
    CalendarFile.write(AgendaAuthor.write(PLAN, facts, words), files.get(2));
    HandOutPdf.write(
        HandOutAuthor.editions(PLAN, facts, words, days),
        Palette.standard(),
        Optional.empty(),
        files.get(3));
    return files.stream().map(ByteArrayOutputStream::toByteArray).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "tr", "ja"})
  void everyFileHasTheSameBytes(String language) throws IOException {
    Locale.setDefault(Locale.UK);
    TimeZone.setDefault(TimeZone.getTimeZone("Europe/London"));
    List<byte[]> expected = files();
    Locale.setDefault(Locale.forLanguageTag(language));
    for (String place : List.of("UTC", "Asia/Tokyo", "America/St_Johns", "Australia/Lord_Howe")) {
      TimeZone.setDefault(TimeZone.getTimeZone(place));
      List<byte[]> found = files();
      for (int i = 0; i < expected.size(); i++) {
        assertArrayEquals(expected.get(i), found.get(i), "file " + i + " in " + place);
      }
    }
  }
}
