package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.input.TestBook.Formula;
import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.model.SheetTable;
import org.junit.jupiter.api.Test;

/** The workbook as a whole: sheets, headings and cells, whatever they hold. */
class InventoryWorkbookTest {
  @Test
  void theLeastAWorkbookMayHoldIsEnough() {
    Reading reading = TestBook.least().read();
    Inventory inventory = reading.sound();
    assertEquals(1, inventory.plants().size());
    assertEquals("Bench", inventory.place("Bench").name());
    assertEquals(50, inventory.settings().latitudeDeg());
    assertTrue(reading.problems().sorted().stream().allMatch(d -> d.expected().isEmpty()));
  }

  @Test
  void theOrderOfColumnsAndSheetsDoesNotMatter() {
    Plant usual = TestBook.least().read().sound().plants().get(0);
    Plant other =
        new TestBook()
            .settings("Latitude", 50)
            .plants("VOLUME l|home| species |ID", 5, "bench", "acer PALMATUM", "A1")
            .places("kind|place", "Bench", "Bench")
            .read()
            .sound()
            .plants()
            .get(0);
    assertEquals(usual.species(), other.species());
    assertEquals(usual.container(), other.container());
    assertEquals("Bench", other.home());
  }

  @Test
  void unknownColumnsAndSheetsAreCarriedAlong() {
    Reading reading =
        TestBook.least()
            .plants(
                "Grower|Id|Species|Home|Volume L|Bought",
                "North nursery",
                "A1",
                "Acer palmatum",
                "Bench",
                5,
                LocalDate.of(2019, 4, 6))
            .sheet("Feeding", "Month|Grams", "May", 12.5)
            .read();
    SheetTable plants = reading.sheet("Plants");
    assertEquals(
        List.of("Grower", "Id", "Species", "Home", "Volume L", "Bought"), plants.headings());
    assertEquals(
        List.of("North nursery", "A1", "Acer palmatum", "Bench", 5.0, LocalDate.of(2019, 4, 6)),
        plants.rows().get(0));
    assertEquals(List.of(List.of("May", 12.5)), reading.sheet("Feeding").rows());
    assertEquals(
        "NOTE inventory.xlsx, sheet Plants, A1 [IN-113]: column \"Grower\" is not one the program"
            + " knows; it is carried into the plan as it stands, and nothing is read from it.\n"
            + "NOTE inventory.xlsx, sheet Plants, F1 [IN-113]: column \"Bought\" is not one the"
            + " program knows; it is carried into the plan as it stands, and nothing is read from"
            + " it.\n",
        reading.text("IN-113"));
    assertTrue(reading.text("IN-114").contains("sheet Feeding"));
  }

  @Test
  void aHeadingThatLooksLikeAKnownOneIsAWarning() {
    Reading reading =
        TestBook.least()
            .plants("Id|Species|Home|Volume L|Piority", "A1", "Acer palmatum", "Bench", 5, 5)
            .read();
    assertEquals(
        "WARNING inventory.xlsx, sheet Plants, E1 [IN-113]: column \"Piority\" is not one the"
            + " program knows; expected \"Priority\" if that is meant; it is carried into the plan"
            + " as it stands, and nothing is read from it.\n",
        reading.text("IN-113"));
  }

  @Test
  void twoHeadingsForOneColumnAreAnError() {
    Reading reading =
        TestBook.least()
            .plants(
                "Id|Species|Home|Depth cm|Pot depth in|Length cm",
                "A1",
                "Acer palmatum",
                "Bench",
                10,
                4,
                30)
            .read();
    assertEquals(
        "ERROR inventory.xlsx, sheet Plants, E1 [IN-112]: \"Pot depth in\" and \"Depth cm\" both"
            + " mean Depth; expected one column for it; nothing was written.\n",
        reading.text("IN-112"));
    assertTrue(reading.inventory().isEmpty());
  }

  @Test
  void missingSheetsAndHeadingsAreNamed() {
    String none = new TestBook().sheet("Sheet1", "a|b", 1, 2).read().text();
    assertTrue(none.contains("[IN-110]: no sheet \"Plants\"; expected a sheet of that name with"));
    assertTrue(none.contains("[IN-110]: no sheet \"Places\""));
    assertTrue(none.contains("[IN-110]: no sheet \"Settings\""));
    String headless =
        TestBook.least().plants("Id|Volume L", "A1", 5).places("Site|b", "x", "y").read().text();
    assertTrue(
        headless.contains(
            "sheet Plants [IN-111]: no heading \"Species\"; expected headings such as Id, Label,"
                + " Species, Cultivar in one row"),
        headless);
    assertTrue(headless.contains("sheet Plants [IN-111]: no heading \"Home\""));
    assertTrue(headless.contains("sheet Places [IN-111]: no heading \"Kind\""));
    String rowless = TestBook.least().places("Place|Kind").read().text();
    assertTrue(rowless.contains("sheet Places [IN-117]: no rows below the headings"), rowless);
  }

