package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.review.Survival.By;
import org.hibernacle.review.Survival.PotSize;
import org.hibernacle.review.Survival.RootWork;

/** Counts who came through, by what plants have in common. */
final class Survivals {
  private static final double SMALL_BELOW_L = 2;
  private static final double LARGE_ABOVE_L = 10;

  private Survivals() {}

  static List<Survival> of(List<PlantReview> all, Season season) {
    List<PlantReview> plants = all.stream().filter(p -> p.outcome() != Outcome.GONE).toList();
    LocalDate midwinter = season.midwinter();
    List<Survival> found = new ArrayList<>();
    found.addAll(by(By.ALL, plants, p -> ""));
    found.addAll(by(By.SPECIES, plants, p -> p.plant().species().taxon()));
    found.addAll(by(By.GROUP, plants, p -> p.plant().species().group().name()));
    found.addAll(by(By.PLACE, plants, p -> p.winterPlace(midwinter)));
    found.addAll(by(By.POT_SIZE, plants, p -> potSize(p.plant()).name()));
    found.addAll(by(By.ROOT_WORK, plants, p -> rootWork(p.plant(), season).name()));
    return found;
  }

  static PotSize potSize(Plant plant) {
    double litres = plant.container().volumeL();
    if (litres < SMALL_BELOW_L) {
      return PotSize.SMALL;
    }
    return litres > LARGE_ABOVE_L ? PotSize.LARGE : PotSize.MIDDLE;
  }

  static RootWork rootWork(Plant plant, Season season) {
    LocalDate from = season.start().minusMonths(6);
    boolean disturbed =
        plant
            .lastRootWork()
            .or(plant::plannedRootWork)
            .filter(day -> day.isAfter(from) && day.isBefore(season.endExclusive()))
            .isPresent();
    return disturbed ? RootWork.DISTURBED : RootWork.UNDISTURBED;
  }

  private static List<Survival> by(
      By by, List<PlantReview> plants, Function<PlantReview, String> key) {
    Map<String, List<PlantReview>> groups = new TreeMap<>();
    plants.forEach(p -> groups.computeIfAbsent(key.apply(p), k -> new ArrayList<>()).add(p));
    return groups.entrySet().stream().map(e -> survival(by, e.getKey(), e.getValue())).toList();
  }

  private static Survival survival(By by, String key, List<PlantReview> plants) {
    List<PlantReview> dead = plants.stream().filter(p -> p.outcome() == Outcome.DEAD).toList();
    int harmed = (int) plants.stream().filter(p -> p.outcome().harmed()).count();
    OptionalDouble value =
        dead.stream().flatMapToDouble(p -> p.plant().value().stream()).reduce(Double::sum);
    return new Survival(
        by,
        key,
        Proportion.of(plants.size() - dead.size(), plants.size()),
        Proportion.of(plants.size() - harmed, plants.size()),
        plants.stream().mapToInt(p -> p.plant().count()).sum(),
        dead.stream().mapToInt(p -> p.plant().count()).sum(),
        (int) plants.stream().filter(PlantReview::outcomeAssumed).count(),
        value);
  }
}
