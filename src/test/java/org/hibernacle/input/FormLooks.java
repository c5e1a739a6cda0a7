package org.hibernacle.input;

import java.util.EnumMap;
import java.util.HexFormat;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of the blank form: soft greens and greys, dark text, one typeface. */
final class FormLooks {
  /** What a cell is. */
  enum Look {
    TITLE("FFFFFF", "2F4A3A", 18, true, false),
    SUBTITLE("FFFFFF", "4E5A52", 11, false, false),
    SECTION("E3EBE2", "2F4A3A", 12, true, false),
    TEXT("FFFFFF", "2B302C", 10, false, false),
    CAUTION("F6F1E4", "2B302C", 10, false, false),
    NEEDED("B9CFBC", "22382B", 10, true, false),
    HEADING("E3EBE2", "22382B", 10, true, false),
    EXAMPLE("F4F6F2", "5A645D", 10, false, true),
    SETTING("FFFFFF", "22382B", 10, true, false),
    MEANING("FFFFFF", "4E5A52", 9, false, false),
    PLAIN("", "2B302C", 10, false, false);

    private final String fill;
    private final String ink;
    private final int points;
    private final boolean bold;
    private final boolean italic;

    Look(String fill, String ink, int points, boolean bold, boolean italic) {
      this.fill = fill;
      this.ink = ink;
      this.points = points;
      this.bold = bold;
      this.italic = italic;
    }
  }

  static final String TYPEFACE = "Arial";
  static final String LINE = "C3CEC4";

  private final XSSFWorkbook book;
  private final Map<Look, XSSFCellStyle> plain = new EnumMap<>(Look.class);
  private final Map<Look, XSSFCellStyle> days = new EnumMap<>(Look.class);

  FormLooks(XSSFWorkbook book) {
    this.book = book;
    XSSFFont standard = book.getFontAt(0);
    standard.setFontName(TYPEFACE);
    standard.setFontHeightInPoints((short) 10);
  }

  XSSFCellStyle of(Look look) {
    return plain.computeIfAbsent(look, this::style);
  }

  /** The same for a cell that holds a day. */
  XSSFCellStyle day(Look look) {
    return days.computeIfAbsent(
        look,
        l -> {
          XSSFCellStyle style = style(l);
          style.setDataFormat(book.getCreationHelper().createDataFormat().getFormat("yyyy-mm-dd"));
          style.setAlignment(HorizontalAlignment.LEFT);
          return style;
        });
  }

  private XSSFCellStyle style(Look look) {
    XSSFFont font = book.createFont();
    font.setFontName(TYPEFACE);
    font.setFontHeightInPoints((short) look.points);
    font.setBold(look.bold);
    font.setItalic(look.italic);
    font.setColor(colour(look.ink));
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    style.setWrapText(look != Look.PLAIN && look != Look.EXAMPLE);
    boolean flowing = look == Look.TEXT || look == Look.CAUTION;
    style.setVerticalAlignment(flowing ? VerticalAlignment.TOP : VerticalAlignment.CENTER);
    if (flowing || look == Look.SECTION) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention((short) 1);
    }
    if (!look.fill.isEmpty() && !look.fill.equals("FFFFFF")) {
      style.setFillForegroundColor(colour(look.fill));
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
    if (look == Look.EXAMPLE || look == Look.SETTING || look == Look.MEANING) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setBorderBottom(BorderStyle.HAIR);
      style.setBottomBorderColor(colour(LINE));
    }
    if (look == Look.HEADING || look == Look.NEEDED) {
      style.setBorderBottom(BorderStyle.THIN);
      style.setBottomBorderColor(colour("7E9A86"));
    }
    return style;
  }

  private static XSSFColor colour(String hex) {
    return new XSSFColor(HexFormat.of().parseHex(hex));
  }
}
