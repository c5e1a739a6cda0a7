package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/**
 * Plants that nothing protects are not carried for nothing: what is spared is counted here from the
 * lives alone, by the words of docs/planning.md.
 */
class PlainerTest {
  private static final Pots POOR = Pots.of(CityGarden.poorInventory(City.NEW_YORK));

  private static final Wishes WISHES = POOR.wishes();

  /** What a plan misses on its worst night, in how many winters, and in all; K. */
  private record Missed(double worstK, int limitWinters, double allK) {
    static Missed along(PlantPlanner.Found found) {
      double worst = 0;
      double all = 0;
      int winters = 0;
      for (Lived lived : found.lived()) {
        boolean limit = false;
        for (Lived.Broken b : lived.violations()) {
          int weight = b.violation().rule() == Rule.TOO_WARM_AT_REST ? 3 : 1;
          double missedK =
              weight
                  * (found.excused().contains(lived.winter())
                      ? b.violation().belowLimitK()
                      : b.violation().deficitK());
          worst = Math.max(worst, missedK);
          all += missedK;
          limit |= b.violation().belowLimitK() > 0.0001;
        }
        winters += limit ? 1 : 0;
      }
      return new Missed(worst, winters, all);
    }
  }

  @Test
  void fewerMovesAreTakenOnlyWhereTheyHardlyHarm() {
    int spared = 0;
    for (int i = 0; i < WISHES.count(); i++) {
      PlantPlanner planner = WISHES.planners().get(i);
      PlantPlanner.Found found = WISHES.founds().get(i);
      PlantPlanner.Found plainer = Plainer.plainer(planner, found, Openings.ALL);
      int before = found.path().moveNights().size();
      int after = plainer.path().moveNights().size();
      String id = planner.plant().id();
      if (found.cost().brokenTicks() == 0) {
        assertSame(found, plainer, id);
        continue;
      }
      assertTrue(after <= before, id);
      assertTrue(visited(found).containsAll(visited(plainer)), id + " goes to no new place");
      if (after < before) {
        spared++;
        Missed was = Missed.along(found);
        Missed is = Missed.along(plainer);
        // Ticks are tenths of a kelvin, rounded up night by night.
        double ticksK = 0.1 * found.lived().size() * 300;
        assertTrue(is.worstK() < was.worstK() + 1 + 0.1, id + was + is);
        assertTrue(is.limitWinters() <= was.limitWinters(), id + was + is);
        assertTrue(is.allK() <= 1.5 * was.allK() + ticksK, id + was + is);
      }
    }
    assertTrue(spared >= 1, "plants that are spared a move: " + spared);
  }

  /** What is still carried would lose a kelvin, a winter, or half as much again without a stay. */
  @Test
  void noFurtherStayCouldBeLeftOut() {
    for (int i = 0; i < WISHES.count(); i++) {
      PlantPlanner planner = WISHES.planners().get(i);
      PlantPlanner.Found found = WISHES.founds().get(i);
      if (found.cost().brokenTicks() == 0) {
        continue;
      }
      PlantPlanner.Found plainer = Plainer.plainer(planner, found, Openings.ALL);
      Missed was = Missed.along(found);
      for (Path other : withoutAStay(plainer.path())) {
        boolean allowed =
            other.moveNights().stream()
                .allMatch(
                    n -> planner.mayMove(n, other.placeByNight()[n - 1], other.placeByNight()[n]));
        if (!allowed || other.moveNights().size() >= plainer.path().moveNights().size()) {
          continue;
        }
        Missed is = Missed.along(planner.found(other, planner.live(other), found.excused()));
        boolean harms =
            is.worstK() > was.worstK() + 0.9
                || is.limitWinters() > was.limitWinters()
                || is.allK() > 1.4 * was.allK();
        assertTrue(harms, planner.plant().id() + " " + other.moveNights() + was + is);
      }
    }
  }

  private static List<Path> withoutAStay(Path path) {
    List<Path> all = new ArrayList<>();
    List<Integer> moves = path.moveNights();
    for (int i = 0; i + 1 < moves.size(); i++) {
      int[] longer = path.placeByNight().clone();
      int[] sooner = path.placeByNight().clone();
      for (int n = moves.get(i); n < moves.get(i + 1); n++) {
        longer[n] = path.placeByNight()[moves.get(i) - 1];
        sooner[n] = path.placeByNight()[moves.get(i + 1)];
      }
      all.add(new Path(longer));
      all.add(new Path(sooner));
    }
    return all;
  }

  private static Set<Integer> visited(PlantPlanner.Found found) {
    Set<Integer> places = new HashSet<>();
    for (int place : found.path().placeByNight()) {
      places.add(place);
    }
    return places;
  }

  @Test
  void pathsAreEqualByTheirNights() {
    Path one = Path.standing(5, 2);
    assertEquals(one, Path.standing(5, 2));
    assertEquals(one.hashCode(), Path.standing(5, 2).hashCode());
    assertTrue(!one.equals(one.with(2, 3, 1)));
  }
}
