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
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Supposed;
import org.hibernacle.thermal.BallGuess;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The same weather half a year earlier, at the mirrored latitude, gives the same plan. Half a year
 * is 184 days, from 15 January to the 15 July before: midwinter, the first day home and the day on
 * which covers go on then fall together, other dates of the calendar lie up to three days apart, as
 * do days of equal length. So moves may lie two days apart, in summer, where the season begins and
 * ends, three. Where they lie further apart a frost decides by a hair, and the plan of either
 * hemisphere has to hold in the other within 0.3 K; a plant that is given up is given up in both,
 * but then goes where tenths of a kelvin send it. Every day is a moving day, or weekdays would
 * differ.
 */
class MirroredYearTest {
  private static final int HALF_A_YEAR = 184;
  private static final int MOST_DAYS = 2;
  private static final int MOST_DAYS_IN_SUMMER = 3;
  private static final double HAIR_K = 0.3;

  /** In the north; the season, and the nights that are judged, begin and end then. */
  private static final Set<Month> SUMMER =
      EnumSet.of(Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER);

  static LongStream seeds() {
    return Draw.seeds(7_200, 5);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void southernWintersArePlannedLikeNorthernOnes(long seed) {
    SomeGarden drawn = SomeGarden.of(seed);
    int northern = drawn.inventory().settings().southern() ? HALF_A_YEAR : 0;
    double latitudeDeg = Math.abs(drawn.inventory().settings().latitudeDeg());
    Hemisphere north = Hemisphere.of(drawn, latitudeDeg, northern);
    Hemisphere south = Hemisphere.of(drawn, -latitudeDeg, northern - HALF_A_YEAR);
    List<String> different = new ArrayList<>();
    for (int i = 0; i < north.plan().plants().size(); i++) {
      PlantPlan one = north.plan().plants().get(i);
      PlantPlan other = south.plan().plants().get(i);
      boolean asGood =
          sameDays(one, other)
              || (givenUp(one) && givenUp(other))
              || (south.missedK(one, -HALF_A_YEAR) <= HAIR_K
                  && north.missedK(other, HALF_A_YEAR) <= HAIR_K);
      if (!asGood) {
        different.add(
            "%s against %s, missed by %.2f and %.2f K"
                .formatted(
                    told(one),
                    told(other),
                    south.missedK(one, -HALF_A_YEAR),
                    north.missedK(other, HALF_A_YEAR)));
      }
    }
    assertEquals(List.of(), different, () -> "-Dproof.seed=" + seed + " -Dproof.cases=1");
  }

  private static boolean givenUp(PlantPlan plan) {
    return plan.verdict() == PlantPlan.Verdict.UNPROTECTED;
  }

  private static boolean sameDays(PlantPlan north, PlantPlan south) {
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

  /** The garden on one side of the equator. */
  private record Hemisphere(SeasonPlan plan, TemperatureSeries file) {
    static Hemisphere of(SomeGarden garden, double latitudeDeg, int laterByDays) {
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
      return new Hemisphere(
          SeasonPlanner.planOnly(inventory, moved, OptionalInt.empty()).orElseThrow(), moved);
    }

    /**
     * By how much the other side's plan would miss a rule here, K. Which nights it goes back in
     * spring is for each side to say.
     */
    double missedK(PlantPlan others, int laterByDays) {
      if (others.shuttle().isPresent()) {
        return 0;
      }
      List<Stay> stays =
          others.stays().stream()
              .map(
                  s ->
                      new Stay(
                          s.place(),
                          s.fromInclusive().plusDays(laterByDays),
                          s.toExclusive().plusDays(laterByDays)))
              .toList();
      return new Supposed(plan.inventory(), file, BallGuess.USUAL)
          .mostMissedK(later(others.plant(), laterByDays), stays, plan.caution().marginK());
    }
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
