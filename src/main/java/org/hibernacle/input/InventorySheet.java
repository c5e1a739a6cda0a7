package org.hibernacle.input;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The sheets of an inventory workbook. */
enum InventorySheet {
  PLANTS("Plants", "plant"),
  PLACES("Places", "place"),
  SPECIES("Species", "ownspecies"),
  SETTINGS("Settings", "setting");

  /** Sheets of the blank form that only help to fill it in; they are not carried along. */
  private static final Set<String> HELP = Set.of("guide", "lists");

  private final String title;
  private final String otherKey;

  InventorySheet(String title, String otherKey) {
    this.title = title;
    this.otherKey = otherKey;
  }

  String title() {
    return title;
  }

  /** The columns the program knows on this sheet, in the order of the blank form. */
  List<Column> columns() {
    return Arrays.stream(Column.values()).filter(c -> c.sheet() == this).toList();
  }

  static Optional<InventorySheet> named(String name) {
    String key = Words.key(name);
    return Arrays.stream(values())
        .filter(s -> Words.key(s.title).equals(key) || s.otherKey.equals(key))
        .findFirst();
  }

  static boolean isHelp(String name) {
    return HELP.contains(Words.key(name));
  }
}
