package org.hibernacle.oracle;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.Stay;
import org.hibernacle.review.Cause;

/**
 * What truly harms plants in a winter whose air, and whose plants' limits, are not quite those that
 * the program believes in. The first limit crossed decides.
 */
public final class TrueHarm {
  private final Season season;
  private final Inventory inventory;
  private final Map<Double, Oracle> byShift = new HashMap<>();
  private final Map<Lived, List<Night>> lives = new ConcurrentHashMap<>();
  private final Map<String, double[]> homeWeeksC = new ConcurrentHashMap<>();

  /**
   * A winter with its truths.
   *
   * @param shiftsK by how much the air at the plants may be warmer than the file has it, K
   */
  public TrueHarm(
      Inventory inventory, TemperatureSeries file, Season season, List<Double> shiftsK) {
    this.inventory = inventory;
    this.season = season;
    for (double shiftK : shiftsK) {
      TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
      file.days()
          .forEach(
              (day, d) -> days.put(day, new DailyExtremes(d.minC() + shiftK, d.maxC() + shiftK)));
      TemperatureSeries shifted = new TemperatureSeries(file.station(), days, file.hours());
      byShift.put(shiftK, new Oracle(inventory, shifted, season, List.of(season)));
    }
  }

  /**
   * How one plant differs from what the program believes.
   *
   * @param airShiftK one of those given
   * @param limitShiftK of all its limits, K; above zero it is more tender
   * @param patience what it bears of drying, warmth and darkness, 1 for what is believed
   */
  public record Nature(double airShiftK, double limitShiftK, double patience) {}

  private record Lived(String id, List<Stay> stays, double airShiftK) {}

  /**
   * Harm.
   *
   * @param cause of it
   * @param day on whose night it came
   */
  public record Harm(Cause cause, LocalDate day) {}

  /** The first harm, if any. */
  public Optional<Harm> of(Plant plant, List<Stay> stays, Nature nature) {
    Oracle oracle = byShift.get(nature.airShiftK());
    if (oracle == null) {
      throw new IllegalArgumentException("no air shifted by " + nature.airShiftK());
    }
    List<Night> nights =
        lives.computeIfAbsent(
            new Lived(plant.id(), stays, nature.airShiftK()),
            key -> oracle.nights(plant, stays, season));
    double[] homeWeeksC = homeWeeks(oracle, plant, nature.airShiftK());
    Species species = plant.species();
    Limit roots = Limit.ofRoots(plant, season);
    Limit shoots = Limit.ofShoots(species);
    double dryness = 0;
    double warmKNights = 0;
    double darkNights = 0;
    for (int i = 0; i < nights.size(); i++) {
      Night night = nights.get(i);
      if (!HardRules.judges(season, night.day())) {
        continue;
      }
      dryness = night.coreIceShare() < 0.99 ? 0 : dryness + dryingOf(night, species);
      warmKNights += hardy(species) ? tooWarmK(night, homeWeeksC[i]) : 0;
      darkNights += night.budsOpen() && dark(night.place()) ? 1 : 0;
      double shiftK = nature.limitShiftK();
      Optional<Cause> cause = Optional.empty();
      if (night.lowestEdgeC() < night.rootLimitC() + shiftK) {
        cause =
            Optional.of(
                frost(
                    night.lowestEdgeC(),
                    species,
                    roots.hardness(night.rootLimitC()),
                    Cause.FROZEN_ROOTS));
      } else if (!night.budsOpen() && night.lowestAirC() < night.shootLimitC() + shiftK) {
        cause =
            Optional.of(
                frost(
                    night.lowestAirC(),
                    species,
                    shoots.hardness(night.shootLimitC()),
                    Cause.FROZEN_SHOOTS));
      } else if (night.budsOpen() && night.lowestAirC() < species.newGrowthLimitC() + shiftK) {
        cause = Optional.of(Cause.FROST_ON_WOKEN_GROWTH);
      } else if (dryness > 1.5 * nature.patience()) {
        cause = Optional.of(Cause.DRIED_WHILE_FROZEN);
      } else if (warmKNights / 140 + darkNights / 21 > nature.patience()) {
        cause = Optional.of(Cause.WOKE_IN_STORE);
      } else if (!species.group().hardens()
          && weekUnder(nights, i, species.minStoreC() - 2 + shiftK) > 2) {
        cause = Optional.of(Cause.CHILLED);
      }
      if (cause.isPresent()) {
        return Optional.of(new Harm(cause.get(), night.day()));
      }
    }
    return Optional.empty();
  }

  /** Weeks' mean air at home, whatever stands there. */
  private double[] homeWeeks(Oracle oracle, Plant plant, double airShiftK) {
    Place home = inventory.place(plant.home());
    return homeWeeksC.computeIfAbsent(
        home.name() + airShiftK,
        key ->
            oracle
                .nights(
                    plant, List.of(new Stay(home, season.start(), season.endExclusive())), season)
                .stream()
                .mapToDouble(Night::weekMeanC)
                .toArray());
  }

  private static Cause frost(double foundC, Species species, double hardness, Cause whenHard) {
    if (foundC > 0 && !species.group().hardens()) {
      return Cause.CHILLED;
    }
    return hardness >= 0.8 ? whenHard : Cause.CAUGHT_UNHARDENED;
  }

  private static boolean dark(Place place) {
    return place.roofed() && place.light() == Light.DARK;
  }

  private static boolean hardy(Species species) {
    return switch (species.group()) {
      case HARDY_CONIFER, HARDY_DECIDUOUS, HARDY_EVERGREEN -> true;
      case TENDER_ROOTED_HARDY, MEDITERRANEAN, SUBTROPICAL, TROPICAL -> false;
    };
  }

  /** Warmer under a roof than home is, and than 5 °C, from October until rest is over. */
  private double tooWarmK(Night night, double homeWeekC) {
    boolean counts =
        night.place().roofed() && night.atRest() && !night.day().isBefore(season.coreStart());
    return counts ? Math.max(0, night.weekMeanC() - Math.max(5, homeWeekC)) : 0;
  }

  private static double weekUnder(List<Night> nights, int last, double lowestC) {
    double sum = 0;
    for (Night night : nights.subList(Math.max(0, last - 6), last + 1)) {
      sum += Math.max(0, lowestC - night.lowestAirC());
    }
    return sum;
  }

  /** A frozen day's part of the index of docs/models/drying.md; these winters have no snow. */
  private static double dryingOf(Night night, Species species) {
    double leaves =
        species.foliage() == Foliage.EVERGREEN
            ? 1
            : species.foliage() == Foliage.SEMI_EVERGREEN ? 0.7 : 0.35;
    double habit =
        switch (species.dryingRisk()) {
          case LOW -> 0.9;
          case MEDIUM -> 1;
          case HIGH -> 1.15;
        };
    double sun =
        switch (night.place().sun()) {
          case NONE -> 0.7;
          case PART -> 0.85;
          case FULL -> 1;
        };
    double wind = night.place().wind() == Place.Wind.OPEN ? 1 : 0.7;
    if (night.place().roofed()) {
      wind = 0.5;
    }
    double air = Math.min(2, vapour(night.meanAirC()) / vapour(-4));
    return leaves * habit * sun * wind * air / 25;
  }

  private static double vapour(double airC) {
    return Math.exp(22.46 * airC / (272.62 + airC));
  }
}
