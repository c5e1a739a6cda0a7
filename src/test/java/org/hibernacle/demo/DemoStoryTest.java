package org.hibernacle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.demo.DemoTemperatures.Day;
import org.hibernacle.model.SheetTable;
import org.junit.jupiter.api.Test;

/** The invented garden shows what its README says it shows. */
class DemoStoryTest {
  private final List<Day> days = DemoTemperatures.days();

  @Test
  void everyDayIsThereOnceAndItsMinimumIsBelowItsMaximum() {
    LocalDate expected = DemoTemperatures.FIRST;
    for (Day day : days) {
      assertEquals(expected, day.date());
      assertTrue(day.minC().compareTo(day.maxC()) < 0, day.toString());
      assertEquals(1, day.minC().scale());
      expected = expected.plusDays(1);
    }
    assertEquals(DemoTemperatures.LAST.plusDays(1), expected);
  }

  @Test
  void theMonthsAreThoseOfAnInlandGardenWithAContinentalWinter() {
    assertEquals(-2.5, meanC(day -> day.date().getMonthValue() == 1), 1.0);
    assertEquals(21, meanC(day -> day.date().getMonthValue() == 7), 1.0);
  }

  @Test
  void eachWinterHasItsColdestNight() {
    Map<Integer, String> coldestC = new HashMap<>();
    for (int autumn = 2016; autumn <= 2025; autumn++) {
      coldestC.put(autumn, lowest(LocalDate.of(autumn, 7, 1), LocalDate.of(autumn + 1, 6, 30)));
    }
    assertEquals(
        Map.of(
            2016, "-15.8", 2017, "-14.6", 2018, "-14.1", 2019, "-8.0", 2020, "-17.6", 2021, "-14.3",
            2022, "-14.6", 2023, "-14.8", 2024, "-15.2", 2025, "-16.2"),
        coldestC);
  }

  @Test
  void oneAutumnFreezesEarlyAfterMildWeeksAndOneSpringFreezesLate() {
    assertEquals("-9.2", lowest(LocalDate.of(2021, 11, 8), LocalDate.of(2021, 11, 10)));
    assertTrue(
        lowestC(LocalDate.of(2021, 8, 1), LocalDate.of(2021, 11, 4)) > 0, "no frost before it");
    assertEquals("-3.2", lowest(LocalDate.of(2024, 5, 6), LocalDate.of(2024, 5, 10)));
  }

  @Test
  void thePlantsStandAtKnownPlacesWithRoomForAll() throws IOException {
    SheetTable places = sheet("Places");
    Map<String, Double> roomM2 = new HashMap<>();
    for (int row = 0; row < places.rows().size(); row++) {
      roomM2.put(text(places, row, "Place"), (Double) cell(places, row, "Floor m2"));
    }
    SheetTable plants = sheet("Plants");
    Set<String> ids = new HashSet<>();
    double allM2 = 0;
    for (int row = 0; row < plants.rows().size(); row++) {
      assertTrue(ids.add(text(plants, row, "Id")), "id twice in row " + row);
      double spreadM = (Double) cell(plants, row, "Spread cm") / 100;
      double count = cell(plants, row, "Count") instanceof Double number ? number : 1;
      double floorM2 = count * spreadM * spreadM;
      allM2 += floorM2;
      String home = text(plants, row, "Home");
      assertTrue(roomM2.containsKey(home), home);
      roomM2.merge(home, -floorM2, Double::sum);
      assertTrue(roomM2.get(home) >= 0, home + " overflows at row " + row);
    }
    assertTrue(ids.size() >= 40, "plants: " + ids.size());
    assertTrue(allM2 < 16, "all crowns together, m2: " + allM2);
  }

  @Test
  void thePlantsAreOfManySpeciesAndOfEveryGroup() throws IOException {
    Map<String, CSVRecord> known = new HashMap<>();
    try (CSVParser table = DemoInventory.builtInSpecies()) {
      for (CSVRecord species : table) {
        known.put(species.get("taxon"), species);
        for (String name : species.get("common_names").split(";")) {
          known.put(name, species);
        }
      }
    }
    SheetTable plants = sheet("Plants");
    Set<String> taxa = new HashSet<>();
    Set<String> groups = new HashSet<>();
    for (int row = 0; row < plants.rows().size(); row++) {
      CSVRecord species = known.get(text(plants, row, "Species"));
      assertNotNull(species, text(plants, row, "Species"));
      taxa.add(species.get("taxon"));
      groups.add(species.get("group"));
    }
    assertTrue(taxa.size() >= 25, "species: " + taxa.size());
    assertEquals(7, groups.size(), groups.toString());
  }

  @Test
  void aPlaceOfEveryKindIsThere() throws IOException {
    SheetTable places = sheet("Places");
    Set<String> kinds = new HashSet<>();
    for (int row = 0; row < places.rows().size(); row++) {
      kinds.add(text(places, row, "Kind"));
    }
    assertEquals(
        Set.of("bench", "ground", "cold store", "glasshouse", "frost-free room", "warm room"),
        kinds);
  }

  private static SheetTable sheet(String name) throws IOException {
    return DemoInventory.sheets().stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Object cell(SheetTable table, int row, String heading) {
    return table.rows().get(row).get(table.headings().indexOf(heading));
  }

  private static String text(SheetTable table, int row, String heading) {
    return (String) cell(table, row, heading);
  }

  private double meanC(Predicate<Day> which) {
    return days.stream()
        .filter(which)
        .mapToDouble(day -> (day.minC().doubleValue() + day.maxC().doubleValue()) / 2)
        .average()
        .orElseThrow();
  }

  private String lowest(LocalDate from, LocalDate to) {
    return days.stream()
        .filter(day -> !day.date().isBefore(from) && !day.date().isAfter(to))
        .map(Day::minC)
        .min(BigDecimal::compareTo)
        .orElseThrow()
        .toPlainString();
  }

  private double lowestC(LocalDate from, LocalDate to) {
    return Double.parseDouble(lowest(from, to));
  }
}
