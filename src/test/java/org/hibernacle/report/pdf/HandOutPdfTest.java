package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.HandOut;
import org.hibernacle.report.HandOutAuthor;
import org.hibernacle.report.HandOutFixtures;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandOutPdfTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/hand-out.pdf.txt");
  private static final DateSpan AUTUMN =
      new DateSpan(LocalDate.of(2026, 10, 20), LocalDate.of(2026, 11, 20));

  private static byte[] bytes(SeasonPlan plan, DateSpan days) throws IOException {
    Words words = Words.of(plan.inventory().settings().language());
    List<HandOut> editions = HandOutAuthor.editions(plan, Fixtures.facts(), words, days);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.Result result =
        HandOutPdf.write(editions, Palette.standard(), Optional.empty(), out);
    assertEquals(List.of(), result.missing());
    return out.toByteArray();
  }

  /** All words, bookmarks, page shapes and fonts; renewed by {@code -Dgolden.update=true}. */
  @Test
  void readsAsTheGoldenDump() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(bytes(Fixtures.plan(), AUTUMN))) {
      if (Boolean.getBoolean("golden.update")) {
        Files.writeString(GOLDEN, pdf.dump());
      }
      assertEquals(Files.readString(GOLDEN), pdf.dump());
    }
  }

  @ParameterizedTest
  @CsvSource({"1, US", "20, US", "150, METRIC"})
  void hasTwoToFourPagesInLargeLettersHoweverLargeTheGarden(int times, Settings.Units units)
      throws IOException {
    Locale language = units == Settings.Units.US ? Locale.US : Locale.UK;
    SeasonPlan plan = HandOutFixtures.garden(times, Fixtures.settings(units, language));
    try (PdfProbe pdf = PdfProbe.of(bytes(plan, AUTUMN))) {
      assertTrue(pdf.pages() >= 2 && pdf.pages() <= HandOut.MOST_PAGES, pdf.pages() + " pages");
      for (int page = 1; page <= pdf.pages(); page++) {
        assertTrue(pdf.text(page).contains("Page " + page + " of " + pdf.pages()));
        assertTrue(pdf.text(page).length() > 100, "page " + page + " is nearly empty");
        for (PdfProbe.Letter letter : pdf.letters(page)) {
          assertTrue(letter.sizePt() >= 12, page + ": " + letter);
          assertTrue(letter.font().contains("+DejaVuSans"), "embedded in part: " + letter);
        }
      }
      PageGeometryTest.assertWithinMargins(pdf);
      String words = pdf.text();
      assertEquals(units == Settings.Units.US, words.contains("\u00b0F"));
      assertEquals(units == Settings.Units.METRIC, words.contains("\u00b0C"));
      assertEquals(
          times > 1, PdfProbe.squeezed(words).contains("more(theseasoncalendarnamesthem)"));
    }
  }

  @Test
  void everyWordOfTheEditionIsOnPaperInOrder() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    HandOut edition =
        HandOutAuthor.editions(plan, Fixtures.facts(), Words.of(Locale.UK), AUTUMN).get(0);
    try (PdfProbe pdf = PdfProbe.of(bytes(plan, AUTUMN))) {
      StringBuilder paper = new StringBuilder();
      for (int page = 1; page <= pdf.pages(); page++) {
        paper.append(
            PdfProbe.squeezed(pdf.text(page))
                .replaceAll(PdfProbe.squeezed(edition.pageFooter()) + ".*$", ""));
      }
      int at = 0;
      for (HandOut.Part part : edition.parts()) {
        at = paper.indexOf(PdfProbe.squeezed(part.title()), at);
        assertTrue(at >= 0, part.title());
        for (HandOut.Item item : part.items()) {
          for (String text : List.of(item.label(), item.text())) {
            int found = paper.indexOf(PdfProbe.squeezed(text), at);
            assertTrue(found >= at, text);
            at = found;
          }
        }
      }
    }
  }

  @Test
  void equalPlansGiveEqualBytes() throws IOException {
    byte[] expected = bytes(Fixtures.plan(), AUTUMN);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertArrayEquals(expected, bytes(Fixtures.plan(), AUTUMN));
    } finally {
      Locale.setDefault(before);
    }
    DateSpan other = new DateSpan(AUTUMN.fromInclusive(), AUTUMN.toExclusive().minusDays(1));
    try (PdfProbe a = PdfProbe.of(expected);
        PdfProbe b = PdfProbe.of(bytes(Fixtures.plan(), other))) {
      String idA = a.document.getDocument().getDocumentID().toString();
      assertFalse(idA.equals(b.document.getDocument().getDocumentID().toString()), idA);
    }
  }
}
