package org.hibernacle.input;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.hibernacle.model.DailyExtremes;

/**
 * Finds days that lie far outside what all years on file have around that date, by the two ways of
 * Durre et al. (2010): many standard deviations from the mean of that time of the year, where mean
 * and deviation are those of {@link Biweight}; or far from every other day of that calendar month.
 */
final class Outliers {
  /**
   * Days before and after the date that are taken together: 15 days, as the archive's page says.
   */
  private static final int BESIDE_DAYS = 7;

  /** With fewer figures nobody knows what is usual; from memory. */
  private static final int LEAST_FIGURES = 100;

  /** Whole degrees leave some spread even where there is none, K; common practice, no source. */
  private static final double LEAST_DEVIATION_K = 0.5;

  /** A leap year, so that every day of the year has a place. */
  private static final int SOME_YEAR = 2000;

  private static final int DAYS = 366;

  private final NavigableMap<LocalDate, DailyExtremes> days;
  private final ToDoubleFunction<DailyExtremes> extreme;

  private Outliers(
      NavigableMap<LocalDate, DailyExtremes> days, ToDoubleFunction<DailyExtremes> extreme) {
    this.days = days;
    this.extreme = extreme;
  }

  /** Days whose lowest, or whose highest, has no like in the file. */
  static Set<LocalDate> in(
      NavigableMap<LocalDate, DailyExtremes> days, List<ToDoubleFunction<DailyExtremes>> extremes) {
    Set<LocalDate> found = new HashSet<>();
    for (ToDoubleFunction<DailyExtremes> extreme : extremes) {
      Outliers outliers = new Outliers(days, extreme);
      outliers.ofTheDate(found);
      outliers.ofTheMonth(found);
    }
    return found;
  }

  private void ofTheDate(Set<LocalDate> found) {
    List<List<Double>> byDay = new ArrayList<>();
    for (int i = 0; i < DAYS; i++) {
      byDay.add(new ArrayList<>());
    }
    days.forEach((date, air) -> byDay.get(place(date)).add(extreme.applyAsDouble(air)));
    Biweight[] usual = new Biweight[DAYS];
    for (int i = 0; i < DAYS; i++) {
      List<Double> around = new ArrayList<>();
      for (int k = i - BESIDE_DAYS; k <= i + BESIDE_DAYS; k++) {
        around.addAll(byDay.get(Math.floorMod(k, DAYS)));
      }
      usual[i] = Biweight.of(around);
    }
    days.forEach(
        (date, air) -> {
          Biweight here = usual[place(date)];
          double deviationC = Math.max(here.deviation(), LEAST_DEVIATION_K);
          double awayC = Math.abs(extreme.applyAsDouble(air) - here.mean());
          if (here.count() >= LEAST_FIGURES && awayC >= QualityRule.DEVIATIONS * deviationC) {
            found.add(date);
          }
        });
  }

  private static int place(LocalDate date) {
    return MonthDay.from(date).atYear(SOME_YEAR).getDayOfYear() - 1;
  }

  private void ofTheMonth(Set<LocalDate> found) {
    for (int month = 1; month <= 12; month++) {
      int number = month;
      double[] sorted =
          days.entrySet().stream()
              .filter(day -> day.getKey().getMonthValue() == number)
              .mapToDouble(day -> extreme.applyAsDouble(day.getValue()))
              .sorted()
              .toArray();
      if (sorted.length < LEAST_FIGURES) {
        continue;
      }
      int middle = sorted.length / 2;
      double fromC = Double.NEGATIVE_INFINITY;
      double toC = Double.POSITIVE_INFINITY;
      for (int i = middle; i > 0 && fromC == Double.NEGATIVE_INFINITY; i--) {
        fromC = sorted[i] - sorted[i - 1] >= QualityRule.APART_K ? sorted[i] : fromC;
      }
      for (int i = middle; i < sorted.length - 1 && toC == Double.POSITIVE_INFINITY; i++) {
        toC = sorted[i + 1] - sorted[i] >= QualityRule.APART_K ? sorted[i] : toC;
      }
      for (Map.Entry<LocalDate, DailyExtremes> day : days.entrySet()) {
        double airC = extreme.applyAsDouble(day.getValue());
        if (day.getKey().getMonthValue() == month && (airC < fromC || airC > toC)) {
          found.add(day.getKey());
        }
      }
    }
  }

  /**
   * Mean and standard deviation in which far figures count little or nothing: the biweight, after
   * Lanzante J. R. (1996), Resistant, robust and non-parametric techniques for the analysis of
   * climate data, Int. J. Climatol. 16, 1197-1226; its constant is from memory.
   *
   * @param mean of the figures
   * @param deviation of the figures
   * @param count how many there are
   */
  record Biweight(double mean, double deviation, int count) {
    /** Median deviations beyond which a figure counts nothing. */
    private static final double CENSOR = 7.5;

    static Biweight of(List<Double> figures) {
      int count = figures.size();
      if (count == 0) {
        return new Biweight(0, 0, 0);
      }
      double[] values = figures.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      double median = median(values);
      double[] away = Arrays.stream(values).map(v -> Math.abs(v - median)).sorted().toArray();
      double scale = CENSOR * median(away);
      if (scale == 0) {
        return new Biweight(median, 0, count);
      }
      double weights = 0;
      double sum = 0;
      double squares = 0;
      double norm = 0;
      for (double value : values) {
        double u = (value - median) / scale;
        double v = 1 - u * u;
        if (v > 0) {
          weights += v * v;
          sum += (value - median) * v * v;
          squares += (value - median) * (value - median) * v * v * v * v;
          norm += v * (1 - 5 * u * u);
        }
      }
      double deviation = Math.sqrt(count * squares) / Math.abs(norm);
      return new Biweight(median + sum / weights, deviation, count);
    }

    private static double median(double[] sorted) {
      int middle = sorted.length / 2;
      return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
  }
}
