package org.hibernacle.report.xlsx;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
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
  /** Format of words. */
  static final String GENERAL = "General";

  /** What sets a cell apart beside its role. */
  enum Trait {
    /** Words that are wrapped at the end of the cell. */
    WRAPPED,
    /** The first row of a group has a stronger line above. */
    GROUP,
    /** The text begins like a formula and must stay text when edited. */
    QUOTED,
    /** A click leads elsewhere. */
    LEADS,
    /** Letters of the pattern's size rather than of the role's. */
    PATTERN_LETTERS
  }

  /**
   * What tells styles apart.
   *
   * @param pattern index of the style whose lines and places it takes
   * @param role look
   * @param format number format
   * @param align across the cell
   * @param traits of the cell
   */
  private record Key(
      int pattern, StyleRole role, String format, HorizontalAlignment align, Set<Trait> traits) {}

  /**
   * What tells letters apart.
   *
   * @param font its name
   * @param sizePt points
   * @param ink 0xRRGGBB
   */
  private record LettersKey(
      String font, double sizePt, int ink, boolean bold, boolean underlined) {}

  private final XSSFWorkbook workbook;
  private final Palette palette;
  private final Map<StyleRole, RoleSheet.Letters> letters;
  private final Display display;
  private final String languagePrefix;
  private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
  private final Map<LettersKey, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook, WorkbookTemplate template, Words words) {
    this.workbook = workbook;
    this.palette = template.palette();
    this.letters = template.letters();
    this.display = new Display(words);
    this.languagePrefix = languagePrefix(words.locale());
  }

  /** The colours of this workbook. */
  Palette palette() {
    return palette;
  }

  /** Size of running text, points. */
  double textPt() {
    return letters(StyleRole.PLAIN).sizePt();
  }

  private RoleSheet.Letters letters(StyleRole role) {
    RoleSheet.Letters found = letters.get(role);
    if (found == null) {
      throw new IllegalArgumentException("no letters for " + role);
    }
    return found;
  }

  /** Style of a cell that looks like its role and stands like its pattern. */
  XSSFCellStyle cell(
      XSSFCellStyle pattern,
      StyleRole role,
      String format,
      HorizontalAlignment align,
      Set<Trait> traits) {
    Key key = new Key(pattern.getIndex(), role, format, align, Set.copyOf(traits));
    return styles.computeIfAbsent(key, k -> make(pattern, k));
  }

  /** Style of wrapped words; those that begin like a formula stay words. */
  XSSFCellStyle words(XSSFCellStyle pattern, StyleRole role, String text, Set<Trait> traits) {
    Set<Trait> all = new HashSet<>(traits);
    all.add(Trait.WRAPPED);
    if (startsLikeFormula(text)) {
      all.add(Trait.QUOTED);
    }
    return cell(pattern, role, GENERAL, HorizontalAlignment.LEFT, all);
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

  /** The same with weekday, month and year in full. */
  String longDateFormat() {
    return format(display.longDayPattern());
  }

  /** Day and month, for the axis of a chart. */
  String axisFormat() {
    return format(display.axisPattern());
  }

  private String format(String javaPattern) {
    return languagePrefix + DateFormat.of(javaPattern);
  }

  /** {@code [$-809]} for British English; nothing where the language has no number. */
  private static String languagePrefix(Locale language) {
    LocaleID id = LocaleID.lookupByLanguageTag(language.toLanguageTag());
    return id == null || id.getLcid() == 0
        ? ""
        : "[$-" + Integer.toHexString(id.getLcid()).toUpperCase(Locale.ROOT) + "]";
  }

  private XSSFCellStyle make(XSSFCellStyle pattern, Key key) {
    Palette.Look look = palette.look(key.role());
    XSSFCellStyle style = workbook.createCellStyle();
    style.cloneStyleFrom(pattern);
    style.setFont(font(pattern, look, key));
    style.setDataFormat(workbook.createDataFormat().getFormat(key.format()));
    style.setAlignment(key.align());
    // Keeps a number clear of the words in the next cell.
    style.setIndention((short) (key.align() == HorizontalAlignment.RIGHT ? 1 : 0));
    style.setWrapText(key.traits().contains(Trait.WRAPPED));
    style.setQuotePrefixed(key.traits().contains(Trait.QUOTED));
    if (look.fill() == palette.paper()) {
      style.setFillPattern(FillPatternType.NO_FILL);
    } else {
      style.setFillForegroundColor(colour(look.fill()));
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
    if (key.traits().contains(Trait.GROUP)) {
      style.setBorderTop(BorderStyle.THIN);
      style.setTopBorderColor(colour(palette.line()));
    }
    return style;
  }

  private XSSFFont font(XSSFCellStyle pattern, Palette.Look look, Key key) {
    XSSFFont shown = pattern.getFont();
    RoleSheet.Letters own =
        key.traits().contains(Trait.PATTERN_LETTERS)
            ? new RoleSheet.Letters(shown.getFontName(), shown.getFontHeight() / 20.0)
            : letters(key.role());
    boolean bold = look.bold() || (key.traits().contains(Trait.PATTERN_LETTERS) && shown.getBold());
    LettersKey letter =
        new LettersKey(
            own.font(), own.sizePt(), look.ink(), bold, key.traits().contains(Trait.LEADS));
    return fonts.computeIfAbsent(letter, this::font);
  }

  private XSSFFont font(LettersKey letter) {
    XSSFFont font = workbook.createFont();
    font.setFontName(letter.font());
    font.setFontHeight(letter.sizePt());
    font.setBold(letter.bold());
    font.setColor(colour(letter.ink()));
    if (letter.underlined()) {
      font.setUnderline(FontUnderline.SINGLE);
    }
    return font;
  }

  /** An opaque colour of the file format, from 0xRRGGBB. */
  static XSSFColor colour(int rgb) {
    return new XSSFColor(
        new byte[] {(byte) 0xFF, (byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
  }
}
