package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.SomePlace;
import org.hibernacle.input.PlaceTemperatures.Given;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlaceTemperaturesTest {
  private static final List<Place> PLACES =
      List.of(
          SomePlace.of(PlaceKind.COLD_STORE).named("Stone shed").place(),
          SomePlace.of(PlaceKind.GLASSHOUSE).named("Glasshouse").place());

  private final Problems problems = new Problems();
  private final List<Given> given = new ArrayList<>();

  @TempDir Path folder = Path.of("");

  @Test
  void namesAreMatchedAsTheWorkbooksAre() throws IOException {
    give("stone  SHED", "shed.csv", "date,tmin_c,tmax_c\n2026-01-05,-3,1\n");
    Map<String, TemperatureSeries> read = read(Optional.empty());
    assertEquals(List.of("Stone shed"), List.copyOf(read.keySet()));
    assertFalse(problems.hasErrors());
  }

  @Test
  void severalFilesOfOnePlaceMakeOneSeries() throws IOException {
    give("Stone shed", "a.csv", "date,tmin_c,tmax_c\n2026-01-05,-3,1\n");
    give("Glasshouse", "glass.csv", "date,tmin_c,tmax_c\n2026-01-05,4,9\n");
    give("Stone shed", "b.csv", "date,tmin_c,tmax_c\n2026-01-06,-4,0\n");
    Map<String, TemperatureSeries> read = read(Optional.empty());
    assertEquals(List.of("Stone shed", "Glasshouse"), List.copyOf(read.keySet()));
    assertEquals(2, days(read, "Stone shed").size());
    assertEquals(1, days(read, "Glasshouse").size());
  }

  @Test
  void anUnknownPlaceIsAnErrorWithTheNearestName() throws IOException {
    give("Stone shet", "shed.csv", "date,tmin_c,tmax_c\n2026-01-05,-3,1\n");
    assertEquals(Map.of(), read(Optional.empty()));
    String said = problems.sorted().get(0).toString();
    assertTrue(said.startsWith("--place-temperatures [IN-340]: \"Stone shet\" for "), said);
    assertTrue(said.contains("(nearest: \"Stone shed\")"), said);
  }

  @Test
  void faultsInTheFileAreToldLikeThoseOfAnyTemperatureFile() throws IOException {
    give("Stone shed", "shed.csv", "date,tmin_c,tmax_c\n2026-01-05,cold,1\n");
    given.add(new Given("Glasshouse", folder.resolve("none.csv")));
    assertEquals(Map.of(), read(Optional.empty()));
    List<String> codes = problems.sorted().stream().map(p -> p.code()).toList();
    assertTrue(codes.containsAll(List.of("IN-313", "IN-301")), codes.toString());
  }

  /** The station may come in °F and the logger in °C: its own heading goes first. */
  @Test
  void theUnitAskedForOnlyHelpsWhereTheHeadingSaysNothing() throws IOException {
    give("Stone shed", "shed.csv", "date,tmin_c,tmax_c\n2026-01-05,-5,5\n");
    give("Glasshouse", "glass.csv", "date,tmin,tmax\n2026-01-05,23,41\n");
    Map<String, TemperatureSeries> read = read(Optional.of(TemperatureUnit.F));
    LocalDate day = LocalDate.of(2026, 1, 5);
    assertEquals(new DailyExtremes(-5, 5), days(read, "Stone shed").get(day));
    assertEquals(-5, days(read, "Glasshouse").get(day).minC(), 1e-12);
    assertEquals(5, days(read, "Glasshouse").get(day).maxC(), 1e-12);
    assertTrue(problems.sorted().stream().noneMatch(p -> p.code().equals("IN-309")));
  }

  @Test
  void withoutAnyUnitTheFileIsNotRead() throws IOException {
    give("Glasshouse", "glass.csv", "date,tmin,tmax\n2026-01-05,23,41\n");
    assertEquals(Map.of(), read(Optional.empty()));
    assertEquals("IN-308", problems.sorted().get(0).code());
  }

  private static Map<LocalDate, DailyExtremes> days(
      Map<String, TemperatureSeries> read, String place) {
    return Optional.ofNullable(read.get(place)).orElseThrow().days();
  }

  private void give(String place, String name, String text) throws IOException {
    given.add(new Given(place, Files.writeString(folder.resolve(name), text)));
  }

  private Map<String, TemperatureSeries> read(Optional<TemperatureUnit> unit) {
    return PlaceTemperatures.read(given, PLACES, unit, problems);
  }
}
