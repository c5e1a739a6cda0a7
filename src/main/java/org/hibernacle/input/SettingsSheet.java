package org.hibernacle.input;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.Phrase;

/** Finds the settings: names in the column {@code Setting}, what they are in {@code Value}. */
final class SettingsSheet {
  private static final int HEADING_ROWS = 20;

  private final FoundSheet found;
  private final Problems problems;
  private final Tally tally;
  private final List<Phrase> unitless = new ArrayList<>();

  SettingsSheet(FoundSheet found, Problems problems, Tally tally) {
    this.found = found;
    this.problems = problems;
    this.tally = tally;
  }

  /** Row of the headings among the rows found; 0 if there is none. */
  int headingIndex() {
    return IntStream.range(0, Math.min(HEADING_ROWS, found.rows().size()))
        .filter(i -> column(i, "setting").isPresent() && column(i, "value").isPresent())
        .findFirst()
        .orElse(0);
  }

  /** All settings as one row; empty with an error where the headings are missing. */
  Optional<Row> read() {
    int headingIndex = headingIndex();
    OptionalInt name = column(headingIndex, "setting");
    OptionalInt value = column(headingIndex, "value");
    if (name.isEmpty() || value.isEmpty()) {
      problems.error("IN-111.settings", found.where());
      return Optional.empty();
    }
    Map<Column, Row.Entry> entries = new EnumMap<>(Column.class);
    for (FoundRow row : found.rows().subList(headingIndex + 1, found.rows().size())) {
      add(entries, row.cells().get(name.getAsInt()), row.cells().get(value.getAsInt()));
    }
    if (!unitless.isEmpty()) {
      problems.note("IN-115.settings", found.where(), unitless);
    }
    return Optional.of(
        new Row(
            found.where(),
            Phrase.of("where.column-setting"),
            entries,
            problems,
            tally,
            Tally.Noun.NOTHING));
  }

  private OptionalInt column(int rowIndex, String key) {
    if (found.rows().isEmpty()) {
      return OptionalInt.empty();
    }
    List<FoundCell> cells = found.rows().get(rowIndex).cells();
    return IntStream.range(0, cells.size())
        .filter(i -> Words.key(cells.get(i).text()).equals(key))
        .findFirst();
  }

  private void add(Map<Column, Row.Entry> entries, FoundCell name, FoundCell value) {
    Optional<Headings.Meaning> meaning = Headings.meaning(InventorySheet.SETTINGS, name.text());
    if (meaning.isEmpty()) {
      reportUnknown(name, value);
      return;
    }
    Column setting = meaning.get().column();
    CellReport.report(found, value, Optional.of(setting), problems, tally);
    Quantity.Unit unit = meaning.get().unit().orElse(setting.quantity().ours());
    Row.Entry first = entries.putIfAbsent(setting, new Row.Entry(name.text(), unit, value));
    if (first != null) {
      problems.error(
          "IN-112.settings",
          found.where(name.address()),
          name.text(),
          first.heading(),
          setting.title());
    } else if (setting.quantity().needsUnit() && meaning.get().unit().isEmpty()) {
      unitless.add(Phrase.of("in-unit", name.text(), setting.quantity().ours().symbol()));
    }
  }

  private void reportUnknown(FoundCell name, FoundCell value) {
    if (name.isBlank() && value.isBlank()) {
      return;
    }
    List<String> nearest =
        Nearest.of(
            name.text(), InventorySheet.SETTINGS.columns().stream().map(Column::title).toList(), 1);
    Phrase where = found.where(name.address());
    String shown = FoundCell.shortened(name.text());
    if (nearest.isEmpty()) {
      problems.warning(Code.UNKNOWN_SETTING, where, shown);
    } else {
      problems.warning("IN-150.nearest", where, shown, nearest.get(0));
    }
  }
}
