package org.hibernacle.planning.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The same weather half a year earlier, at the mirrored latitude, gives the same plan. Half a year
 * is 184 days, from 15 January to the 15 July before: midwinter, the first day home and the day on
 * which covers go on then fall together, other dates of the calendar lie up to two days apart, and
 * so may moves. Every day is a moving day, or weekdays would differ.
 */
class MirroredYearTest {
  private static final int HALF_A_YEAR = 184;
  private static final int MOST_DAYS = 2;

  /** The season itself, and with it the nights that are judged, begin and end three days apart. */
  private static final int MOST_DAYS_IN_SUMMER = 3;

  /** May to September, and its mirror image. */
  private static final Set<Month> SUMMER =
      EnumSet.of(Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER);

  static LongStream seeds() {
    return Draw.seeds(7_200, 8);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void southernWintersArePlannedLikeNorthernOnes(long seed) {
    SomeGarden drawn = SomeGarden.of(seed);
    int northern = drawn.inventory().settings().southern() ? HALF_A_YEAR : 0;
    double latitudeDeg = Math.abs(drawn.inventory().settings().latitudeDeg());
    List<PlantPlan> north = plans(drawn, latitudeDeg, northern);
    List<PlantPlan> south = plans(drawn, -latitudeDeg, northern - HALF_A_YEAR);
    List<String> different = new ArrayList<>();
    for (int i = 0; i < north.size(); i++) {
      if (!alike(north.get(i), south.get(i))) {
        different.add(told(north.get(i)) + " against " + told(south.get(i)));
      }
    }
    assertEquals(List.of(), different, () -> "-Dproof.seed=" + seed + " -Dproof.cases=1");
  }

  private static boolean alike(PlantPlan north, PlantPlan south) {
    boolean same =
        north.verdict() == south.verdict() && north.moves().size() == south.moves().size();
    for (int i = 0; same && i < north.moves().size(); i++) {
      Move one = north.moves().get(i);
      Move other = south.moves().get(i);
      long apart = one.date().toEpochDay() - HALF_A_YEAR - other.date().toEpochDay();
      boolean summer = SUMMER.contains(one.date().getMonth());
      long most = summer ? MOST_DAYS_IN_SUMMER : MOST_DAYS;
      same = one.to().equals(other.to()) && Math.abs(apart) <= most;
    }
    return same;
  }

  private static String told(PlantPlan plan) {
    return plan.plant().id()
        + " "
        + plan.verdict()
        + plan.moves().stream().map(m -> m.date() + " " + m.to().name()).toList();
  }

  private static List<PlantPlan> plans(SomeGarden garden, double latitudeDeg, int laterByDays) {
    Inventory rows = garden.inventory();
    Inventory inventory =
        new Inventory(
            rows.plants().stream().map(p -> later(p, laterByDays)).toList(),
            rows.places(),
            anyDay(rows.settings(), latitudeDeg),
            rows.sheets());
    TemperatureSeries file = garden.file();
    TemperatureSeries moved =
        new TemperatureSeries(
            file.station(),
            later(file.days(), laterByDays),
            later(file.hours(), laterByDays),
            later(file.snowCm(), laterByDays));
    return SeasonPlanner.plan(inventory, moved, OptionalInt.empty()).orElseThrow().plants();
  }

  private static <T> NavigableMap<LocalDate, T> later(NavigableMap<LocalDate, T> map, int days) {
    TreeMap<LocalDate, T> moved = new TreeMap<>();
    map.forEach((day, value) -> moved.put(day.plusDays(days), value));
    return moved;
  }

  private static Plant later(Plant p, int days) {
    return new Plant(
        p.id(),
        p.label(),
        p.species(),
        p.speciesAsWritten(),
        p.cultivar(),
        p.home(),
        p.container(),
        later(p.lastRootWork(), days),
        p.vigour(),
        p.priority(),
        p.value(),
        p.ownRootLimitC(),
        p.stayIn(),
        later(p.notBefore(), days),
        later(p.notAfter(), days),
        p.count(),
        p.heightCm(),
        p.spreadCm(),
        p.frostProofPot(),
        later(p.plannedRootWork(), days),
        p.rootstock(),
        p.rootLimitTrust(),
        p.notes());
  }

  private static Optional<LocalDate> later(Optional<LocalDate> day, int days) {
    return day.map(d -> d.plusDays(days));
  }

  private static Settings anyDay(Settings s, double latitudeDeg) {
    return new Settings(
        s.site(),
        s.siteColderByK(),
        latitudeDeg,
        s.longitudeDeg(),
        s.zone(),
        s.units(),
        s.safetyMarginK(),
        s.acceptedRiskOfTen(),
        EnumSet.allOf(DayOfWeek.class),
        List.of(),
        s.plantsPerMovingDay(),
        s.minutesPerMovingDay(),
        s.paper(),
        s.firstDayOfWeek(),
        s.language());
  }
}
