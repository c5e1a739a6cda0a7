package org.hibernacle.report.xlsx;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;

/** How sheets look on paper: landscape, as wide as the page, headings and origin on every page. */
final class PrintSetup {
  /** Longest header or footer that the file format knows, with its codes. */
  private static final int LONGEST = 255;

  private final SeasonReport report;
  private final String page;

  PrintSetup(SeasonReport report, Words words) {
    this.report = report;
    this.page = words.text("workbook.page", "&P", "&N");
  }

  /**
   * Sets the sheet up.
   *
   * @param sheet to print
   * @param landscape or portrait
   * @param headingRows rows at the top that each page repeats; 0 for none
   */
  void apply(XSSFSheet sheet, boolean landscape, int headingRows) {
    sheet
        .getPrintSetup()
        .setPaperSize(report.letterPaper() ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
    sheet.getPrintSetup().setLandscape(landscape);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setMargin(PageMargin.TOP, 0.75);
    sheet.setMargin(PageMargin.BOTTOM, 0.7);
    sheet.getHeader().setLeft(text(report.title() + ": " + sheet.getSheetName(), LONGEST - 90));
    sheet.getHeader().setRight(text(report.subtitle(), 80));
    sheet.getFooter().setLeft(text(report.pageFooter(), LONGEST - 90));
    sheet.getFooter().setRight(text(report.digest(), 20) + "   " + page);
    if (headingRows > 0) {
      sheet.setRepeatingRows(new CellRangeAddress(0, headingRows - 1, -1, -1));
    }
  }

  /** Text in which no character is taken for a code. */
  private static String text(String text, int longest) {
    String doubled = text.replace("&", "&&");
    return doubled.length() <= longest ? doubled : text.replace("&", "+").substring(0, longest);
  }
}
