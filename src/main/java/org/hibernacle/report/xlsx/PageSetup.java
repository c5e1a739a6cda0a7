package org.hibernacle.report.xlsx;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
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

  /** A last page that holds less than this share of a page is spared. */
  private static final double FEW_ROWS = 0.1;

  /** By letters that are not smaller than this share of what they would be. */
  private static final double SPARING_SCALE = 0.9;

  /** Columns that take more of a page than this are not repeated. */
  private static final double MOST_REPEATED = 0.5;

  private static final double A4_LONGER_INCHES = 11.69;
  private static final double A4_SHORTER_INCHES = 8.27;
  private static final double LETTER_LONGER_INCHES = 11;
  private static final double LETTER_SHORTER_INCHES = 8.5;

  /**
   * Width of a digit of 10 point Arial, inches: 1139 of 2048 parts of its size (by its tables of
   * widths, from memory). Programs that round it to dots of a screen make columns narrower.
   */
  private static final double DIGIT_INCHES = 10 * 1139 / 2048.0 / 72;

  private final SeasonReport report;
  private final String page;

  PageSetup(SeasonReport report, Words words) {
    this.report = report;
    this.page = words.text("workbook.page", "&P", "&N");
  }

  /**
   * Sets a sheet up.
   *
   * @param sheet to print, with all its rows
   * @param pattern sheet of the template to take margins, header and footer from
   * @param widths of the printed columns, in characters
   * @param repeatedColumns columns at the left that each page repeats if there are several side by
   *     side; 0 for none
   * @param headingRows rows at the top that each page repeats; 0 for none
   */
  void apply(
      XSSFSheet sheet,
      XSSFSheet pattern,
      List<Double> widths,
      int repeatedColumns,
      int headingRows) {
    List<Double> columns = widths.stream().map(w -> w * DIGIT_INCHES).toList();
    boolean turned = pattern.getPrintSetup().getLandscape();
    if (!turned) {
      turned = columns.stream().mapToDouble(c -> c).sum() * SMALLEST_SCALE > across(pattern, false);
    }
    double across = across(pattern, turned);
    double repeated = columns.stream().limit(repeatedColumns).mapToDouble(c -> c).sum();
    int repeats = repeated * SMALLEST_SCALE <= MOST_REPEATED * across ? repeatedColumns : 0;
    int pages = PageBreaks.of(columns, repeats, across / SMALLEST_SCALE).pages();
    sheet
        .getPrintSetup()
        .setPaperSize(report.letterPaper() ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
    sheet.getPrintSetup().setLandscape(turned);
    for (PageMargin margin : PageMargin.values()) {
      sheet.setMargin(margin, pattern.getMargin(margin));
    }
    int percent = 100;
    while (PageBreaks.of(columns, repeats, across * 100 / percent).pages() > pages) {
      percent--;
    }
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) pages);
    sheet
        .getPrintSetup()
        .setFitHeight(
            (short) pagesDown(sheet, headingRows, down(pattern, turned), percent / 100.0));
    if (pattern.getCTWorksheet().isSetHeaderFooter()) {
      headerFooter(sheet, (CTHeaderFooter) pattern.getCTWorksheet().getHeaderFooter().copy());
    }
    if (headingRows > 0) {
      sheet.setRepeatingRows(new CellRangeAddress(0, headingRows - 1, -1, -1));
    }
    if (pages > 1 && repeats > 0) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, repeats - 1));
    }
  }

  /** One page less where the last would hold a few rows alone, or 0 for as many as it takes. */
  private static int pagesDown(XSSFSheet sheet, int headingRows, double room, double scale) {
    List<Double> rows =
        IntStream.rangeClosed(0, sheet.getLastRowNum())
            .mapToObj(sheet::getRow)
            .map(
                r ->
                    (r == null ? sheet.getDefaultRowHeightInPoints() : r.getHeightInPoints())
                        / 72.0)
            .toList();
    double heading = rows.stream().limit(headingRows).mapToDouble(r -> r).sum();
    PageBreaks breaks = PageBreaks.of(rows, headingRows, room / scale);
    double smaller = Math.max(SMALLEST_SCALE, scale * SPARING_SCALE);
    double rest = breaks.lastShare() - heading * scale / room;
    return breaks.pages() > 1
            && rest < FEW_ROWS
            && PageBreaks.of(rows, headingRows, room / smaller).pages() < breaks.pages()
        ? breaks.pages() - 1
        : 0;
  }

  private double across(XSSFSheet pattern, boolean landscape) {
    return (landscape ? longerInches() : shorterInches())
        - pattern.getMargin(PageMargin.LEFT)
        - pattern.getMargin(PageMargin.RIGHT);
  }

  private double down(XSSFSheet pattern, boolean landscape) {
    return (landscape ? shorterInches() : longerInches())
        - pattern.getMargin(PageMargin.TOP)
        - pattern.getMargin(PageMargin.BOTTOM);
  }

  private double longerInches() {
    return report.letterPaper() ? LETTER_LONGER_INCHES : A4_LONGER_INCHES;
  }

  private double shorterInches() {
    return report.letterPaper() ? LETTER_SHORTER_INCHES : A4_SHORTER_INCHES;
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
