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

  /** Sheets that losses reviews write; they are carried along, and nothing is read from them. */
  static final String HISTORY = "History";

  static final String SET_ASIDE = "Set aside";

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

  /** Whether reviews wrote it. */
  static boolean isOfReviews(String name) {
    String key = Words.key(name);
    return key.equals(Words.key(HISTORY)) || key.equals(Words.key(SET_ASIDE));
  }

  static boolean isHelp(String name) {
    return HELP.contains(Words.key(name));
  }
}
