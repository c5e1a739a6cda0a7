package org.hibernacle.report.xlsx;

import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTHeaderFooter;

/**
 * How sheets look on paper: page, margins, header and footer as the template has them, but turned
 * where upright paper is too narrow; headings on every page; so many pages across that letters stay
 * legible.
 */
final class PageSetup {
  /** Longest header or footer that the file format knows, with its codes. */
  private static final int LONGEST = 255;

  /** Letters are printed at this share of their size at least. */
  static final double SMALLEST_SCALE = 0.7;

  private static final double A4_LONGER_INCHES = 11.69;
  private static final double A4_SHORTER_INCHES = 8.27;
  private static final double LETTER_LONGER_INCHES = 11;
  private static final double LETTER_SHORTER_INCHES = 8.5;

  /** Width of a digit of 10 point letters, inches. */
  static final double DIGIT_INCHES = 7 / 96.0;

  private final SeasonReport report;
  private final String page;

  PageSetup(SeasonReport report, Words words) {
    this.report = report;
    this.page = words.text("workbook.page", "&P", "&N");
  }

  /**
   * Sets a sheet up.
   *
   * @param sheet to print
   * @param pattern sheet of the template to take margins, header and footer from
   * @param characters that the printed columns are wide
   * @param headingRows rows at the top that each page repeats; 0 for none
   */
  void apply(XSSFSheet sheet, XSSFSheet pattern, double characters, int headingRows) {
    boolean landscape =
        pattern.getPrintSetup().getLandscape() || pagesAcross(pattern, characters, false) > 1;
    sheet
        .getPrintSetup()
        .setPaperSize(report.letterPaper() ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
    sheet.getPrintSetup().setLandscape(landscape);
    for (PageMargin margin : PageMargin.values()) {
      sheet.setMargin(margin, pattern.getMargin(margin));
    }
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.getPrintSetup().setFitWidth((short) pagesAcross(pattern, characters, landscape));
    if (pattern.getCTWorksheet().isSetHeaderFooter()) {
      headerFooter(sheet, (CTHeaderFooter) pattern.getCTWorksheet().getHeaderFooter().copy());
    }
    if (headingRows > 0) {
      sheet.setRepeatingRows(new CellRangeAddress(0, headingRows - 1, -1, -1));
    }
  }

  private int pagesAcross(XSSFSheet pattern, double characters, boolean landscape) {
    double longer = report.letterPaper() ? LETTER_LONGER_INCHES : A4_LONGER_INCHES;
    double shorter = report.letterPaper() ? LETTER_SHORTER_INCHES : A4_SHORTER_INCHES;
    double inches =
        (landscape ? longer : shorter)
            - pattern.getMargin(PageMargin.LEFT)
            - pattern.getMargin(PageMargin.RIGHT);
    double across = characters * DIGIT_INCHES * SMALLEST_SCALE / inches;
    return (int) Math.max(1, Math.ceil(across));
  }

  private void headerFooter(XSSFSheet sheet, CTHeaderFooter texts) {
    UnaryOperator<String> fill = text -> filled(text, sheet.getSheetName());
    if (texts.isSetOddHeader()) {
      texts.setOddHeader(fill.apply(texts.getOddHeader()));
    }
    if (texts.isSetOddFooter()) {
      texts.setOddFooter(fill.apply(texts.getOddFooter()));
    }
    if (texts.isSetEvenHeader()) {
      texts.setEvenHeader(fill.apply(texts.getEvenHeader()));
    }
    if (texts.isSetEvenFooter()) {
      texts.setEvenFooter(fill.apply(texts.getEvenFooter()));
    }
    if (texts.isSetFirstHeader()) {
      texts.setFirstHeader(fill.apply(texts.getFirstHeader()));
    }
    if (texts.isSetFirstFooter()) {
      texts.setFirstFooter(fill.apply(texts.getFirstFooter()));
    }
    sheet.getCTWorksheet().setHeaderFooter(texts);
  }

  /** The template's text with its words in braces filled in, cut until it fits. */
  private String filled(String text, String sheetName) {
    String filled = text;
    for (int most = 120; most >= 0; most -= 20) {
      filled =
          text.replace("{title}", plain(report.title(), most))
              .replace("{sheet}", plain(sheetName, most))
              .replace("{subtitle}", plain(report.subtitle(), most))
              .replace("{origin}", plain(report.pageFooter(), most))
              .replace("{run}", plain(report.digest(), most))
              .replace("{page}", page);
      if (filled.length() <= LONGEST) {
        return filled;
      }
    }
    return filled.substring(0, LONGEST);
  }

  /** Text in which no character is taken for a code. */
  private static String plain(String text, int longest) {
    String doubled = text.replace("&", "&&");
    return doubled.length() <= longest
        ? doubled
        : text.replace("&", "+").substring(0, Math.min(text.length(), longest));
  }
}
