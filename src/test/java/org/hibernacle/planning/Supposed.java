package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.BallGuess;

/**
 * A garden as somebody supposes it to be, for plants that are planned one by one, as if each were
 * alone: other air, other guesses about root balls. What is planned in one such garden can be lived
 * through in another.
 */
public final class Supposed {
  private final Settings settings;
  private final WintersOnFile winters;

  /**
   * A garden.
   *
   * @param inventory its places and settings
   * @param file with at least one winter that counts
   * @param guess about root balls
   */
  public Supposed(Inventory inventory, TemperatureSeries file, BallGuess guess) {
    settings = inventory.settings();
    WinterSelection selection = WinterSelection.of(file, settings.southern());
    HourlyAir air = new HourlyAir(selection.series(), settings.latitudeDeg());
    List<Winter> lived =
        selection.winters().parallelStream()
            .map(UsableWinter::season)
            .map(season -> Winter.of(season, air, settings.siteColderByK()))
            .toList();
    winters =
        new WintersOnFile(
            lived.get(lived.size() - 1).season().next(),
            lived,
            inventory.places(),
            settings.latitudeDeg(),
            Map.of(),
            guess);
  }

  /**
   * What a plant does.
   *
   * @param stays over the season
   * @param held whether no rule is broken
   */
  public record Planned(List<Stay> stays, boolean held) {
    public Planned {
      stays = List.copyOf(stays);
    }

    /** Day on which it first goes to the ground. */
    public Optional<LocalDate> down() {
      return first(place -> place.kind() == PlaceKind.GROUND);
    }

    /** Day on which it first goes under a roof. */
    public Optional<LocalDate> in() {
      return first(Place::roofed);
    }

    /** Day on which it is home for good. */
    public Optional<LocalDate> home() {
      return stays.size() == 1
          ? Optional.empty()
          : Optional.of(stays.get(stays.size() - 1).fromInclusive());
    }

    private Optional<LocalDate> first(Predicate<Place> which) {
      return stays.stream()
          .skip(1)
          .filter(s -> which.test(s.place()))
          .map(Stay::fromInclusive)
          .findFirst();
    }
  }

  /** The plan for one plant, with that safety margin. */
  public Planned plan(Plant plant, double safetyMarginK) {
    Caution caution = new Caution(safetyMarginK, winters.count(), 0);
    PlantPlanner.Found found = PlantPlanner.of(plant, settings, caution, winters).find();
    return new Planned(
        found.path().stays(winters.season(), winters.places()), found.cost().brokenTicks() == 0);
  }

  /** Where it comes closest to its root limit along those stays. */
  public PlantPlan.Tightest tightest(Plant plant, List<Stay> stays) {
    List<Lived> lives = lives(plant, stays, 0);
    return Margins.tightest(winters, lives);
  }

  /**
   * By how much those stays miss any rule at most, with that safety margin, K; growth woken under a
   * roof is left out, since it hangs on a single date.
   */
  public double mostMissedK(Plant plant, List<Stay> stays, double safetyMarginK) {
    return lives(plant, stays, safetyMarginK).stream()
        .flatMap(lived -> lived.violations().stream())
        .map(Lived.Broken::violation)
        .filter(violation -> violation.rule() != Rule.WOKEN_GROWTH)
        .mapToDouble(Violation::deficitK)
        .max()
        .orElse(0);
  }

  /** Days before the first stay belong to it. */
  private List<Lived> lives(Plant plant, List<Stay> stays, double safetyMarginK) {
    int[] path = new int[winters.season().days()];
    for (Stay stay : stays) {
      int from = stay.equals(stays.get(0)) ? 0 : winters.season().index(stay.fromInclusive());
      Arrays.fill(path, Math.max(0, from), path.length, winters.places().indexOf(stay.place()));
    }
    return new Trial(plant, winters, safetyMarginK).live(new Path(path));
  }
}
