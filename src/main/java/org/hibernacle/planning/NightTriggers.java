package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.climate.Winter;

/**
 * Below which forecast a plant must not be left as it stands: for each stay, the warmest night at
 * the station that broke a rule there in any winter on file, or, where none did, the coldest night
 * that it came through, since nothing is known of colder ones.
 */
final class NightTriggers {
  private final WintersOnFile winters;

  NightTriggers(WintersOnFile winters) {
    this.winters = winters;
  }

  /** One temperature a stay, °C at the station. */
  List<Double> of(PlantPlanner.Found found) {
    List<Integer> bounds = new ArrayList<>(found.path().moveNights());
    bounds.add(0, 0);
    bounds.add(winters.season().days());
    int tonight = winters.outlook().tonight();
    List<Double> triggers = new ArrayList<>();
    for (int i = 0; i + 1 < bounds.size(); i++) {
      int end = bounds.get(i + 1);
      // A stay that is over, and one whose nights are not judged, tell what they came through.
      double triggerC = trigger(found.lived(), Math.max(tonight, bounds.get(i)), end, true);
      triggers.add(
          Double.isInfinite(triggerC)
              ? trigger(found.lived(), bounds.get(i), end, false)
              : triggerC);
    }
    return triggers;
  }

  private double trigger(List<Lived> lives, int from, int to, boolean judgedOnly) {
    double coldestKept = Double.POSITIVE_INFINITY;
    double warmestBroken = Double.NEGATIVE_INFINITY;
    for (Lived lived : lives) {
      boolean[] broken = new boolean[lived.path().length];
      lived.violations().stream()
          .filter(b -> b.violation().rule().keepsMargin())
          .forEach(b -> broken[b.night()] = true);
      Winter winter = winters.winter(lived.winter());
      for (int n = judgedOnly ? Rules.firstJudged(winter) : 0; n < Rules.endJudged(winter); n++) {
        int night = winters.planNight(lived.winter(), n);
        if (night < from || night >= to) {
          continue;
        }
        double stationC = winter.stationMinC(n);
        if (broken[n]) {
          warmestBroken = Math.max(warmestBroken, stationC);
        } else {
          coldestKept = Math.min(coldestKept, stationC);
        }
      }
    }
    return warmestBroken > Double.NEGATIVE_INFINITY ? warmestBroken : coldestKept;
  }
}
