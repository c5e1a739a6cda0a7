package org.hibernacle.report.pdf;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Widths of a month's weekdays under which its weeks are lowest together. */
final class WeekdayWidths {
  /** What a day's box needs. */
  interface Height {
    /** Height in points of that day's box in a column of that width in points. */
    float of(LocalDate date, float width);
  }

  private final List<List<LocalDate>> weeks;
  private final Height height;
  private final float idleHeight;
  private final int[] columnOf;
  private final Map<LocalDate, Map<Float, Float>> known = new HashMap<>();

  /**
   * A month to share a width among.
   *
   * @param weeks days with something to do, week by week
   * @param first day of the first week
   * @param height of a day's box
   * @param idleHeight of a week at least, in points
   */
  WeekdayWidths(List<List<LocalDate>> weeks, LocalDate first, Height height, float idleHeight) {
    this.weeks = weeks;
    this.height = height;
    this.idleHeight = idleHeight;
    this.columnOf = new int[7];
    for (int i = 0; i < columnOf.length; i++) {
      columnOf[first.plusDays(i).getDayOfWeek().getValue() - 1] = i;
    }
  }

  /** Height that each week wants, in points. */
  float[] wanted(float[] widths) {
    float[] wanted = new float[weeks.size()];
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] = idleHeight;
      for (LocalDate date : weeks.get(i)) {
        wanted[i] = Math.max(wanted[i], height(date, widths[column(date)]));
      }
    }
    return wanted;
  }

  /**
   * Better widths than those to begin with, of the same sum.
   *
   * @param start in points
   * @param least below which none goes that is not below from the start, in points
   * @param enough total height of the weeks with which the search ends, in points
   */
  float[] lowest(float[] start, float[] least, float enough) {
    return WidthSearch.lowest(start, least, enough, this::total);
  }

  /**
   * Widths of the same sum under which no day is much higher than the others: their heights squared
   * are least together.
   *
   * @param start in points
   * @param least below which none goes that is not below from the start, in points
   * @param most total height that the weeks may take, if they do not take more from the start, in
   *     points
   */
  float[] evened(float[] start, float[] least, float most) {
    double limit = Math.max(most, total(start));
    return WidthSearch.lowest(
        start,
        least,
        0,
        tried -> total(tried) <= limit ? squares(tried) : Double.POSITIVE_INFINITY);
  }

  private double squares(float[] widths) {
    return weeks.stream()
        .flatMap(List::stream)
        .mapToDouble(date -> height(date, widths[column(date)]))
        .map(height -> height * height)
        .sum();
  }

  private int column(LocalDate date) {
    return columnOf[date.getDayOfWeek().getValue() - 1];
  }

  private double total(float[] widths) {
    double total = 0;
    for (float each : wanted(widths)) {
      total += each;
    }
    return total;
  }

  private float height(LocalDate date, float width) {
    return known
        .computeIfAbsent(date, d -> new HashMap<>())
        .computeIfAbsent(width, w -> height.of(date, w));
  }
}
