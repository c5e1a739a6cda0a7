package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrase;
import org.hibernacle.report.Palette;
import org.hibernacle.report.StyleRole;
import org.jspecify.annotations.Nullable;

/** The sheet of a template that shows each role as it is to look, its name in column A. */
final class RoleSheet {
  static final String NAME = "Styles";

  /** Letters smaller than this are not read by everybody, points. */
  static final double SMALLEST_PT = 9;

  private static final int WHITE = 0xFFFFFF;
  private static final int BLACK = 0x000000;

  /**
   * Letters of a role.
   *
   * @param font its name
   * @param sizePt of them, points
   */
  record Letters(String font, double sizePt) {}

  private final String file;
  private final Map<StyleRole, XSSFCell> cells = new EnumMap<>(StyleRole.class);
  private final List<Diagnostic> problems = new ArrayList<>();

  private RoleSheet(String file) {
    this.file = file;
  }

  /** Reads the sheet; what is wrong stands in {@link #problems}. */
  static RoleSheet read(String file, Optional<XSSFSheet> sheet) {
    RoleSheet roles = new RoleSheet(file);
    sheet.ifPresentOrElse(roles::read, roles::missing);
    return roles;
  }

  private void missing() {
    problem(TemplateProblem.NO_STYLES, Phrase.verbatim(file), NAME);
  }

  private void read(XSSFSheet sheet) {
    for (Row row : sheet) {
      Cell cell = row.getCell(0, Row.MissingCellPolicy.RETURN_BLANK_AS_NULL);
      if (cell instanceof XSSFCell found && found.getCellType() == CellType.STRING) {
        take(found, found.getStringCellValue().strip().toLowerCase(Locale.ROOT));
      }
    }
    for (StyleRole role : StyleRole.values()) {
      XSSFCell cell = cells.get(role);
      if (cell == null) {
        problem(TemplateProblem.ROLE_MISSING, Phrase.of("where.sheet", file, NAME), key(role));
      } else {
        check(role, cell);
      }
    }
  }

  private void take(XSSFCell cell, String key) {
    for (StyleRole role : StyleRole.values()) {
      if (key(role).equals(key)) {
        XSSFCell first = cells.putIfAbsent(role, cell);
        if (first != null) {
          problem(TemplateProblem.ROLE_TWICE, where(cell), key, first.getAddress());
        }
        return;
      }
    }
    problem(TemplateProblem.ROLE_UNKNOWN, where(cell), key);
  }

  private void check(StyleRole role, XSSFCell cell) {
    Palette.Look look = look(role);
    double onFill = Contrast.of(look.fill(), look.ink());
    double onPaper = Contrast.of(WHITE, look.ink());
    double least = Math.min(onFill, onPaper);
    if (least < Contrast.LEAST) {
      Phrase ground =
          onFill <= onPaper ? Phrase.of("a-fill", hex(look.fill())) : Phrase.of("white-paper");
      problem(TemplateProblem.TOO_PALE, where(cell), key(role), hex(look.ink()), ground, least);
    }
    if (letters(role).sizePt() < SMALLEST_PT) {
      problem(TemplateProblem.TOO_SMALL, where(cell), letters(role).sizePt(), SMALLEST_PT);
    }
  }

  private void problem(String key, Phrase where, Object... arguments) {
    problems.add(TemplateProblem.of(key, where, arguments));
  }

  private Phrase where(XSSFCell cell) {
    Phrase sheet = Phrase.of("where.sheet", file, NAME);
    return Phrase.of("where.in", sheet, cell.getAddress().formatAsString());
  }

  private static String hex(int rgb) {
    return String.format(Locale.ROOT, "%06X", rgb);
  }

  /** The role as it is written on the sheet: {@code move-down}. */
  static String key(StyleRole role) {
    return role.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  List<Diagnostic> problems() {
    return List.copyOf(problems);
  }

  /** Looks of the roles that were found. */
  Map<StyleRole, Palette.Look> looks() {
    Map<StyleRole, Palette.Look> looks = new EnumMap<>(StyleRole.class);
    cells.keySet().forEach(role -> looks.put(role, look(role)));
    return looks;
  }

  /** Letters of the roles that were found. */
  Map<StyleRole, Letters> letters() {
    Map<StyleRole, Letters> letters = new EnumMap<>(StyleRole.class);
    cells.keySet().forEach(role -> letters.put(role, letters(role)));
    return letters;
  }

  private Letters letters(StyleRole role) {
    XSSFFont font = style(role).getFont();
    return new Letters(font.getFontName(), font.getFontHeight() / 20.0);
  }

  private Palette.Look look(StyleRole role) {
    XSSFCellStyle style = style(role);
    boolean filled = style.getFillPattern() == FillPatternType.SOLID_FOREGROUND;
    int fill = filled ? rgb(style.getFillForegroundXSSFColor(), WHITE) : WHITE;
    return new Palette.Look(fill, rgb(style.getFont().getXSSFColor(), BLACK), bold(style));
  }

  private static boolean bold(XSSFCellStyle style) {
    return style.getFont().getBold();
  }

  private XSSFCellStyle style(StyleRole role) {
    XSSFCell cell = cells.get(role);
    if (cell == null) {
      throw new IllegalArgumentException("the template has no " + key(role));
    }
    return cell.getCellStyle();
  }

  private static int rgb(@Nullable XSSFColor colour, int otherwise) {
    byte[] rgb = colour == null ? null : colour.getRGBWithTint();
    return rgb == null || rgb.length < 3
        ? otherwise
        : ((rgb[0] & 0xFF) << 16) | ((rgb[1] & 0xFF) << 8) | (rgb[2] & 0xFF);
  }
}
