package org.hibernacle.report.xlsx;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.util.LocaleID;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Palette;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/** Cell styles, each made once, since a workbook holds only so many. */
final class Styles {
  static final String FONT = "Arial";
  static final short TEXT_PT = 10;

  /** Format of words. */
  static final String GENERAL = "General";

  /** Lines round a cell. */
  enum Rules {
    NONE,
    THIN,
    /** Thin, with a stronger one above: the first row of a group. */
    GROUP
  }

  /**
   * What tells styles apart.
   *
   * @param role look
   * @param format number format
   * @param align across the cell
   * @param sizePt of the letters, points
   * @param rules round the cell; ruled words are wrapped
   * @param quoted whether the text begins like a formula and must stay text when edited
   */
  record Key(
      StyleRole role,
      String format,
      HorizontalAlignment align,
      int sizePt,
      Rules rules,
      boolean quoted) {}

  private final XSSFWorkbook workbook;
  private final Palette palette;
  private final Display display;
  private final String languagePrefix;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<String, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook, Palette palette, Words words) {
    this.workbook = workbook;
    this.palette = palette;
    this.display = new Display(words);
    this.languagePrefix = languagePrefix(words.locale());
    // The first font also sets the unit of column widths.
    workbook.getFontAt(0).setFontName(FONT);
    workbook.getFontAt(0).setFontHeightInPoints(TEXT_PT);
  }

  /** The colours of this workbook. */
  Palette palette() {
    return palette;
  }

  /** Style of a cell in a table. */
  XSSFCellStyle cell(StyleRole role, String format, HorizontalAlignment align) {
    return cell(role, format, align, Rules.THIN);
  }

  XSSFCellStyle cell(StyleRole role, String format, HorizontalAlignment align, Rules rules) {
    return of(new Key(role, format, align, TEXT_PT, rules, false));
  }

  /** Style of words in a table; those that begin like a formula stay words. */
  XSSFCellStyle words(StyleRole role, String text) {
    return words(role, text, Rules.THIN);
  }

  XSSFCellStyle words(StyleRole role, String text, Rules rules) {
    boolean quoted = startsLikeFormula(text);
    return of(new Key(role, GENERAL, HorizontalAlignment.LEFT, TEXT_PT, rules, quoted));
  }

  /** Style of a cell of a carried sheet. */
  XSSFCellStyle carried(String format, HorizontalAlignment align, boolean quoted) {
    return of(new Key(StyleRole.PLAIN, format, align, TEXT_PT, Rules.NONE, quoted));
  }

  /** Style of a line outside tables. */
  XSSFCellStyle line(StyleRole role, int sizePt) {
    return of(new Key(role, GENERAL, HorizontalAlignment.LEFT, sizePt, Rules.NONE, false));
  }

  static boolean startsLikeFormula(String text) {
    return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
  }

  /** {@code 0.0 "L"}. */
  static String numberFormat(Cell.Quantity quantity) {
    String digits = quantity.decimals() == 0 ? "0" : "0." + "0".repeat(quantity.decimals());
    return quantity.unit().isEmpty()
        ? digits
        : digits + "\" " + quantity.unit().replace("\"", "") + "\"";
  }

  /** The report's date pattern in the letters of a workbook, in the report's language. */
  String dateFormat(boolean past) {
    return format(display.dayPattern(past));
  }

  /** Day and month, for the axis of a chart. */
  String axisFormat() {
    return format(display.axisPattern());
  }

  private String format(String javaPattern) {
    return languagePrefix + javaPattern.replace('E', 'd').replace('M', 'm');
  }

  /** {@code [$-809]} for British English; nothing where the language has no number. */
  private static String languagePrefix(Locale language) {
    LocaleID id = LocaleID.lookupByLanguageTag(language.toLanguageTag());
    return id == null || id.getLcid() == 0
        ? ""
        : "[$-" + Integer.toHexString(id.getLcid()).toUpperCase(Locale.ROOT) + "]";
  }

  XSSFCellStyle of(Key key) {
    return styles.computeIfAbsent(key, this::make);
  }

  private XSSFCellStyle make(Key key) {
    Palette.Look look = palette.look(key.role());
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font(look, key.sizePt()));
    style.setDataFormat(workbook.createDataFormat().getFormat(key.format()));
    style.setAlignment(key.align());
    if (key.align() == HorizontalAlignment.RIGHT) {
      // Keeps a number clear of the words in the next cell.
      style.setIndention((short) 1);
    }
    style.setWrapText(key.rules() != Rules.NONE && key.align() == HorizontalAlignment.LEFT);
    boolean heading = key.role() == StyleRole.HEADING;
    style.setVerticalAlignment(heading ? VerticalAlignment.BOTTOM : VerticalAlignment.TOP);
    style.setQuotePrefixed(key.quoted());
    if (look.fill() != palette.paper()) {
      style.setFillForegroundColor(colour(look.fill()));
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
    if (key.rules() != Rules.NONE) {
      rule(style);
    }
    if (key.rules() == Rules.GROUP) {
      style.setBorderTop(BorderStyle.THIN);
      style.setTopBorderColor(colour(palette.line()));
    }
    return style;
  }

  private void rule(XSSFCellStyle style) {
    style.setBorderTop(BorderStyle.HAIR);
    style.setBorderBottom(BorderStyle.HAIR);
    style.setBorderLeft(BorderStyle.HAIR);
    style.setBorderRight(BorderStyle.HAIR);
    style.setTopBorderColor(colour(palette.rule()));
    style.setBottomBorderColor(colour(palette.rule()));
    style.setLeftBorderColor(colour(palette.rule()));
    style.setRightBorderColor(colour(palette.rule()));
  }

  private XSSFFont font(Palette.Look look, int sizePt) {
    return fonts.computeIfAbsent(
        look.ink() + "/" + look.bold() + "/" + sizePt,
        key -> {
          XSSFFont font = workbook.createFont();
          font.setFontName(FONT);
          font.setFontHeightInPoints((short) sizePt);
          font.setBold(look.bold());
          font.setColor(colour(look.ink()));
          return font;
        });
  }

  private static XSSFColor colour(int rgb) {
    return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
  }
}
