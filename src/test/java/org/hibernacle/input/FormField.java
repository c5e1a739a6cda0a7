package org.hibernacle.input;

import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Settings.Units;

/**
 * What the blank form says about one column: its width, its note, what a cell may hold, an example.
 *
 * @param column which
 * @param widthChars width of the column
 * @param help note on the heading
 * @param entry what a cell may hold
 * @param example shown in the worked example row, in metric and in US units; empty text for none
 */
record FormField(Column column, int widthChars, String help, Entry entry, List<Object> example) {
  /** What a cell may hold. */
  sealed interface Entry {
    /** Anything. */
    record Free() implements Entry {}

    /** A word of a list, or with a warning anything else. */
    record Words(String list, boolean only) implements Entry {}

    /** A number within a range, in our unit. */
    record Range(double low, double high, boolean whole) implements Entry {}

    /** A day. */
    record Date() implements Entry {}
  }

  static FormField of(Column column, int widthChars, String help) {
    return new FormField(column, widthChars, help, new Entry.Free(), List.of("", ""));
  }

  /** One word of a list. */
  FormField from(String list) {
    return with(new Entry.Words(list, true));
  }

  /** A word of a list, which only helps to type. */
  FormField helpedBy(String list) {
    return with(new Entry.Words(list, false));
  }

  FormField between(double low, double high) {
    return with(new Entry.Range(low, high, false));
  }

  FormField wholeBetween(int low, int high) {
    return with(new Entry.Range(low, high, true));
  }

  FormField day() {
    return with(new Entry.Date());
  }

  FormField example(Object both) {
    return example(both, both);
  }

  FormField example(Object metric, Object us) {
    return new FormField(column, widthChars, help, entry, List.of(metric, us));
  }

  private FormField with(Entry other) {
    return new FormField(column, widthChars, help, other, example);
  }

  Object example(Units units) {
    return example.get(units.ordinal());
  }

  /** The heading, with the unit that the form is to be filled in with. */
  String heading(Units units) {
    String title = column.title().replace('_', ' ').replace("usda", "USDA");
    String symbol = unit(units).map(FormField::word).orElse("");
    String heading = Character.toUpperCase(title.charAt(0)) + title.substring(1);
    return symbol.isEmpty() ? heading : heading + " " + symbol;
  }

  /** The unit of the column's numbers; empty where nothing is measured. */
  Optional<Quantity.Unit> unit(Units units) {
    Quantity quantity = column.quantity();
    if (quantity == Quantity.NONE) {
      return Optional.empty();
    }
    String us =
        switch (quantity) {
          case LENGTH -> "in";
          case AREA -> "ft2";
          case VOLUME -> "gal";
          case TEMPERATURE, DIFFERENCE -> "f";
          default -> "h";
        };
    return units == Units.US ? quantity.spelled(us) : Optional.of(quantity.ours());
  }

  private static String word(Quantity.Unit unit) {
    return unit.symbol().equals("in") ? "inches" : unit.symbol();
  }
}
