package org.hibernacle.input;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Published;

/**
 * What a season plan says of itself on a hidden sheet, for programs to read it back: among others
 * which words it uses for what. A workbook without it is read by its English words.
 *
 * @param lines of texts; the first of each tells what it is about
 */
record PlanRecord(List<List<String>> lines) {
  /** Nothing is told. */
  static final PlanRecord NONE = new PlanRecord(List.of());

  /** Name of the cells with the record. */
  static final String NAME = "HibernacleRecord";

  /** Stands for the name of a place in the word for one with wrapped pots. */
  private static final String PLACEHOLDER = "{0}";

  private static final int MOST_CELLS = 10;

  PlanRecord {
    lines = lines.stream().map(List::copyOf).toList();
  }

  /** The record of a workbook. */
  static PlanRecord of(XSSFWorkbook book) {
    XSSFName name = book.getName(NAME);
    if (name == null) {
      return NONE;
    }
    try {
      AreaReference cells =
          new AreaReference(name.getRefersToFormula(), book.getSpreadsheetVersion());
      Sheet sheet = book.getSheet(cells.getFirstCell().getSheetName());
      return sheet == null ? NONE : new PlanRecord(lines(sheet));
    } catch (IllegalArgumentException e) {
      return NONE;
    }
  }

  private static List<List<String>> lines(Sheet sheet) {
    List<List<String>> lines = new ArrayList<>();
    for (Row row : sheet) {
      if (lines.size() == SheetReader.MOST_ROWS) {
        break;
      }
      List<String> texts = new ArrayList<>();
      for (int i = 0; i < Math.min(MOST_CELLS, row.getLastCellNum()); i++) {
        Cell cell = row.getCell(i);
        boolean words = cell != null && cell.getCellType() == CellType.STRING;
        texts.add(words ? cell.getStringCellValue() : "");
      }
      lines.add(texts);
    }
    return lines;
  }

  /** Lines about something, without the text that says so, filled up to a length. */
  List<List<String>> about(String what, int length) {
    return lines.stream()
        .filter(line -> !line.isEmpty() && line.get(0).equals(what))
        .map(
            line -> {
              List<String> rest = new ArrayList<>(line.subList(1, line.size()));
              while (rest.size() < length) {
                rest.add("");
              }
              return rest;
            })
        .toList();
  }

  /** The word that the workbook uses for a key. */
  Optional<String> word(String key) {
    return about("word", 2).stream()
        .filter(line -> line.get(0).equals(key))
        .map(line -> line.get(1))
        .findFirst();
  }

  /** The words whose keys begin so, in order. */
  List<String> words(String prefix) {
    return about("word", 2).stream()
        .filter(line -> line.get(0).startsWith(prefix + "."))
        .map(line -> line.get(1))
        .toList();
  }

  /** The constant that a text of the workbook means, of those whose keys begin so. */
  Optional<String> constant(String prefix, String text) {
    String key = Words.key(text);
    return about("word", 2).stream()
        .filter(line -> line.get(0).startsWith(prefix + "."))
        .filter(line -> Words.key(line.get(1)).equals(key))
        .map(line -> line.get(0).substring(prefix.length() + 1))
        .findFirst();
  }

  /** First day of the season that was planned. */
  Optional<LocalDate> seasonStart() {
    return about("season", 1).stream()
        .flatMap(line -> DayText.read(line.get(0)).stream())
        .findFirst();
  }

  /** The plants that were planned. */
  List<EarlierPlan.KnownPlant> plants() {
    return about("plant", 3).stream()
        .map(line -> new EarlierPlan.KnownPlant(line.get(0), line.get(1), line.get(2)))
        .toList();
  }

  /** What the plan told calendar programs; empty where it does not say, or not legibly. */
  Optional<Published> published() {
    try {
      List<Published.Event> events = new ArrayList<>();
      for (List<String> e : about("event", 6)) {
        boolean dropped = e.get(5).equals("dropped");
        events.add(
            new Published.Event(
                UUID.fromString(e.get(0)),
                LocalDate.parse(e.get(1)),
                e.get(2),
                e.get(3),
                e.get(4),
                dropped));
      }
      List<List<String>> agenda = about("agenda", 3);
      if (agenda.isEmpty()) {
        return Optional.empty();
      }
      List<String> a = agenda.get(0);
      return Optional.of(
          new Published(Integer.parseInt(a.get(0)), LocalDate.parse(a.get(1)), a.get(2), events));
    } catch (IllegalArgumentException | DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** The name of a place as the inventory has it, with the program's own mark of wrapped pots. */
  String place(String text, String wrappedMark) {
    String wrapped = word("place.wrapped").orElse("");
    int at = wrapped.indexOf(PLACEHOLDER);
    if (at < 0) {
      return text;
    }
    String before = wrapped.substring(0, at);
    String after = wrapped.substring(at + PLACEHOLDER.length());
    boolean isWrapped =
        text.length() > before.length() + after.length()
            && text.startsWith(before)
            && text.endsWith(after);
    return isWrapped
        ? text.substring(before.length(), text.length() - after.length()) + wrappedMark
        : text;
  }
}
