package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Revision;
import org.hibernacle.model.Revision.PlantYear;
import org.hibernacle.model.Season;
import org.hibernacle.model.SheetTable;
import org.junit.jupiter.api.Test;

class NextInventoryTest {
  private static final String TAXON = "Acer palmatum";
  private static final String ASKED =
      "taxon|Root limit so far °C|Proposed root limit °C|Accept|Reason";

  private static TestBook garden() {
    return new TestBook()
        .plants(
            "Tag|Species|Home|Volume L|Shelf mark",
            "A1",
            TAXON,
            "Bench",
            5,
            "x",
            7,
            "Larix decidua",
            "Bench",
            9,
            "y")
        .places("Place|Kind|Warmer by K", "Bench", "bench", "", "Shed", "cold store", 3)
        .settings("Latitude", 50)
        .sheet("Suppliers", "Who", "the mill");
  }

  private static double builtInLimitC() {
    return SpeciesCatalogue.builtIn().row(TAXON).orElseThrow().rootLimitC();
  }

  private static PlantYear year(String id, Outcome outcome) {
    return new PlantYear(
        id, "name of " + id, TAXON, "Shed", -1.26, Optional.of(outcome), "frozen roots", "alas");
  }

  private static Revision revision(Outcome ofSeven) {
    return new Revision(
        new Season(2026, false),
        List.of(year("A1", Outcome.NO_DAMAGE), year("7", ofSeven)),
        List.of(
            new Revision.RootLimit(TAXON, builtInLimitC(), builtInLimitC() - 1, "because"),
            new Revision.RootLimit("Acer sp.", -5, -6, "a genus has no row of its own")),
        List.of(new Revision.Warmth("Shed", 3, 4.7, "a logger")));
  }

  private static Revision nothingNew() {
    return new Revision(
        new Season(2027, false), List.of(year("A1", Outcome.TIPS)), List.of(), List.of());
  }

