package org.hibernacle.report.pdf;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Words;

/**
 * The measures of one month's grid: the largest letters that let all lines fit, with names of
 * plants if these letters are still large, and the room of each day. Weekdays and weeks with work
 * get more room than those without.
 */
final class MonthLayout {
  /** From large down to the least we print, in points. */
  private static final float[] SIZES_PT = {14, 12.5f, 11, 10, 9};

  /** Smaller letters are kept for months that do not fit otherwise, in points. */
  private static final float SMALLEST_WITH_NAMES_PT = 10;

  /** Read from an arm's length, in points. */
  private static final float SMALLEST_ROOMY_PT = 11;

  /** Of the grid's width. */
  private static final float IDLE_SHARE = 1 / 16f;

  /** Of the grid's width. */
  private static final float BUSY_SHARE = 0.42f;

  private static final float IDLE_HEIGHT = 26;
  private static final int DAYS = 7;

  private final LocalDate first;
  private final float[] columns;
  private final float[] weeks;
  private final Map<LocalDate, List<MonthPage.Line>> lines = new TreeMap<>();
  private final Map<LocalDate, Integer> shown = new TreeMap<>();
  private final DayBox box;
  private boolean withNames = true;

  /**
   * Measures that month.
   *
   * @param width of the grid, in points
   * @param height of the grid without the names of the weekdays, in points
   */
  MonthLayout(
      MonthPage month,
      DayOfWeek weekStart,
      Typefaces type,
      Words words,
      float width,
      float height) {
    first = month.month().atDay(1).with(TemporalAdjusters.previousOrSame(weekStart));
    take(month, MonthPage.Line::text);
    columns = widths(width);
    int rows = 1 + week(month.month().atEndOfMonth());
    DayBox tried = new DayBox(type, words, SIZES_PT[0]);
    float[] wanted = wanted(tried, rows);
    for (int i = 1; i < SIZES_PT.length && sum(wanted) > height; i++) {
      if (withNames && SIZES_PT[i] < SMALLEST_WITH_NAMES_PT) {
        withNames = false;
        take(month, MonthPage.Line::brief);
        i = 0;
      }
      tried = new DayBox(type, words, SIZES_PT[i]);
      wanted = wanted(tried, rows);
    }
    box = tried;
    weeks = Levels.share(wanted, height);
    for (Map.Entry<LocalDate, List<MonthPage.Line>> day : lines.entrySet()) {
      LocalDate date = day.getKey();
      shown.put(
          date, box.fitting(date.getDayOfMonth(), day.getValue(), inner(date), weeks[week(date)]));
    }
  }

  private void take(MonthPage month, Function<MonthPage.Line, String> text) {
    for (MonthPage.DayEntry entry : month.entries()) {
      if (!entry.lines().isEmpty()) {
        lines.put(
            entry.date(),
            entry.lines().stream()
                .map(line -> new MonthPage.Line(line.role(), line.mark(), text.apply(line)))
                .toList());
      }
    }
  }

  /** Whether all lines stand in the grid, with names and in letters to be read on a wall. */
  boolean isRoomy() {
    return withNames && overfull().isEmpty() && sizePt() >= SMALLEST_ROOMY_PT;
  }

  private float[] widths(float width) {
    boolean[] busy = new boolean[DAYS];
    lines.keySet().forEach(date -> busy[column(date)] = true);
    int count = 0;
    for (boolean each : busy) {
      count += each ? 1 : 0;
    }
    float[] widths = new float[DAYS];
    if (count == 0 || count == DAYS) {
      Arrays.fill(widths, width / DAYS);
      return widths;
    }
    float spare = width * (1 - (DAYS - count) * IDLE_SHARE);
    float wide = Math.min(spare / count, width * BUSY_SHARE);
    float narrow = (width - count * wide) / (DAYS - count);
    for (int i = 0; i < DAYS; i++) {
      widths[i] = busy[i] ? wide : narrow;
    }
    return widths;
  }

  private float[] wanted(DayBox tried, int rows) {
    float[] wanted = new float[rows];
    Arrays.fill(wanted, IDLE_HEIGHT);
    lines.forEach(
        (date, day) -> {
          int week = week(date);
          wanted[week] =
              Math.max(wanted[week], tried.height(date.getDayOfMonth(), day, inner(date)));
        });
    return wanted;
  }

  /** First day of the first row, maybe of the month before. */
  LocalDate first() {
    return first;
  }

  /** Widths of the weekdays, in points. */
  float[] columns() {
    return columns.clone();
  }

  /** Heights of the weeks, in points. */
  float[] weeks() {
    return weeks.clone();
  }

  DayBox box() {
    return box;
  }

  /** Of the letters in the boxes, in points. */
  float sizePt() {
    return box.sizePt();
  }

  /** What there is to do on that day. */
  List<MonthPage.Line> lines(LocalDate date) {
    return lines.getOrDefault(date, List.of());
  }

  /** How many lines of that day stand in the grid. */
  int shown(LocalDate date) {
    return shown.getOrDefault(date, 0);
  }

  /** Width for the content of that day's box, in points. */
  float inner(LocalDate date) {
    return columns[column(date)] - 2 * DayBox.INSET;
  }

  /** Days whose lines do not all stand in the grid. */
  List<LocalDate> overfull() {
    return lines.keySet().stream().filter(d -> shown(d) < lines(d).size()).toList();
  }

  private int week(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(first, date) / DAYS;
  }

  private int column(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(first, date) % DAYS;
  }

  private static float sum(float[] heights) {
    float sum = 0;
    for (float height : heights) {
      sum += height;
    }
    return sum;
  }
}
