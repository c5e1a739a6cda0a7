package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/**
 * Nights back in spring against trying every forecast to carry by: the one that is chosen asks for
 * the fewest nights that keep the plant safe. New York with two nights of hard frost in late April.
 */
class ShuttlesTest {
  private static final Set<LocalDate> LATE_FROST =
      Set.of(LocalDate.of(2014, 4, 28), LocalDate.of(2014, 4, 29));

  private static final Pots GARDEN =
      Pots.of(
          CityGarden.inventory(City.NEW_YORK),
          CityGarden.withMinima(
              CityGarden.weather(City.NEW_YORK),
              day -> LATE_FROST.contains(day.getKey()) ? -9 : day.getValue().minC()));

  @Test
  void noOtherForecastWouldAskForFewerNights() {
    int plants = 0;
    int nightsBack = 0;
    Wishes wishes = GARDEN.wishes();
    for (int i = 0; i < wishes.count(); i++) {
      PlantPlanner.Found found = wishes.founds().get(i);
      if (found.shuttle().isEmpty()) {
        continue;
      }
      plants++;
      PlantPlanner planner = wishes.planners().get(i);
      Shuttle chosen = found.shuttle().get();
      int fewest = Integer.MAX_VALUE;
      for (double triggerC : airAtHome(planner, found, chosen)) {
        Shuttle other = with(chosen, triggerC);
        long ticks = 0;
        int nights = 0;
        for (Lived lived : planner.live(found.path(), Optional.of(other))) {
          ticks += KnownBreaks.ticks(java.util.List.of(lived), found.excused());
          nights += nightsAway(lived, found.path(), planner.home());
        }
        fewest = ticks == 0 ? Math.min(fewest, nights) : fewest;
      }
      assertEquals(fewest, chosen.nights().size(), planner.plant().id());
      nightsBack += fewest;
    }
    assertTrue(plants >= 2 && nightsBack >= 4, plants + " plants, " + nightsBack + " nights");
  }

  /** It is home on the last moving day before its buds break, not sooner. */
  @Test
  void itComesHomeOnTheLastMovingDayBeforeWaking() {
    Wishes wishes = GARDEN.wishes();
    for (int i = 0; i < wishes.count(); i++) {
      if (wishes.founds().get(i).shuttle().isPresent()) {
        Shuttle shuttle = wishes.founds().get(i).shuttle().get();
        LocalDate next = shuttle.from().plusDays(1);
        while (!next.isAfter(shuttle.waking())) {
          assertTrue(!GARDEN.inventory().settings().isMovingDay(next), next + " would do");
          next = next.plusDays(1);
        }
      }
    }
  }

  /** Just above the lowest air of every night at home in the time of the shuttle, coldest first. */
  private static TreeSet<Double> airAtHome(
      PlantPlanner planner, PlantPlanner.Found found, Shuttle shuttle) {
    TreeSet<Double> triggers = new TreeSet<>();
    int from = GARDEN.winters().season().index(shuttle.from());
    int to = GARDEN.winters().season().index(shuttle.to());
    for (Lived lived : planner.live(found.path())) {
      for (int n = 0; n < lived.path().length; n++) {
        int night = GARDEN.winters().planNight(lived.winter(), n);
        if (night >= from && night <= to && lived.path()[n] == planner.home()) {
          triggers.add(lived.trace().airMinC()[n] + 1e-6);
        }
      }
    }
    return triggers;
  }

  private static Shuttle with(Shuttle s, double triggerC) {
    return new Shuttle(s.refuge(), s.from(), s.to(), s.waking(), s.nights(), triggerC);
  }

  private static int nightsAway(Lived lived, Path path, int home) {
    int[] planned = GARDEN.winters().inWinter(lived.winter(), path.placeByNight());
    return (int)
        IntStream.range(0, planned.length)
            .filter(n -> planned[n] == home && lived.path()[n] != home)
            .count();
  }
}
