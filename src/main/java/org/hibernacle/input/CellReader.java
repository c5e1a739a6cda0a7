package org.hibernacle.input;

import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.hibernacle.input.FoundCell.State;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.Phrase;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/** Turns a cell of the spreadsheet library into a plain value, whatever its file says of it. */
final class CellReader {
  /** Most characters that the form allows in a cell. */
  static final int MOST_CHARACTERS = 32_767;

  /** Days in that form's count after which dates have no four-digit year: 1 January 10000. */
  private static final double PAST_DATES = 2_958_466;

  private static final Phrase UNREADABLE = Phrase.of("unreadable");

  private final Phrase sheetWhere;
  private final Tally tally;

  CellReader(Phrase sheetWhere, Tally tally) {
    this.sheetWhere = sheetWhere;
    this.tally = tally;
  }

  FoundCell read(Cell cell, String address) {
    try {
      return value(cell, address);
    } catch (IllegalStateException | IllegalArgumentException | IndexOutOfBoundsException e) {
      // A number that is none, or a text that the file promises and lacks.
      return new FoundCell(address, UNREADABLE, State.ERROR);
    }
  }

  private FoundCell value(Cell cell, String address) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    if (formula && !isStored(cell)) {
      return new FoundCell(address, "=" + formulaText(cell), State.FORMULA_WITHOUT_VALUE);
    }
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    State state = formula ? State.FORMULA : State.TYPED;
    return switch (type) {
      case ERROR -> new FoundCell(address, errorText(cell), State.ERROR);
      case STRING ->
          isThere(cell)
              ? new FoundCell(address, clean(cell.getStringCellValue()), state)
              : new FoundCell(address, UNREADABLE, State.ERROR);
      case BOOLEAN -> new FoundCell(address, cell.getBooleanCellValue(), state);
      case NUMERIC ->
          isStored(cell) ? number(cell, address, state) : new FoundCell(address, "", state);
      default -> new FoundCell(address, "", state);
    };
  }

  /** Whether there is a value; the library takes an empty one for the number zero. */
  private static boolean isStored(Cell cell) {
    if (!(cell instanceof XSSFCell xssf)) {
      return true;
    }
    CTCell raw = xssf.getCTCell();
    boolean empty = !raw.isSetV() || raw.getV().isEmpty();
    return !empty || (raw.isSetV() && raw.getT() == STCellType.STR);
  }

  /** Texts stand in a list of their own; the library takes a number beyond its end for no text. */
  private static boolean isThere(Cell cell) {
    if (!(cell instanceof XSSFCell xssf) || xssf.getCTCell().getT() != STCellType.S) {
      return true;
    }
    SharedStringsTable texts = xssf.getSheet().getWorkbook().getSharedStringSource();
    int index = Integer.parseInt(xssf.getCTCell().getV().strip());
    return index >= 0 && texts.getItemAt(index) != null; // throws beyond the end
  }

  private static String formulaText(Cell cell) {
    return cell instanceof XSSFCell xssf && xssf.getCTCell().isSetF()
        ? xssf.getCTCell().getF().getStringValue()
        : "";
  }

  private static FoundCell number(Cell cell, String address, State state) {
    double number = cell.getNumericCellValue();
    if (!Double.isFinite(number)) {
      return new FoundCell(address, Double.toString(number), State.ERROR);
    }
    if (number < 1 || !DateUtil.isCellDateFormatted(cell)) {
      // A time of day alone is a number below 1 and no date.
      return new FoundCell(address, number, state);
    }
    return number < PAST_DATES
        ? new FoundCell(address, cell.getLocalDateTimeCellValue().toLocalDate(), state)
        : new FoundCell(address, Phrase.of("as-a-date", number), State.ERROR);
  }

  /** Without signs that nobody sees or that no font has. */
  private String clean(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    boolean changed = false;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (c == '\u00a0') {
        clean.append(' ');
      } else if (isForbidden(c)) {
        clean.append(' ');
        changed = true;
      } else {
        clean.appendCodePoint(c);
      }
      i += Character.charCount(c);
    }
    if (changed) {
      tally.add(Code.CONTROL_CHARACTERS, sheetWhere, Tally.Noun.CELL);
    }
    return clean.toString().strip();
  }

  /** Controls but for tabs and line ends, half pairs, and what turns the direction of a line. */
  private static boolean isForbidden(int c) {
    boolean control = Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r';
    boolean half = Character.getType(c) == Character.SURROGATE;
    boolean turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    return control || half || turns || c == 0xFEFF || (c & 0xFFFE) == 0xFFFE;
  }

  private static Object errorText(Cell cell) {
    byte code = cell.getErrorCellValue();
    return FormulaError.isValidCode(code)
        ? FormulaError.forInt(code).getString()
        : Phrase.of("an-error");
  }

  /** Reports texts longer than a cell may hold, which no spreadsheet program writes. */
  void report(FoundSheet sheet, List<FoundRow> rows, Problems problems) {
    for (FoundRow row : rows) {
      for (FoundCell cell : row.cells()) {
        if (cell.value() instanceof String text && text.length() > MOST_CHARACTERS) {
          problems.error(
              Code.TEXT_TOO_LONG, sheet.where(cell.address()), text.length(), MOST_CHARACTERS);
        }
      }
    }
  }
}
