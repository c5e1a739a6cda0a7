package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;

/**
 * Judges the planner by winters that it has not seen: plans from all winters on file but one, and
 * lives the plan through that one.
 */
final class LeaveOneOut {
  private final Inventory inventory;
  private final WintersOnFile winters;
  private final Pace pace;

  LeaveOneOut(Inventory inventory, WintersOnFile winters, Pace pace) {
    this.inventory = inventory;
    this.winters = winters;
    this.pace = pace;
  }

  /** One entry a winter, oldest first; none if there is only one winter. */
  List<WinterJudged> judge() {
    List<WinterJudged> judged = new ArrayList<>();
    for (int w = 0; w < winters.count() && winters.count() > 1; w++) {
      pace.reached(Pace.Part.JUDGED, w, winters.count());
      judged.add(judge(w));
    }
    return judged;
  }

  private WinterJudged judge(int w) {
    WintersOnFile others = winters.without(w);
    Caution caution = Caution.of(inventory.settings(), others.count());
    int pots = 0;
    int marginBroken = 0;
    int limitBroken = 0;
    int nightsAway = 0;
    int needless = 0;
    for (Together.Settled settled : new Together(inventory, caution, others).settle()) {
      Plant plant = settled.planner().plant();
      int home = settled.planner().home();
      Trial trial = new Trial(plant, winters, inventory.settings().safetyMarginK());
      int[] path = winters.inWinter(w, settled.found().path().placeByNight());
      Lived lived = trial.live(w, path, home, settled.found().shuttle());
      List<Lived.Broken> broken = lived.violations();
      pots += plant.count();
      marginBroken += broken.isEmpty() ? 0 : plant.count();
      boolean limit = broken.stream().anyMatch(b -> Cost.ticksOfLimit(b.violation()) > 0);
      limitBroken += limit ? plant.count() : 0;
      IntSummaryStatistics unsafe =
          trial.atHome(w, home).violations().stream()
              .mapToInt(Lived.Broken::night)
              .summaryStatistics();
      for (int n = 0; n < path.length; n++) {
        if (lived.path()[n] != home) {
          nightsAway += plant.count();
          needless += n < unsafe.getMin() || n > unsafe.getMax() ? plant.count() : 0;
        }
      }
    }
    return new WinterJudged(
        winters.winter(w).season(), pots, marginBroken, limitBroken, nightsAway, needless);
  }
}
