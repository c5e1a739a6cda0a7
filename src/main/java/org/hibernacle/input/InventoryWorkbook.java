package org.hibernacle.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.SheetTable;

/**
 * Reads the inventory workbook: what the keeper has, where it can stand, and every problem met on
 * the way. {@code docs/inventory.md} tells the sheets and columns.
 */
public final class InventoryWorkbook {
  /**
   * Name that a season plan gives to the sheets it wrote itself, each to its own. A plan is read as
   * an inventory without them, or they would pile up from year to year.
   */
  private static final String REPORT_SHEET = "HibernacleReport";

  private final String file;
  private final SpeciesCatalogue builtIn;
  private final Problems problems;
  private final Map<InventorySheet, FoundSheet> known = new EnumMap<>(InventorySheet.class);
  private final Map<String, SheetTable> tables = new LinkedHashMap<>();

  private InventoryWorkbook(String file, SpeciesCatalogue builtIn, Problems problems) {
    this.file = file;
    this.builtIn = builtIn;
    this.problems = problems;
  }

  /**
   * Reads a file, which is never written to.
   *
   * @return empty if there are errors
   */
  public static Optional<Inventory> read(Path file, SpeciesCatalogue catalogue, Problems problems) {
    String name = String.valueOf(file.getFileName());
    return WorkbookFile.read(
        file, Phrase.of("an-inventory"), problems, in -> read(in, name, catalogue, problems));
  }

  /**
   * Reads a stream to its end without closing it.
   *
   * @param name of the file, for messages
   * @return empty if there are errors
   * @throws IOException if the stream breaks off
   */
  public static Optional<Inventory> read(
      InputStream in, String name, SpeciesCatalogue catalogue, Problems problems)
      throws IOException {
    Optional<XSSFWorkbook> opened = WorkbookFile.open(in, name, problems);
    if (opened.isEmpty()) {
      return Optional.empty();
    }
    try (XSSFWorkbook book = opened.get()) {
      return new InventoryWorkbook(name, catalogue, problems).read(book);
    }
  }

  private Optional<Inventory> read(XSSFWorkbook book) {
    if (book.isMacroEnabled()) {
      problems.note(Code.MACROS, file);
    }
    sortSheets(book);
    Optional<Settings> settings = settings();
    SpeciesCatalogue catalogue = species();
    List<Place> places = places();
    List<Plant> plants = plants(places, catalogue);
    return problems.hasErrors() || settings.isEmpty()
        ? Optional.empty()
        : Optional.of(new Inventory(plants, places, settings.get(), List.copyOf(tables.values())));
  }

  private void sortSheets(XSSFWorkbook book) {
    for (Sheet sheet : book) {
      if (isReport(book, sheet)) {
        continue;
      }
      if (InventorySheet.isHelp(sheet.getSheetName())) {
        continue;
      }
      FoundSheet found = SheetReader.read(file, sheet, problems);
      Optional<InventorySheet> kind = InventorySheet.named(found.name());
      tables.put(found.name(), found.table(0));
      if (kind.isPresent()) {
        FoundSheet first = known.putIfAbsent(kind.get(), found);
        if (first != null) {
          problems.error(
              "IN-112.sheets", found.where(), first.name(), found.name(), kind.get().title());
        }
      } else if (!InventorySheet.isOfReviews(found.name())) {
        problems.note(Code.UNKNOWN_SHEET, found.where());
      }
    }
  }

  private static boolean isReport(XSSFWorkbook book, Sheet sheet) {
    int index = book.getSheetIndex(sheet);
    return book.getNames(REPORT_SHEET).stream().anyMatch(name -> name.getSheetIndex() == index);
  }

  private Optional<Settings> settings() {
    FoundSheet found = known.get(InventorySheet.SETTINGS);
    if (found == null) {
      missing("IN-110.settings", InventorySheet.SETTINGS);
      return Optional.empty();
    }
    Tally tally = new Tally(problems);
    SettingsSheet sheet = new SettingsSheet(found, problems, tally);
    Optional<Settings> settings = sheet.read().flatMap(SettingsRows::read);
    tables.put(found.name(), found.table(sheet.headingIndex()));
    tally.close();
    return settings;
  }

  private SpeciesCatalogue species() {
    FoundSheet found = known.get(InventorySheet.SPECIES);
    if (found == null || found.rows().isEmpty()) {
      return builtIn;
    }
    KnownSheet sheet = new KnownSheet(InventorySheet.SPECIES, found, problems);
    if (!sheet.require(Column.TAXON) || sheet.isEmpty()) {
      return builtIn;
    }
    tables.put(found.name(), sheet.table());
    SpeciesCatalogue catalogue = builtIn.with(OwnSpeciesRows.read(sheet, builtIn));
    sheet.close();
    return catalogue;
  }

  private List<Place> places() {
    FoundSheet found = known.get(InventorySheet.PLACES);
    if (found == null) {
      missing("IN-110.places", InventorySheet.PLACES);
      return List.of();
    }
    KnownSheet sheet = new KnownSheet(InventorySheet.PLACES, found, problems);
    if (!sheet.require(Column.PLACE, Column.KIND) || !sheet.requireRows()) {
      return List.of();
    }
    tables.put(found.name(), sheet.table());
    List<Place> places = PlaceRows.read(sheet);
    sheet.close();
    return places;
  }

  private List<Plant> plants(List<Place> places, SpeciesCatalogue catalogue) {
    FoundSheet found = known.get(InventorySheet.PLANTS);
    if (found == null) {
      missing("IN-110.plants", InventorySheet.PLANTS);
      return List.of();
    }
    KnownSheet sheet = new KnownSheet(InventorySheet.PLANTS, found, problems);
    if (!sheet.require(Column.ID, Column.PLANT_SPECIES, Column.HOME) || !sheet.requireRows()) {
      return List.of();
    }
    tables.put(found.name(), sheet.table());
    List<Plant> plants = new PlantRows(new PlaceNames(places), catalogue).read(sheet);
    sheet.close();
    return plants;
  }

  private void missing(String key, InventorySheet sheet) {
    problems.error(key, file, sheet.title());
  }
}
