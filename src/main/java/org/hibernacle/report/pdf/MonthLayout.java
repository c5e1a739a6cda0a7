package org.hibernacle.report.pdf;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Words;

/**
 * The measures of one month's grid: the largest letters that let all lines fit, with names of
 * plants if these letters are still large, and the room of each day. Weekdays get widths and weeks
 * get heights by what stands in them, so that the busiest day's letters are large.
 */
final class MonthLayout {
  private static final float LARGEST_PT = 16;

  /** The least we print, in points. */
  private static final float SMALLEST_PT = 9;

  private static final float STEP_PT = 0.5f;

  /** Smaller letters are kept for months that do not fit otherwise, in points. */
  private static final float SMALLEST_WITH_NAMES_PT = 11;

  /** Read from an arm's length, in points. */
  private static final float SMALLEST_ROOMY_PT = 12;

  /** Of the grid's width. */
  private static final float IDLE_SHARE = 1 / 16f;

  /** Of the grid's width, where the lines do not ask for more. */
  private static final float BUSY_SHARE = 0.42f;

  private static final float IDLE_HEIGHT = 22;
  private static final float NARROWEST = 28;
  private static final int DAYS = 7;

  private final LocalDate first;
  private final int rows;
  private final Typefaces type;
  private final Words words;
  private final float width;
  private final float height;
  private final float[] columns;
  private final float[] weeks;
  private final Map<LocalDate, List<MonthPage.Line>> lines = new TreeMap<>();
  private final Map<LocalDate, Integer> shown = new TreeMap<>();
  private final DayBox box;
  private boolean withNames = true;

  /** Letters of one size with the widths of the weekdays and the heights that the weeks want. */
  private record Attempt(DayBox box, float[] columns, float[] wanted) {}

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
    this.type = type;
    this.words = words;
    this.width = width;
    this.height = height;
    first = month.month().atDay(1).with(TemporalAdjusters.previousOrSame(weekStart));
    rows = 1 + week(month.month().atEndOfMonth());
    take(month, MonthPage.Line::text);
    Attempt best = largest(SMALLEST_WITH_NAMES_PT);
    if (sum(best.wanted()) > height) {
      withNames = false;
      take(month, MonthPage.Line::brief);
      best = largest(SMALLEST_PT);
    }
    best = evened(best);
    box = best.box();
    columns = best.columns();
    weeks = Levels.share(best.wanted(), height);
    for (Map.Entry<LocalDate, List<MonthPage.Line>> day : lines.entrySet()) {
      LocalDate date = day.getKey();
      shown.put(
          date, box.fitting(date.getDayOfMonth(), day.getValue(), inner(date), weeks[week(date)]));
    }
  }

  /** In the largest letters in which all lines fit, or else in the smallest. */
  private Attempt largest(float smallestPt) {
    Attempt best = attempt(LARGEST_PT);
    if (sum(best.wanted()) <= height) {
      return best;
    }
    best = attempt(smallestPt);
    if (sum(best.wanted()) > height) {
      return best;
    }
    int fits = 0;
    int tooLarge = Math.round((LARGEST_PT - smallestPt) / STEP_PT);
    while (tooLarge - fits > 1) {
      int middle = (fits + tooLarge) / 2;
      Attempt tried = attempt(smallestPt + middle * STEP_PT);
      if (sum(tried.wanted()) <= height) {
        fits = middle;
        best = tried;
      } else {
        tooLarge = middle;
      }
    }
    return best;
  }

  private Attempt attempt(float sizePt) {
    DayBox tried = new DayBox(type, words, sizePt);
    WeekdayWidths widths = weekdays(tried);
    float[] shares = widths.lowest(widths(width), least(tried), height);
    return new Attempt(tried, shares, widths.wanted(shares));
  }

  /** In the same letters, with width from low boxes for high ones on other weekdays. */
  private Attempt evened(Attempt found) {
    if (lines.keySet().stream().map(this::column).distinct().count() < 2) {
      return found;
    }
    WeekdayWidths widths = weekdays(found.box());
    float[] shares = widths.evened(found.columns(), least(found.box()), height);
    return new Attempt(found.box(), shares, widths.wanted(shares));
  }

  private WeekdayWidths weekdays(DayBox tried) {
    List<List<LocalDate>> busy =
        IntStream.range(0, rows)
            .mapToObj(i -> lines.keySet().stream().filter(d -> week(d) == i).toList())
            .toList();
    return new WeekdayWidths(
        busy,
        first,
        (date, column) ->
            tried.height(date.getDayOfMonth(), lines(date), column - 2 * DayBox.INSET),
        IDLE_HEIGHT);
  }

  /** Widths at which neither the name of a weekday nor a word of a line is broken, in points. */
  private float[] least(DayBox tried) {
    float[] least = new float[DAYS];
    for (int i = 0; i < DAYS; i++) {
      String name =
          first
              .plusDays(i)
              .getDayOfWeek()
              .getDisplayName(TextStyle.SHORT_STANDALONE, words.locale());
      float heading = type.width(name, MonthGrid.WEEKDAY) + 2 * DayBox.INSET + 1;
      least[i] = Math.max(NARROWEST, heading);
    }
    lines.forEach(
        (date, day) -> {
          float narrowest = tried.narrowest(day) + 2 * DayBox.INSET;
          least[column(date)] = Math.max(least[column(date)], narrowest);
        });
    return least;
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

  /** Widths to begin with. */
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
