package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hibernacle.model.Inventory;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/** Heavy pots of a garden in New York: days with a helper before and after they are gathered. */
class HelperDaysTest {
  private final Inventory heavy = CityGarden.heavyInventory(City.NEW_YORK);
  private final Pots pots = Pots.of(heavy);
  private final Wishes wishes = pots.wishes();
  private final Together together = new Together(wishes);
  private final List<Together.Settled> settled = together.settle();

  private Set<LocalDate> days(boolean after) {
    Set<LocalDate> days = new TreeSet<>();
    for (int i = 0; i < settled.size(); i++) {
      Path path = after ? settled.get(i).found().path() : wishes.founds().get(i).path();
      boolean shuttled = wishes.founds().get(i).shuttle().isPresent();
      if (Lifting.wantsTwo(heavy.plants().get(i).container()) && !shuttled) {
        path.moveNights().forEach(n -> days.add(pots.winters().season().day(n)));
      }
    }
    return days;
  }

  @Test
  void aHelperComesOnFewerDaysAndOnNoNewOne() {
    assertTrue(together.gathered().size() >= 2, together.gathered()::toString);
    assertTrue(days(true).size() < days(false).size(), days(true) + " of " + days(false));
    assertTrue(days(false).containsAll(days(true)), days(true) + " of " + days(false));
  }

  /** Away up to a week sooner, back up to a week later, and never worse for it. */
  @Test
  void datesShiftByAWeekAtMostAndToTheSafeSide() {
    for (int i = 0; i < settled.size(); i++) {
      String id = heavy.plants().get(i).id();
      PlantPlanner.Found wish = wishes.founds().get(i);
      PlantPlanner.Found found = settled.get(i).found();
      boolean gathered = together.gathered().contains(id);
      assertEquals(!gathered, wish.path().equals(found.path()), id);
      assertTrue(found.cost().brokenTicks() <= wish.cost().brokenTicks(), id);
      List<Integer> before = wish.path().moveNights();
      List<Integer> after = found.path().moveNights();
      assertEquals(before.size(), after.size(), id);
      for (int m = 0; m < before.size(); m++) {
        int shift = after.get(m) - before.get(m);
        boolean last = m + 1 == before.size();
        assertTrue(last ? shift >= 0 && shift <= 7 : Math.abs(shift) <= 7, id + " " + shift);
        assertTrue(m > 0 || shift <= 0, id + " leaves later");
        LocalDate day = pots.winters().season().day(after.get(m));
        assertTrue(heavy.settings().isMovingDay(day), id + " " + day);
      }
    }
  }
}
