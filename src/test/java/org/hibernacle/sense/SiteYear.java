package org.hibernacle.sense;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.LeftOnBench;
import org.hibernacle.planning.LeftOnBench.Night;

/**
 * What one plant met on the bench of one site, month by month, in every winter.
 *
 * @param winters the nights of each winter
 */
record SiteYear(List<List<Night>> winters) {
  static final List<Month> MONTHS =
      List.of(
          Month.SEPTEMBER,
          Month.OCTOBER,
          Month.NOVEMBER,
          Month.DECEMBER,
          Month.JANUARY,
          Month.FEBRUARY,
          Month.MARCH,
          Month.APRIL,
          Month.MAY);

  /**
   * One figure of a month.
   *
   * @param medianC median of the winters, °C
   * @param coldestWinterC in the winter with the coldest root ball, °C
   */
  record Figure(double medianC, double coldestWinterC) {}

  static SiteYear of(LeftOnBench bench, Plant plant) {
    return new SiteYear(bench.nights(plant));
  }

  Figure coldestAir(Month month) {
    return onColdest(month, Night::airMinC, Night::airMinC);
  }

  Figure coldestBall(Month month) {
    return onColdest(month, Night::ballMinC, Night::ballMinC);
  }

  /** Root limit on the night of the coldest ball. */
  Figure rootLimit(Month month) {
    return onColdest(month, Night::ballMinC, Night::rootLimitC);
  }

  /** Shoot limit on the night of the coldest air. */
  Figure shootLimit(Month month) {
    return onColdest(month, Night::airMinC, Night::shootLimitC);
  }

  private Figure onColdest(
      Month month, ToDoubleFunction<Night> coldest, ToDoubleFunction<Night> figure) {
    List<Night> nights =
        winters.stream()
            .map(
                winter ->
                    winter.stream()
                        .filter(night -> night.day().getMonth() == month)
                        .min(Comparator.comparingDouble(coldest))
                        .orElseThrow())
            .toList();
    double[] sorted = nights.stream().mapToDouble(figure).sorted().toArray();
    int n = sorted.length;
    return new Figure(
        (sorted[(n - 1) / 2] + sorted[n / 2]) / 2,
        figure.applyAsDouble(nights.get(coldestWinter())));
  }

  /** Index of the winter with the coldest root ball; the first of equals. */
  int coldestWinter() {
    List<Double> lowestC =
        winters.stream()
            .map(w -> w.stream().mapToDouble(Night::ballMinC).min().orElseThrow())
            .toList();
    return lowestC.indexOf(lowestC.stream().min(Comparator.naturalOrder()).orElseThrow());
  }
}
