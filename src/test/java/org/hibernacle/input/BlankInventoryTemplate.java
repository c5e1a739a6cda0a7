package org.hibernacle.input;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.Reproducibility;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Settings.Units;

/**
 * Builds the blank forms {@code templates/inventory.xlsx} and {@code inventory-us.xlsx}. Run it
 * ({@code mvn test -Dtest=BlankInventoryTest -Dgolden.update=true}) after a change of columns,
 * words or species, and look at the result in a spreadsheet program.
 */
final class BlankInventoryTemplate {
  /** Stands in the file in place of the time of the run. */
  private static final Date BUILT = new Date(1_780_000_000_000L);

  private static final byte[] TAB_GREEN = {(byte) 0x7E, (byte) 0x9A, (byte) 0x86};

  private BlankInventoryTemplate() {}

  /** Writes both forms into the folder given, {@code templates} if none is. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args.length == 0 ? "templates" : args[0]);
    Files.createDirectories(folder);
    for (Units units : Units.values()) {
      Files.write(folder.resolve(fileName(units)), bytes(units));
    }
  }

  static String fileName(Units units) {
    return units == Units.US ? "inventory-us.xlsx" : "inventory.xlsx";
  }

  static byte[] bytes(Units units) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      FormLooks looks = new FormLooks(book);
      XSSFSheet guide = book.createSheet("Guide");
      FormGuide.write(guide, looks);
      guide
          .getPrintSetup()
          .setPaperSize(units == Units.US ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
      guide.setFitToPage(true);
      guide.getPrintSetup().setFitHeight((short) 0);
      sheet(book, "Plants", looks, units)
          .table(
              PlantFields.all(),
              List.of(
                  Column.ID,
                  Column.PLANT_SPECIES,
                  Column.HOME,
                  Column.LENGTH_OF_POT,
                  Column.WIDTH_OF_POT,
                  Column.DEPTH_OF_POT,
                  Column.VOLUME_OF_POT));
      sheet(book, "Places", looks, units)
          .table(PlaceFields.all(), List.of(Column.PLACE, Column.KIND));
      sheet(book, "Species", looks, units).table(SpeciesFields.all(), List.of(Column.TAXON));
      sheet(book, "Settings", looks, units).settings(SettingFields.all());
      lists(book);
      describe(book);
      Reproducibility.runWithSourceDateEpoch(() -> book.write(out));
      return out.toByteArray();
    }
  }

  private static FormSheet sheet(XSSFWorkbook book, String name, FormLooks looks, Units units) {
    XSSFSheet sheet = book.createSheet(name);
    sheet.setTabColor(new XSSFColor(TAB_GREEN));
    return new FormSheet(sheet, looks, units);
  }

  /** Words for the drop-downs, one column a list, under names the rules refer to. */
  private static void lists(XSSFWorkbook book) {
    XSSFSheet sheet = book.createSheet("Lists");
    int column = 0;
    for (Map.Entry<String, List<String>> list : FormLists.all().entrySet()) {
      set(sheet, 0, column, list.getKey());
      for (int i = 0; i < list.getValue().size(); i++) {
        set(sheet, i + 1, column, list.getValue().get(i));
      }
      String letter = CellReference.convertNumToColString(column);
      int last = list.getValue().size() + 1;
      name(book, list.getKey(), "Lists!$" + letter + "$2:$" + letter + "$" + last);
      column++;
    }
    name(book, "place_names", "Places!$A$2:$A$401");
    book.setSheetVisibility(book.getSheetIndex(sheet), SheetVisibility.HIDDEN);
  }

  private static void set(XSSFSheet sheet, int rowIndex, int column, String value) {
    Row row = sheet.getRow(rowIndex) == null ? sheet.createRow(rowIndex) : sheet.getRow(rowIndex);
    row.createCell(column).setCellValue(value);
  }

  private static void name(XSSFWorkbook book, String name, String cells) {
    Name defined = book.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(cells);
  }

  private static void describe(XSSFWorkbook book) {
    POIXMLProperties.CoreProperties properties = book.getProperties().getCoreProperties();
    properties.setTitle("Inventory for the winter plan");
    properties.setCreator("Hibernacle");
    properties.setCreated(Optional.of(BUILT));
    properties.setModified(Optional.of(BUILT));
  }
}
