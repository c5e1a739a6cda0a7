package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Plant.Trust;
import org.hibernacle.model.Plant.Vigour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantRowsTest {
  private static final String LEAST = "Id|Species|Home|Volume L";

  private static Reading one(String headings, Object... values) {
    return TestBook.least().plants(headings, values).read();
  }

  /** A sound plant with one more column. */
  private static Reading with(String heading, Object value) {
    return one(LEAST + "|" + heading, "A1", "Acer palmatum", "Bench", 5, value);
  }

  @Test
  void readsEveryColumn() {
    LocalDate potted = LocalDate.of(2026, 3, 20);
    Plant plant =
        TestBook.least()
            .places("Place|Kind", "Bench", "bench", "Shed", "cold store")
            .plants(
                "Id|Label|Species|Cultivar|Home|Pot shape|Length cm|Width cm|Depth cm|Pot material"
                    + "|Last root work|Vigour|Priority|Value|Root limit °C|Stay in|Not before"
                    + "|Not after|Count|Height cm|Spread cm|Frost-proof pot|Planned root work"
                    + "|Rootstock|Notes",
                "B4",
                "Old pine",
                "goyomatsu",
                "Kokonoe",
                "bench",
                "rectangular",
                40,
                30,
                12,
                "terracotta",
                potted,
                "weak",
                5,
                800,
                -6.5,
                "SHED",
                LocalDate.of(2026, 11, 1),
                LocalDate.of(2027, 3, 31),
                2,
                70,
                60,
                "no",
                LocalDate.of(2027, 3, 1),
                "Pinus thunbergii",
                "by the wall")
            .read()
            .sound()
            .plants()
            .get(0);
    assertEquals("B4", plant.id());
    assertEquals("Old pine", plant.name());
    assertEquals("Pinus parviflora", plant.species().taxon());
    assertEquals("goyomatsu", plant.speciesAsWritten());
    assertEquals("Kokonoe", plant.cultivar());
    assertEquals("Bench", plant.home());
    assertEquals(Shape.RECTANGULAR, plant.container().shape());
    assertEquals(Material.TERRACOTTA, plant.container().material());
    assertEquals(Optional.of(potted), plant.lastRootWork());
    assertEquals(Vigour.WEAK, plant.vigour());
    assertEquals(5, plant.priority());
    assertEquals(OptionalDouble.of(800), plant.value());
    assertEquals(OptionalDouble.of(-6.5), plant.ownRootLimitC());
    assertEquals(Optional.of("Shed"), plant.stayIn());
    assertEquals(Optional.of(LocalDate.of(2026, 11, 1)), plant.notBefore());
    assertEquals(Optional.of(LocalDate.of(2027, 3, 31)), plant.notAfter());
    assertEquals(2, plant.count());
    assertEquals(OptionalDouble.of(70), plant.heightCm());
    assertEquals(OptionalDouble.of(60), plant.spreadCm());
    assertFalse(plant.frostProofPot());
    assertEquals(Optional.of(LocalDate.of(2027, 3, 1)), plant.plannedRootWork());
    assertEquals("Pinus thunbergii", plant.rootSpecies().taxon());
    assertEquals(Trust.NAMED, plant.rootLimitTrust());
    assertEquals("by the wall", plant.notes());
  }

  @Test
  void fillsInDefaultsAndListsEach() {
    Reading reading =
        one(LEAST, "A1", "Acer palmatum", "Bench", 5, "A2", "Acer palmatum", "Bench", 5);
    Plant plant = reading.sound().plants().get(1);
    assertEquals(Material.CERAMIC, plant.container().material());
    assertEquals(Vigour.NORMAL, plant.vigour());
    assertEquals(3, plant.priority());
    assertEquals(1, plant.count());
    assertTrue(plant.frostProofPot());
    String notes = reading.text("IN-128");
    for (String line :
        List.of(
            "Pot material is empty for 2 plants; ceramic is used.",
            "Vigour is empty for 2 plants; normal is used.",
            "Priority is empty for 2 plants; 3 is used.",
            "Count is empty for 2 plants; 1 is used.",
            "Frost-proof pot is empty for 2 plants; yes is used.")) {
      assertTrue(notes.contains("NOTE inventory.xlsx, sheet Plants [IN-128]: " + line), notes);
    }
  }

  @Test
  void aSecondPlantOfTheSameIdIsAnError() {
    Reading reading =
        one(LEAST, "A1", "Acer palmatum", "Bench", 5, "A1", "Acer palmatum", "Bench", 5);
    assertEquals(
        "ERROR inventory.xlsx, sheet Plants, A3 [IN-130]: Id \"A1\"; expected a name of its own;"
            + " the same stands in A2; nothing was written.\n",
        reading.text("IN-130"));
  }

  @Test
  void whatIsNeededAndMissingIsAnErrorInItsCell() {
    String text = one(LEAST + "|Notes", "", "", "", "", "a lost label").text();
    assertTrue(
        text.contains(
            "ERROR inventory.xlsx, sheet Plants, A2 [IN-129]: Id is empty; expected an Id of its"
                + " own for each plant, e.g. A7; nothing was written."),
        text);
    assertTrue(text.contains("B2 [IN-129]: Species is empty; expected a scientific or common"));
    assertTrue(text.contains("C2 [IN-129]: Home is empty; expected the place of the Places sheet"));
    assertTrue(text.contains("D2 [IN-132]: Volume L is empty; expected the size of the pot:"));
  }

  @Test
  void anUnknownSpeciesComesWithTheNearestNames() {
    String error = one(LEAST, "A1", "Acer plamatum", "Bench", 5).text("IN-201");
    assertTrue(
        error.startsWith(
            "ERROR inventory.xlsx, sheet Plants, B2 [IN-201]: Species \"Acer plamatum\"; expected a"
                + " name of the species table (nearest: \"Acer palmatum\", \""),
        error);
    assertTrue(
        error.endsWith(
            "), a genus such as Acer sp., or a row of your own on the Species sheet; nothing was"
                + " written.\n"),
        error);
  }

  @Test
  void anUnknownPlaceComesWithTheNearestOnes() {
    Reading reading =
        one(LEAST + "|Stay in", "A1", "Acer palmatum", "Bnech", 5, "Attic of the barn");
    assertEquals(
        "ERROR inventory.xlsx, sheet Plants, C2 [IN-131]: Home \"Bnech\"; expected a place of the"
            + " Places sheet (nearest: \"Bench\"); nothing was written.\n"
            + "ERROR inventory.xlsx, sheet Plants, E2 [IN-131]: Stay in \"Attic of the barn\";"
            + " expected a place of the Places sheet; nothing was written.\n",
        reading.text("IN-131"));
  }

  @Test
  void aGenusIsEnoughButWarnedAbout() {
    Reading reading = one(LEAST, "A1", "Cornus sp.", "Bench", 5);
    assertEquals(
        "WARNING inventory.xlsx, sheet Plants, B2 [IN-202]: Species \"Cornus sp.\"; expected a"
            + " species for figures of its own; the most cautious figures of Cornus florida, Cornus"
            + " kousa, Cornus mas are used: root limit -6 °C.\n",
        reading.text("IN-202"));
    assertEquals(Trust.GENUS_ONLY, reading.sound().plants().get(0).rootLimitTrust());
  }

  @Test
  void trustFollowsTheRoots() {
    Plant named =
        one(LEAST + "|Rootstock", "A1", "Pinus sp.", "Bench", 5, "Pinus thunbergii")
            .sound()
            .plants()
            .get(0);
    assertEquals(Trust.NAMED, named.rootLimitTrust());
    Plant genus =
        one(LEAST + "|Rootstock", "A1", "Pinus parviflora", "Bench", 5, "Pinus sp.")
            .sound()
            .plants()
            .get(0);
    assertEquals(Trust.GENUS_ONLY, genus.rootLimitTrust());
    assertTrue(with("Rootstock", "Quixotia").text("IN-201").contains("Rootstock \"Quixotia\""));
  }

  @Test
  void aCultivarWithARowOfItsOwnTakesIt() {
    Reading reading = one(LEAST + "|Cultivar", "A1", "Acer palmatum", "Bench", 5, "Kiyohime");
    Plant plant = reading.sound().plants().get(0);
    assertTrue(plant.species().taxon().contains("dwarf"), plant.species().taxon());
    assertEquals("Kiyohime", plant.cultivar());
    assertTrue(reading.text("IN-205").startsWith("NOTE"), reading::text);
    Plant inName = one(LEAST, "A1", "Acer palmatum 'Deshojo'", "Bench", 5).sound().plants().get(0);
    assertEquals("Deshojo", inName.cultivar());
    assertEquals("Acer palmatum", inName.species().taxon());
  }

  @ParameterizedTest
  @CsvSource({
    "Priority, 6, 'Priority \"6\"; expected a number from 1 to 5'",
    "Priority, 2.5, 'Priority \"2.5\"; expected a whole number from 1 to 5'",
    "Count, 0, 'Count \"0\"; expected a number from 1 to 10000'",
    "Depth cm, 900, 'Depth cm \"900\"; expected a number from 1.1 to 200 cm'",
    "Depth in, 90, 'Depth in \"90\"; expected a number from 0.43 to 78.74 in'",
    "Root limit °F, -80, 'Root limit °F \"-80\"; expected a number from -40 to 68 °F'",
    "Height cm, tall, 'Height cm \"tall\"; expected a number from 1 to 2000 cm, with a point'",
    "Height cm, '1,705', 'Height cm \"1,705\"; expected a number from 1 to 2000 cm, with a point'",
    "Height cm, 0x46, 'Height cm \"0x46\"; expected a number'",
    "Height cm, 70 cm, 'Height cm \"70 cm\"; expected a number'",
    "Value, NaN, 'Value \"NaN\"; expected a number from 0 to 1000000000'",
    "Not before, 1.11.2026, 'Not before \"1.11.2026\"; expected a cell formatted as a date'",
    "Not before, 2026-02-30, 'Not before \"2026-02-30\"; expected a cell formatted as a date'",
    "Last root work, 46000, 'Last root work \"46000\"; expected a cell formatted as a date'",
    "Vigour, feeble, 'Vigour \"feeble\"; expected one of weak, normal, strong'",
    "Pot shape, heart, 'Pot shape \"heart\"; expected one of round, rectangular'",
    "Frost-proof pot, maybe, 'Frost-proof pot \"maybe\"; expected one of yes, no'",
    "Pot material, tin, 'Pot material \"tin\"; expected one of ceramic, terracotta, plastic'"
  })
  void saysWhatWasFoundAndWhatWouldBeRight(String heading, String value, String message) {
    Object cell =
        value.matches("-?[0-9.]+") && !value.contains("11.") ? Double.valueOf(value) : value;
    Reading reading = with(heading, cell);
    String errors =
        reading.text().lines().filter(l -> l.startsWith("ERROR")).reduce("", String::concat);
    assertTrue(errors.startsWith("ERROR inventory.xlsx, sheet Plants, E2 ["), reading::text);
    assertTrue(errors.contains(message), errors);
    assertTrue(reading.inventory().isEmpty());
  }

  @Test
  void datesThatCrossAreAnError() {
    Reading reading =
        one(
            LEAST + "|Not before|Not after",
            "A1",
            "Acer palmatum",
            "Bench",
            5,
            LocalDate.of(2026, 12, 1),
            LocalDate.of(2026, 11, 1));
    assertEquals(
        "ERROR inventory.xlsx, sheet Plants, F2 [IN-136]: Not after \"2026-11-01\"; expected a day"
            + " not before 2026-12-01; nothing was written.\n",
        reading.text("IN-136"));
  }

  @Test
  void everyBadCellOfARowIsReportedAtOnce() {
    Reading reading =
        one(
            LEAST + "|Priority|Vigour|Not before",
            "A1",
            "Quixotia",
            "Nowhere",
            -5,
            9,
            "feeble",
            "soon");
    assertEquals(
        6,
        reading.problems().sorted().stream()
            .filter(d -> d.toString().contains("nothing was"))
            .count(),
        reading::text);
  }
}
