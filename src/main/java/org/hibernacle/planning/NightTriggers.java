package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hibernacle.climate.Winter;

/**
 * Below which forecast a plant must not be left as it stands: for each stay, the warmest night at
 * the station that broke a rule there in any winter on file, or, where none did, the coldest night
 * that it came through, since nothing is known of colder ones. A stay in high summer, when no night
 * is judged, goes by its own nights; one of which no night is on file by the warmest night of all,
 * so that any cold is taken seriously.
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
    List<Double> triggers = new ArrayList<>();
    for (int i = 0; i + 1 < bounds.size(); i++) {
      triggers.add(trigger(found.lived(), bounds.get(i), bounds.get(i + 1)));
    }
    return triggers;
  }

  private double trigger(List<Lived> lives, int from, int to) {
    double coldestKept = Double.POSITIVE_INFINITY;
    double coldest = Double.POSITIVE_INFINITY;
    double warmest = Double.NEGATIVE_INFINITY;
    double warmestBroken = Double.NEGATIVE_INFINITY;
    for (Lived lived : lives) {
      boolean[] broken = new boolean[lived.path().length];
      lived.violations().stream()
          .filter(b -> b.violation().rule().keepsMargin())
          .forEach(b -> broken[b.night()] = true);
      Winter winter = winters.winter(lived.winter());
      for (int n = 0; n < winter.nights(); n++) {
        int night = winters.planNight(lived.winter(), n);
        double stationC = winter.stationMinC(n);
        warmest = Math.max(warmest, stationC);
        if (night < from || night >= to) {
          continue;
        }
        coldest = Math.min(coldest, stationC);
        if (broken[n]) {
          warmestBroken = Math.max(warmestBroken, stationC);
        } else if (n >= Rules.firstJudged(winter) && n < Rules.endJudged(winter)) {
          coldestKept = Math.min(coldestKept, stationC);
        }
      }
    }
    if (Double.isFinite(warmestBroken)) {
      return warmestBroken;
    }
    return DoubleStream.of(coldestKept, coldest, warmest)
        .filter(Double::isFinite)
        .findFirst()
        .orElseThrow();
  }
}
