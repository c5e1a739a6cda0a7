package org.hibernacle.input;

import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The committed forms: as their program builds them, and readable by ours. */
class BlankInventoryTest {
  private static final Map<String, List<FormField>> TABLES =
      Map.of(
          "Plants", PlantFields.all(), "Places", PlaceFields.all(), "Species", SpeciesFields.all());

  private static byte[] committed(Units units) throws IOException {
    return Files.readAllBytes(Path.of("templates", BlankInventoryTemplate.fileName(units)));
  }

  private static XSSFWorkbook open(Units units) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(committed(units)));
  }

  /** Unzipped, because compression differs between Java builds. */
  private static Map<String, byte[]> parts(byte[] file) throws IOException {
    Map<String, byte[]> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        parts.put(part.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void theCommittedFormIsWhatItsProgramBuilds(Units units) throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      BlankInventoryTemplate.main(new String[0]);
    }
    Map<String, byte[]> built = parts(BlankInventoryTemplate.bytes(units));
    Map<String, byte[]> committed = parts(committed(units));
    assertEquals(built.keySet(), committed.keySet());
    built.forEach(
        (name, bytes) ->
            assertArrayEquals(
                bytes,
                committed.get(name),
                name + ": run with -Dgolden.update=true, look, commit"));
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void theFormReadsWithoutErrorsAndOnlyItsExamplesAreWarnedAbout(Units units) throws IOException {
    TestBook.Reading reading = TestBook.read(committed(units));
    Inventory inventory = reading.sound();
    assertEquals(units, inventory.settings().units());
    assertEquals(1, inventory.plants().size());
    String warnings =
        reading
            .text()
            .lines()
            .filter(l -> l.startsWith("WARNING"))
            .reduce("", (a, b) -> a + b + "\n");
    assertEquals(warnings, reading.text("IN-116"));
    assertEquals(4, warnings.lines().count(), warnings);
    for (String code : List.of("IN-113", "IN-114", "IN-115", "IN-118", "IN-150")) {
      assertEquals("", reading.text(code));
    }
    assertEquals(
        Set.of("Plants", "Places", "Species", "Settings"),
        inventory.sheets().stream().map(s -> s.name()).collect(toSet()));
  }

  /** {@code saved-elsewhere.xlsx} is the metric form, opened and saved in an office program. */
  @Test
  void theFormReadsTheSameAfterAnotherProgramHasSavedIt() throws IOException {
    TestBook.Reading ours = TestBook.read(committed(Units.METRIC));
    TestBook.Reading theirs =
        TestBook.read(
            Files.readAllBytes(Path.of("src/test/resources/inventories/saved-elsewhere.xlsx")));
    assertEquals(ours.text(), theirs.text());
    assertEquals(ours.sound().plants(), theirs.sound().plants());
    assertEquals(ours.sound().places(), theirs.sound().places());
    assertEquals(ours.sound().settings(), theirs.sound().settings());
  }

  @Test
  void bothFormsShowTheSameExample() throws IOException {
    Plant metric = TestBook.read(committed(Units.METRIC)).sound().plants().get(0);
    Plant us = TestBook.read(committed(Units.US)).sound().plants().get(0);
    assertEquals(metric.container().lengthCm(), us.container().lengthCm(), 0.5);
    assertEquals(metric.container().depthCm(), us.container().depthCm(), 0.5);
    assertEquals(metric.heightCm().orElseThrow(), us.heightCm().orElseThrow(), 1.5);
  }

  @Test
  void everyColumnHasItsFieldInOrderWithANote() throws IOException {
    try (XSSFWorkbook book = open(Units.METRIC)) {
      for (Map.Entry<String, List<FormField>> table : TABLES.entrySet()) {
        InventorySheet kind = InventorySheet.named(table.getKey()).orElseThrow();
        List<Column> expected = kind.columns().stream().filter(c -> !Proposals.hold(c)).toList();
        assertEquals(expected, table.getValue().stream().map(FormField::column).toList());
        XSSFSheet sheet = book.getSheet(table.getKey());
        for (int i = 0; i < table.getValue().size(); i++) {
          assertFalse(
              sheet
                  .getCellComment(new org.apache.poi.ss.util.CellAddress(0, i))
                  .getString()
                  .getString()
                  .isBlank());
        }
        assertTrue(sheet.getPaneInformation().isFreezePane());
        assertTrue(sheet.getFitToPage());
      }
      assertEquals(
          InventorySheet.SETTINGS.columns(),
          SettingFields.all().stream().map(FormField::column).toList());
      assertTrue(book.isSheetHidden(book.getSheetIndex("Lists")));
    }
  }

  @Test
  void everyDropDownHasItsListAndEveryListItsDropDown() throws IOException {
    try (XSSFWorkbook book = open(Units.METRIC)) {
      Set<String> defined =
          book.getAllNames().stream()
              .map(Name::getNameName)
              .filter(name -> !name.startsWith("_xlnm"))
              .collect(toSet());
      List<String> used = new ArrayList<>();
      for (String name : List.of("Plants", "Places", "Species", "Settings")) {
        for (DataValidation rule : book.getSheet(name).getDataValidations()) {
          if (rule.getValidationConstraint().getValidationType() == 3) {
            used.add(rule.getValidationConstraint().getFormula1());
          }
        }
      }
      assertEquals(defined, Set.copyOf(used));
    }
  }

  @Test
  void aSecondReaderSeesTheSameHeadings() throws IOException {
    try (ReadableWorkbook book =
            new ReadableWorkbook(new ByteArrayInputStream(committed(Units.METRIC)));
        var rows = book.findSheet("Plants").orElseThrow().openStream()) {
      assertEquals(
          PlantFields.all().stream().map(f -> f.heading(Units.METRIC)).toList(),
          rows.findFirst().orElseThrow().stream().map(c -> c.getText()).toList());
    }
  }

  @Test
  void theGuideWarnsOfWhatHurtsPeople() throws IOException {
    StringBuilder text = new StringBuilder();
    try (XSSFWorkbook book = open(Units.METRIC)) {
      book.getSheet("Guide").forEach(row -> text.append(row.getCell(0)).append('\n'));
    }
    for (String word :
        List.of(
            "Heavy pots",
            "Ice",
            "carbon monoxide",
            "licensed",
            "local code",
            "unknown is not safe",
            "label")) {
      assertTrue(text.toString().contains(word), word);
    }
  }
}