  private static SheetTable sheet(List<SheetTable> sheets, String name) {
    return sheets.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<SheetTable> next(Inventory inventory, Revision revision) {
    return NextInventory.sheets(inventory, revision, SpeciesCatalogue.builtIn());
  }

  @Test
  void setsTheDeadAsideWithTheirWholeRowAndCarriesTheRest() {
    List<SheetTable> sheets = next(garden().read().sound(), revision(Outcome.DEAD));
    assertEquals(
        List.of("Plants", "Places", "Species", "Settings", "Suppliers", "Set aside", "History"),
        sheets.stream().map(SheetTable::name).toList());
    assertEquals(List.of(List.of("A1", TAXON, "Bench", 5.0, "x")), sheet(sheets, "Plants").rows());
    assertEquals(
        List.of(
            List.of(
                "2026/27",
                "dead",
                "frozen roots",
                "alas",
                7.0,
                "Larix decidua",
                "Bench",
                9.0,
                "y")),
        sheet(sheets, "Set aside").rows());
    assertEquals(garden().read().sheet("Suppliers"), sheet(sheets, "Suppliers"));
  }

  @Test
  void aHurtPlantStaysAndTheHistoryGrowsByOneRowAPlantAndSeason() {
    Inventory inventory = garden().read().sound();
    List<SheetTable> first = next(inventory, revision(Outcome.BRANCHES));
    assertEquals(2, sheet(first, "Plants").rows().size());
    assertTrue(first.stream().noneMatch(s -> s.name().equals("Set aside")));
    Inventory later =
        new Inventory(inventory.plants(), inventory.places(), inventory.settings(), first);
    List<SheetTable> second = next(later, nothingNew());
    List<List<Object>> rows = sheet(second, "History").rows();
    assertEquals(
        List.of("2026/27 A1", "2026/27 7", "2027/28 A1"),
        rows.stream().map(r -> r.get(0) + " " + r.get(1)).toList());
    assertEquals(
        List.of(
            "2027/28", "A1", "name of A1", TAXON, "Shed", -1.3, "tips died back", "frozen roots"),
        rows.get(2));
    // The same season reviewed again replaces its rows.
    Inventory again =
        new Inventory(inventory.plants(), inventory.places(), inventory.settings(), second);
    assertEquals(rows, sheet(next(again, nothingNew()), "History").rows());
  }

  @Test
  void proposalsStandBesideWhatTheyWouldChangeAndAskForAnAnswer() {
    List<SheetTable> sheets = next(garden().read().sound(), revision(Outcome.GONE));
    SheetTable places = sheet(sheets, "Places");
    assertEquals(
        List.of(
            "Place",
            "Kind",
            "Warmer by K",
            "Warmer by so far K",
            "Proposed warmer by K",
            "Accept",
            "Reason"),
        places.headings());
    assertEquals(
        List.of("Shed", "cold store", 3.0, 3.0, 4.7, "", "a logger"), places.rows().get(1));
    SheetTable species = sheet(sheets, "Species");
    assertEquals(1, species.rows().size(), "a genus can not be corrected");
    assertEquals(
        List.of(TAXON, "", builtInLimitC(), builtInLimitC() - 1, "", "because"),
        species.rows().get(0));
    assertEquals(
        List.of("Places Accept", "Species Accept"),
        NextInventory.questions(sheets).stream().map(q -> q.sheet() + " " + q.heading()).toList());
  }

  @Test
  void onlyAYesPutsAProposalInForce() {
    for (String answer : List.of("", "no", "yes")) {
      double proposedC = builtInLimitC() - 1;
      TestBook.Reading reading =
          garden()
              .sheet("Species", ASKED, TAXON, builtInLimitC(), proposedC, answer, "because")
              .places(
                  "Place|Kind|Warmer by K|Proposed warmer by K|Accept",
                  "Bench",
                  "bench",
                  "",
                  "",
                  "",
                  "Shed",
                  "cold store",
                  3,
                  4.7,
                  answer)
              .read();
      boolean yes = answer.equals("yes");
      Inventory inventory = reading.sound();
      assertEquals(
          yes ? proposedC : builtInLimitC(),
          inventory.plants().get(0).rootSpecies().rootLimitC(),
          answer);
      assertEquals(yes ? "own" : "x", yes ? basis(inventory) : "x");
      assertEquals(yes ? 4.7 : 3, inventory.place("Shed").warmerByK(), answer);
      assertEquals(yes, reading.text().contains("[IN-372]"), reading.text());
      assertEquals(!yes, reading.text().contains("[IN-371]"), reading.text());
    }
  }

  private static String basis(Inventory inventory) {
    return inventory.plants().get(0).rootSpecies().rootLimitBasis();
  }

  @Test
  void aProposalInFahrenheitIsReadAsSuch() {
    Inventory inventory =
        garden()
            .sheet("Species", "taxon|Proposed root limit °F|Accept", TAXON, 14, "Yes")
            .read()
            .sound();
    assertEquals(-10, inventory.plants().get(0).rootSpecies().rootLimitC(), 1e-9);
  }

  @Test
  void anAnswerToNothingIsAWarningAndAWrongAnswerAnError() {
    TestBook.Reading nothing =
        garden().sheet("Species", "taxon|Proposed root limit °C|Accept", TAXON, "", "yes").read();
    assertTrue(nothing.text().contains("WARNING") && nothing.text().contains("[IN-370]"));
    TestBook.Reading wrong = garden().sheet("Species", ASKED, TAXON, -7, -8, "perhaps", "").read();
    assertTrue(wrong.inventory().isEmpty());
    assertTrue(wrong.text().contains("sheet Species, D2 [IN-122]"), wrong.text());
  }

  @Test
  void theNextReviewSettlesWhatWasAnswered() {
    Inventory inventory =
        garden()
            .sheet(
                "Species",
                ASKED + "|notes",
                TAXON,
                -7,
                -8,
                "yes",
                "because",
                "",
                "Larix decidua",
                -20,
                -21,
                "no",
                "because",
                "",
                "Pinus thunbergii",
                -9,
                -10,
                "",
                "because",
                "mine")
            .places(
                "Place|Kind|Proposed warmer by °F|Accept",
                "Bench",
                "bench",
                "",
                "",
                "Shed",
                "cold store",
                9,
                "yes")
            .read()
            .sound();
    List<SheetTable> sheets = next(inventory, nothingNew());
    SheetTable species = sheet(sheets, "Species");
    assertEquals(List.of("taxon", "notes", "root_limit_estimate °C"), species.headings());
    assertEquals(
        List.of(List.of(TAXON, "", -8.0), List.of("Pinus thunbergii", "mine", "")), species.rows());
    SheetTable places = sheet(sheets, "Places");
    assertEquals(List.of("Place", "Kind", "Warmer by K"), places.headings());
    assertEquals(5.0, places.rows().get(1).get(2));
    assertFalse(places.rows().get(0).get(2) instanceof Double);
  }
}
