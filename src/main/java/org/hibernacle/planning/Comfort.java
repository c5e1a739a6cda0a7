package org.hibernacle.planning;

import org.hibernacle.model.Season;
import org.hibernacle.model.Species;

/** What nights away from home cost where no rule is broken. */
final class Comfort {
  private static final int MOST_STORAGE_DEGREES_PER_NIGHT = 10;

  private Comfort() {}

  /** Cost of each place on each night of the planned season; home costs nothing. */
  static long[][] costs(Species species, int home, WintersOnFile winters) {
    Season season = winters.season();
    int nights = season.days();
    int midwinter = season.index(season.midwinter());
    long[][] costs = new long[winters.places().size()][nights];
    for (int p = 0; p < costs.length; p++) {
      if (p == home) {
        continue;
      }
      boolean roofed = winters.places().get(p).roofed();
      double[] airC = typicalAirC(p, winters);
      for (int n = 0; n < nights; n++) {
        long away = n < midwinter ? Cost.AUTUMN_NIGHT_AWAY : Cost.SPRING_NIGHT_AWAY;
        double outside = Math.max(species.minStoreC() - airC[n], airC[n] - species.maxStoreC());
        long degrees = Math.round(Math.max(0, Math.min(MOST_STORAGE_DEGREES_PER_NIGHT, outside)));
        costs[p][n] = away + (roofed ? Cost.ROOF_NIGHT + degrees * Cost.STORAGE_DEGREE_DAY : 0);
      }
    }
    return costs;
  }

  /** What a path costs in comfort and moves. */
  static long of(Path path, long[][] costs) {
    long sum = Cost.MOVE * path.moveNights().size();
    for (int n = 0; n < path.placeByNight().length; n++) {
      sum += costs[path.placeByNight()[n]][n];
    }
    return sum;
  }

  /** Mean over the winters of a place's week mean, by night of the planned season. */
  private static double[] typicalAirC(int place, WintersOnFile winters) {
    int nights = winters.season().days();
    double[] sum = new double[nights];
    int[] count = new int[nights];
    for (int w = 0; w < winters.count(); w++) {
      double[] weekMeanC = winters.nights(w, place).weekMeanC();
      for (int n = 0; n < weekMeanC.length; n++) {
        sum[winters.planNight(w, n)] += weekMeanC[n];
        count[winters.planNight(w, n)]++;
      }
    }
    for (int n = 0; n < nights; n++) {
      sum[n] = count[n] == 0 ? 0 : sum[n] / count[n];
    }
    return sum;
  }
}
