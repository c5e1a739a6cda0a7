package org.hibernacle.demo;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * Invents what a logger in the stone shed of the demo read in the winter of 2025/26, hour by hour.
 *
 * <p>The weather is that of {@link DemoTemperatures}. The shed is not the program's: its walls
 * follow the air outside with a long lag, a draught brings in some of it at once, and the house
 * next door warms it more the colder it gets. So the program's shed is off, as a real one would be.
 */
public final class DemoLogger {
  static final LocalDate FIRST = LocalDate.of(2025, 12, 1);
  static final LocalDate LAST = LocalDate.of(2026, 2, 28);

  private static final LocalDate WALLS_FROM = LocalDate.of(2025, 10, 1);
  private static final double WALL_LAG_H = 70;
  private static final double DRAUGHT_SHARE = 0.15;

  /** Hour of the lowest, and of the highest, air of a day. */
  private static final int LOWEST_HOUR = 7;

  private static final int HIGHEST_HOUR = 15;

  private DemoLogger() {}

  /** Writes {@code stone-shed-logger.csv} into the folder named. */
  public static void main(String[] outDir) throws IOException {
    Path folder = Files.createDirectories(Path.of(outDir[0]));
    Files.writeString(folder.resolve("stone-shed-logger.csv"), csv());
  }

  /** The whole file. */
  static String csv() {
    return csv(DemoTemperatures.days(), WALLS_FROM, FIRST, LAST, 2);
  }

  /**
   * What the logger would have read in another winter; its walls begin at 10 °C.
   *
   * @param warmthK by which the house next door warms it in mild weather
   */
  static String csv(
      List<DemoTemperatures.Day> days,
      LocalDate wallsFrom,
      LocalDate first,
      LocalDate last,
      double warmthK) {
    StringBuilder text = new StringBuilder("timestamp,temp_c\n");
    double wallC = 10;
    int start = (int) (wallsFrom.toEpochDay() - DemoTemperatures.FIRST.toEpochDay());
    for (int i = start; !days.get(i).date().isAfter(last); i++) {
      LocalDate date = days.get(i).date();
      for (int hour = 0; hour < 24; hour++) {
        double outsideC = outsideC(days, i, hour);
        double houseK = warmthK + 0.1 * Math.max(0, 5 - outsideC);
        wallC += (outsideC + houseK - wallC) / WALL_LAG_H;
        double airC = (1 - DRAUGHT_SHARE) * wallC + DRAUGHT_SHARE * outsideC;
        if (!date.isBefore(first)) {
          text.append(date).append(hour < 10 ? " 0" : " ").append(hour).append(":00,");
          text.append(BigDecimal.valueOf(airC).setScale(1, RoundingMode.HALF_EVEN)).append('\n');
        }
      }
    }
    return text.toString();
  }

  /** Straight lines from the highest of a day to the lowest of the next and back. */
  private static double outsideC(List<DemoTemperatures.Day> days, int day, int hour) {
    double lowC = days.get(day).minC().doubleValue();
    double highC = days.get(day).maxC().doubleValue();
    if (hour < LOWEST_HOUR) {
      double beforeC = days.get(day - 1).maxC().doubleValue();
      return between(beforeC, lowC, hour + 24 - HIGHEST_HOUR, 24 + LOWEST_HOUR - HIGHEST_HOUR);
    }
    if (hour <= HIGHEST_HOUR) {
      return between(lowC, highC, hour - LOWEST_HOUR, HIGHEST_HOUR - LOWEST_HOUR);
    }
    double nextC = days.get(day + 1).minC().doubleValue();
    return between(highC, nextC, hour - HIGHEST_HOUR, 24 + LOWEST_HOUR - HIGHEST_HOUR);
  }

  private static double between(double fromC, double toC, int step, int steps) {
    return fromC + (toC - fromC) * step / steps;
  }
}