  @Test
  void aTitleMayStandAboveTheHeadings() {
    Reading reading =
        TestBook.least()
            .plants(
                "My trees|||",
                "",
                "",
                "",
                "",
                "Id",
                "Species",
                "Home",
                "Volume L",
                "A1",
                "Acer palmatum",
                "Bench",
                5)
            .read();
    assertEquals("A1", reading.sound().plants().get(0).id());
    assertTrue(reading.text("IN-118").contains("above the headings in row 3"), reading::text);
  }

  @Test
  void storedResultsOfFormulasAreUsedAndSaidSo() {
    Reading reading =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L",
                "A1",
                new Formula("\"Acer \"&\"palmatum\"", "Acer palmatum"),
                "Bench",
                new Formula("2+3", 5))
            .read();
    assertEquals(5, reading.sound().plants().get(0).container().volumeL());
    assertEquals(
        "NOTE inventory.xlsx, sheet Plants [IN-125]: formulas in 2 cells; their stored"
            + " results are used and carried on without the formulas.\n",
        reading.text("IN-125"));
  }

  @Test
  void aFormulaWithoutAStoredResultIsAnError() {
    Reading reading =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L",
                "A1",
                "Acer palmatum",
                "Bench",
                new Formula("2+3", false))
            .read();
    assertTrue(reading.text("IN-124").contains("sheet Plants, D2 [IN-124]"), reading::text);
    assertTrue(reading.inventory().isEmpty());
  }

  @Test
  void anErrorValueIsAnErrorWhereItIsReadAndAWarningElsewhere() {
    String read =
        TestBook.least()
            .plants("Id|Species|Home|Volume L", "A1", "Acer palmatum", "Bench", "#REF!")
            .read()
            .text();
    assertTrue(
        read.contains(
            "ERROR inventory.xlsx, sheet Plants, D2 [IN-123]: the cell shows #REF!; expected a"
                + " value; nothing was written."),
        read);
    Reading carried =
        TestBook.least()
            .plants("Id|Species|Home|Volume L|Weight", "A1", "Acer palmatum", "Bench", 5, "#DIV/0!")
            .read();
    assertTrue(carried.text("IN-123").startsWith("WARNING"));
    assertEquals("#DIV/0!", carried.sheet("Plants").rows().get(0).get(4));
  }

  @Test
  void numbersAndDatesAsTextAreReadAndSaidSo() {
    Reading reading =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L|Not before|Root limit °C",
                7,
                "Acer palmatum",
                "Bench",
                "5.5",
                "2026-11-01",
                "−6")
            .read();
    Plant plant = reading.sound().plants().get(0);
    assertEquals("7", plant.id());
    assertEquals(5.5, plant.container().volumeL());
    assertEquals(LocalDate.of(2026, 11, 1), plant.notBefore().orElseThrow());
    assertEquals(-6, plant.ownRootLimitC().orElseThrow());
    assertTrue(reading.text("IN-126").contains("Volume L holds a number as text for 1 plant"));
    assertTrue(reading.text("IN-127").contains("Not before holds a date as text for 1 plant"));
  }

  @Test
  void aRowWithAnythingInItIsAPlantAndNeverSkipped() {
    Reading reading =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L|Remark",
                "A1",
                "Acer palmatum",
                "Bench",
                5,
                "",
                "",
                "",
                "",
                "",
                "by the gate")
            .read();
    assertTrue(reading.inventory().isEmpty());
    assertEquals(
        4, reading.problems().sorted().stream().filter(d -> d.where().contains("3")).count());
  }

  @Test
  void blankRowsBetweenPlantsDoNotMatter() {
    Reading reading =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L",
                "A1",
                "Acer palmatum",
                "Bench",
                5,
                "",
                "",
                "",
                "",
                "A2",
                "Acer palmatum",
                "Bench",
                6)
            .read();
    assertEquals(2, reading.sound().plants().size());
    assertFalse(reading.problems().hasErrors());
  }

  @Test
  void aHeadingWithoutAUnitIsReadInMetricUnitsAndSaidSo() {
    Reading reading =
        TestBook.least().plants("Id|Species|Home|Volume", "A1", "ume", "Bench", 5).read();
    assertEquals(
        "NOTE inventory.xlsx, sheet Plants [IN-115]: headings without a unit; read: Volume in L.\n",
        reading.text("IN-115"));
  }

  @Test
  void anExampleOfTheBlankFormIsPointedOut() {
    Reading reading =
        TestBook.least()
            .plants("Id|Species|Home|Volume L", "EXAMPLE-1", "Acer palmatum", "Bench", 5)
            .read();
    assertTrue(reading.text("IN-116").startsWith("WARNING inventory.xlsx, sheet Plants, A2"));
    assertEquals(1, reading.sound().plants().size());
  }
}
