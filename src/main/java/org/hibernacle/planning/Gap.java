package org.hibernacle.planning;

import java.util.List;

/**
 * How much dearer a plan is than if nobody were in anybody's way. That is a bound: no way of
 * sharing room and hands can do better than every plant as if it were alone, so the plan is at most
 * so far from the best one.
 *
 * @param lost rows that are lost and would not be alone
 * @param moves more; may be negative if rows are lost
 * @param nights away from home more, all rows together; may be negative
 * @param rows that do other than they would alone
 */
record Gap(int lost, int moves, int nights, int rows) {
  /** Compares wishes with what came of them. */
  static Gap between(List<PlantPlanner.Found> wishes, List<Together.Settled> settled) {
    int lost = 0;
    int moves = 0;
    int nights = 0;
    int rows = 0;
    for (int i = 0; i < settled.size(); i++) {
      PlantPlanner.Found wish = wishes.get(i);
      PlantPlanner.Found found = settled.get(i).found();
      if (settled.get(i).displaced().isEmpty()) {
        continue;
      }
      rows++;
      boolean lostHere = found.cost().brokenTicks() > 0 && wish.cost().brokenTicks() == 0;
      lost += lostHere ? 1 : 0;
      int home = settled.get(i).planner().home();
      moves += moves(found) - moves(wish);
      nights += nightsAway(found.path(), home) - nightsAway(wish.path(), home);
    }
    return new Gap(lost, moves, nights, rows);
  }

  /** Nights back in spring count as moves. */
  private static int moves(PlantPlanner.Found found) {
    return found.path().moveNights().size() + found.shuttle().map(Shuttle::mostInAWinter).orElse(0);
  }

  private static int nightsAway(Path path, int home) {
    int nights = 0;
    for (int place : path.placeByNight()) {
      nights += place == home ? 0 : 1;
    }
    return nights;
  }
}
