package org.hibernacle.report.pdf;

import java.time.LocalDate;
import java.util.Locale;
import org.hibernacle.report.HandOut;
import org.hibernacle.report.SeasonReport;

/**
 * What a file says of itself, on each page and to programs.
 *
 * @param title of the file
 * @param subtitle below it
 * @param pageFooter at the foot of each page
 * @param digest that the file's identity follows from
 * @param letterPaper Letter instead of A4
 * @param language of the words
 * @param dated day of writing
 */
record Imprint(
    String title,
    String subtitle,
    String pageFooter,
    String digest,
    boolean letterPaper,
    Locale language,
    LocalDate dated) {
  static Imprint of(SeasonReport report) {
    return new Imprint(
        report.title(),
        report.subtitle(),
        report.pageFooter(),
        report.digest(),
        report.letterPaper(),
        report.language(),
        report.dated());
  }

  static Imprint of(HandOut handOut) {
    return new Imprint(
        handOut.title(),
        handOut.subtitle(),
        handOut.pageFooter(),
        handOut.digest(),
        handOut.letterPaper(),
        handOut.language(),
        handOut.dated());
  }

  /** A file of another title that belongs to the same report. */
  Imprint titled(String other) {
    return new Imprint(other, subtitle, pageFooter, digest + other, letterPaper, language, dated);
  }
}
