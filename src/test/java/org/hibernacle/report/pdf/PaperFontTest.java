package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;
import org.junit.jupiter.api.Test;

/** A font of the keeper's; here one that the PDF reader of the tests brings along. */
class PaperFontTest {
  /** A letter of tone that this font has and the program's own fonts lack. */
  private static final String TONE = "\u02ea";

  private static byte[] file() throws IOException {
    String path = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    try (InputStream in = PaperFontTest.class.getResourceAsStream(path)) {
      return in.readAllBytes();
    }
  }

  private static byte[] write(SeasonReport report, Optional<PaperFont> font, List<Missing> missing)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    missing.addAll(CalendarPdf.write(report, Palette.standard(), font, out).missing());
    return out.toByteArray();
  }

  @Test
  void setsWhatTheOwnFontsLack() throws IOException {
    SeasonReport report =
        PaperReports.of(List.of(), "Maple " + TONE + "ta" + TONE, DayOfWeek.MONDAY, false);
    List<Missing> without = new ArrayList<>();
    write(report, Optional.empty(), without);
    assertEquals(List.of(new Missing(0x2EA, report.title())), without);
    assertEquals(TONE + " (U+02EA)", without.get(0).character());

    Optional<PaperFont> font = Optional.of(PaperFont.of("Other.TTF", file()));
    List<Missing> with = new ArrayList<>();
    byte[] bytes = write(report, font, with);
    assertEquals(List.of(), with);
    assertArrayEquals(bytes, write(report, font, with), "equal bytes again");
    try (PdfProbe pdf = PdfProbe.of(bytes)) {
      assertTrue(pdf.text(1).contains(report.title()), pdf.text(1));
      assertTrue(
          pdf.letters(1).stream()
              .anyMatch(l -> l.text().equals(TONE) && l.font().equals("CCCCCC+LiberationSans")));
    }
  }

  @Test
  void widthsAreThoseOfTheFontsUsed() throws IOException {
    Typefaces type =
        new Typefaces(Palette.standard(), Optional.of(PaperFont.of("other.ttf", file())));
    Style style = new Style(false, 10, StyleRole.PLAIN);
    float parts = type.width("Maple ", style) + type.width(TONE, style) + type.width("ta", style);
    assertEquals(parts, type.width("Maple " + TONE + "ta", style), 1e-3);
    assertTrue(type.width(TONE, style) > 0);
  }

  @Test
  void refusesWhatIsNoFont() throws IOException {
    byte[] font = file();
    byte[] noise = new byte[5000];
    new Random(7).nextBytes(noise);
    for (byte[] bad : List.of(new byte[0], noise, Arrays.copyOf(font, 3000))) {
      String message =
          assertThrows(IOException.class, () -> PaperFont.of("bad.ttf", bad)).getMessage();
      assertTrue(message.contains("damaged"), message);
    }
    String message =
        assertThrows(IOException.class, () -> PaperFont.of("fonts.ttc", font)).getMessage();
    assertTrue(message.toLowerCase(Locale.ROOT).contains(".otf"), message);
  }
}
