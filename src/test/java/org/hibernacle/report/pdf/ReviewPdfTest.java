package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.hibernacle.model.Settings;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReviewAuthor;
import org.hibernacle.report.ReviewFixtures;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;

class ReviewPdfTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/losses-review.pdf.txt");

  private static SeasonReport report(Settings.Units units, Locale language) {
    return ReviewAuthor.write(
        ReviewFixtures.review(Fixtures.settings(units, language)),
        Fixtures.facts(),
        Words.of(language));
  }

  /** All words, bookmarks, page shapes and fonts; renewed by {@code -Dgolden.update=true}. */
  @Test
  void readsAsTheGoldenDump() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(report(Settings.Units.METRIC, Locale.UK))) {
      if (Boolean.getBoolean("golden.update")) {
        Files.writeString(GOLDEN, pdf.dump());
      }
      assertEquals(Files.readString(GOLDEN), pdf.dump());
    }
  }

  /** On both papers, as of the calendar. */
  @Test
  void noLetterIsTooSmallOrOffThePaper() throws IOException {
    for (Settings.Units units : Settings.Units.values()) {
      Locale language = units == Settings.Units.US ? Locale.US : Locale.UK;
      try (PdfProbe pdf = PdfProbe.of(report(units, language))) {
        for (int page = 1; page <= pdf.pages(); page++) {
          for (PdfProbe.Letter letter : pdf.letters(page)) {
            assertTrue(letter.sizePt() >= 9, page + ": " + letter);
          }
        }
        PageGeometryTest.assertWithinMargins(pdf);
      }
    }
  }

  /** The fixture has letter paper with US units. */
  @Test
  void fitsLetterPaperAndGivesEqualBytesInEveryLocale() throws IOException {
    SeasonReport report = report(Settings.Units.US, Locale.US);
    byte[] expected = PdfProbe.bytes(report);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertArrayEquals(expected, PdfProbe.bytes(report(Settings.Units.US, Locale.US)));
    } finally {
      Locale.setDefault(before);
    }
  }
}
