package org.hibernacle.input;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.hibernacle.input.Quantity.Unit;
import org.hibernacle.model.Settings.Units;

/**
 * The columns in which a review proposes figures, beside the column of the figure itself.
 *
 * @param figure in force
 * @param soFar the figure that was used, shown again since a blank cell may stand for a default
 * @param proposed another figure
 * @param accept the keeper's answer
 * @param reason in a sentence
 */
record Proposals(Column figure, Column soFar, Column proposed, Column accept, Column reason) {
  static final Proposals OF_SPECIES =
      new Proposals(
          Column.ROOT_LIMIT,
          Column.LIMIT_SO_FAR,
          Column.PROPOSED_LIMIT,
          Column.ACCEPT_LIMIT,
          Column.LIMIT_REASON);
  static final Proposals OF_PLACES =
      new Proposals(
          Column.WARMER_BY,
          Column.WARMTH_SO_FAR,
          Column.PROPOSED_WARMTH,
          Column.ACCEPT_WARMTH,
          Column.WARMTH_REASON);

  /** Whether reviews write that column; a blank form is without it. */
  static boolean hold(Column column) {
    return Stream.of(OF_SPECIES, OF_PLACES)
        .flatMap(p -> Stream.of(p.soFar, p.proposed, p.accept, p.reason))
        .anyMatch(column::equals);
  }

  /** One proposal, in our units. */
  record Figures(double soFar, double proposed, String reason) {}

  /** Puts accepted figures in force and takes the columns out. */
  void settle(EditedSheet sheet) {
    OptionalInt from = sheet.index(proposed);
    if (from.isPresent()) {
      Unit unit = sheet.unit(from.getAsInt());
      for (List<Object> row : sheet.rows()) {
        boolean yes = Choice.YES_NO.find(sheet.text(row, accept)).orElse(false);
        OptionalDouble number = number(row.get(from.getAsInt()));
        if (yes && number.isPresent()) {
          int to = sheet.indexOrAdd(figure);
          row.set(to, rounded(sheet.unit(to).fromOurs(unit.toOurs(number.getAsDouble()))));
        }
      }
    }
    List.of(soFar, proposed, accept, reason).forEach(sheet::drop);
  }

  private static OptionalDouble number(Object cell) {
    if (cell instanceof Double number) {
      return OptionalDouble.of(number);
    }
    try {
      return OptionalDouble.of(Double.parseDouble(cell.toString().replace('\u2212', '-')));
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /** Adds the columns, blank, behind the figure or else at the right end. */
  void prepare(EditedSheet sheet, Units units) {
    int index = sheet.index(figure).orElse(sheet.headings().size() - 1);
    for (Column column : List.of(soFar, proposed, accept, reason)) {
      String symbol = unit(column, units).symbol();
      String heading = symbol.isEmpty() ? column.title() : column.title() + " " + symbol;
      sheet.insert(++index, heading);
    }
  }

  /** Writes a proposal into a row. */
  void write(EditedSheet sheet, List<Object> row, Figures figures, Units units) {
    Unit unit = unit(proposed, units);
    row.set(sheet.indexOrAdd(soFar), rounded(unit.fromOurs(figures.soFar())));
    row.set(sheet.indexOrAdd(proposed), rounded(unit.fromOurs(figures.proposed())));
    row.set(sheet.indexOrAdd(reason), figures.reason());
  }

  private static Unit unit(Column column, Units units) {
    Quantity quantity = column.quantity();
    return units == Units.US ? quantity.spelled("f").orElse(quantity.ours()) : quantity.ours();
  }

  private static Double rounded(double value) {
    return Math.round(value * 100) / 100.0;
  }
}
