package org.hibernacle.demo;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Invents ten and a half years of weather for an inland garden near 48° N and writes it as daily
 * extremes.
 *
 * <p>A yearly wave, a day-to-day anomaly that remembers the day before, and a daily range that
 * grows with clear sky make an ordinary year. {@link #TURNS} then lays on what a winter is
 * remembered for: mild months, cold spells with a chosen coldest night, an early and a late frost.
 * Edit that list to change the story. The same numbers come out on every machine: the seed is fixed
 * and no library transcendental of varying accuracy is used.
 */
public final class DemoTemperatures {
  static final LocalDate FIRST = LocalDate.of(2016, 1, 1);
  static final LocalDate LAST = LocalDate.of(2026, 6, 30);

  private static final long SEED = 500_001L;
  private static final double YEAR_MEAN_C = 10.2;
  private static final double YEAR_SWING_K = 11.2;
  private static final int COLDEST_DAY_OF_YEAR = 18;

  /** How much of one day's anomaly is left on the next. */
  private static final double MEMORY = 0.78;

  /** No ordinary night is further than this below the mean of high summer, and of midwinter. */
  private static final double SUMMER_DROP_K = 8.0;

  private static final double WINTER_DROP_K = 13.5;

  /** Something that shapes the minimum and maximum of the days around it. */
  private sealed interface Turn {}

  /** Days that are warmer (or colder) as a whole; first and last included. */
  private record Shift(LocalDate from, LocalDate to, double byK) implements Turn {}

  /** A time in which no ordinary night falls to this; first and last included. */
  private record Floor(LocalDate from, LocalDate to, double lowestC) implements Turn {}

  /** A cold wave: the coldest night, and for how many days either side it is felt. */
  private record Spell(LocalDate coldest, int reachDays, double nightC) implements Turn {}

  private static final List<Turn> TURNS =
      List.of(
          new Spell(LocalDate.of(2017, 1, 18), 7, -15.8),
          // A late winter: mild until February, then a fortnight of east wind.
          new Shift(LocalDate.of(2017, 12, 10), LocalDate.of(2018, 2, 10), 2.0),
          new Spell(LocalDate.of(2018, 2, 27), 8, -14.6),
          new Spell(LocalDate.of(2019, 1, 23), 5, -14.1),
          // A mild winter.
          new Shift(LocalDate.of(2019, 12, 1), LocalDate.of(2020, 2, 29), 3.5),
          new Floor(LocalDate.of(2019, 11, 15), LocalDate.of(2020, 4, 15), -7.9),
          new Spell(LocalDate.of(2020, 1, 21), 3, -8.0),
          // The hardest winter of the ten.
          new Shift(LocalDate.of(2021, 1, 5), LocalDate.of(2021, 2, 16), -1.5),
          new Spell(LocalDate.of(2021, 2, 10), 9, -17.6),
          // A mild autumn cut short: nothing has hardened when the frost comes.
          new Shift(LocalDate.of(2021, 10, 1), LocalDate.of(2021, 11, 5), 3.0),
          new Spell(LocalDate.of(2021, 11, 9), 4, -9.2),
          new Spell(LocalDate.of(2022, 1, 12), 5, -14.3),
          new Spell(LocalDate.of(2022, 12, 17), 8, -14.6),
          new Spell(LocalDate.of(2024, 1, 10), 6, -14.8),
          // A warm April, then the late frost that takes new leaves.
          new Shift(LocalDate.of(2024, 4, 5), LocalDate.of(2024, 5, 4), 2.5),
          new Spell(LocalDate.of(2024, 5, 8), 3, -3.2),
          new Spell(LocalDate.of(2025, 2, 18), 6, -15.2),
          new Spell(LocalDate.of(2026, 1, 5), 7, -16.2),
          // The winter that is reviewed, in a file of its own: colder than any before, then a warm
          // spring.
          new Spell(LocalDate.of(2027, 1, 20), 9, -20.6),
          new Shift(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 5, 31), 2.0));

  private DemoTemperatures() {}

  /** One row of the file. */
  record Day(LocalDate date, BigDecimal minC, BigDecimal maxC) {}

  /** Writes {@code temperatures.csv} into the folder named. */
  public static void main(String[] outDir) throws IOException {
    Path folder = Files.createDirectories(Path.of(outDir[0]));
    Files.writeString(folder.resolve("temperatures.csv"), csv());
  }

  /** The whole file. */
  static String csv() {
    return csv(days());
  }

  static String csv(List<Day> days) {
    StringBuilder text = new StringBuilder("date,tmin_c,tmax_c\n");
    for (Day day : days) {
      text.append(day.date()).append(',').append(day.minC()).append(',').append(day.maxC());
      text.append('\n');
    }
    return text.toString();
  }

  /** Every day from {@link #FIRST} to {@link #LAST}. */
  static List<Day> days() {
    return days(LAST);
  }

  /** Every day from {@link #FIRST} on; an earlier end leaves the days before it as they are. */
  static List<Day> days(LocalDate last) {
    SplittableRandom random = new SplittableRandom(SEED);
    List<Day> days = new ArrayList<>();
    double anomaly = 0;
    double clear = 0.5;
    for (LocalDate date = FIRST; !date.isAfter(last); date = date.plusDays(1)) {
      double winter = winterness(date);
      double spreadK = 1.0 + 3.0 * winter;
      anomaly = MEMORY * anomaly + Math.sqrt(1 - MEMORY * MEMORY) * bell(random);
      clear = 0.5 * clear + 0.5 * random.nextDouble();
      double rangeK = (10.5 - 4.0 * winter) * (0.4 + 1.2 * clear);
      double meanC = YEAR_MEAN_C + YEAR_SWING_K * (1 - 2 * winter);
      double nightC = meanC + spreadK * anomaly + shiftK(date) - rangeK / 2;
      nightC = softFloor(nightC, floorC(date, meanC, winter));
      nightC = underSpells(date, nightC, 1.6 * random.nextDouble());
      days.add(new Day(date, tenths(nightC), tenths(nightC + rangeK)));
    }
    return List.copyOf(days);
  }

  /** 1 on the coldest day of the yearly wave, 0 half a year later. */
  private static double winterness(LocalDate date) {
    double turn = (date.getDayOfYear() - COLDEST_DAY_OF_YEAR) / 365.25;
    return (1 + StrictMath.cos(2 * Math.PI * turn)) / 2;
  }

  /** Roughly normal, mean 0 and standard deviation 1: twelve even draws, so no logarithm. */
  private static double bell(SplittableRandom random) {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }

  /** Bends what would fall close to the floor, so that it nears the floor and never reaches it. */
  private static double softFloor(double valueC, double floorC) {
    double kneeK = 4;
    double belowKneeK = floorC + kneeK - valueC;
    return belowKneeK <= 0 ? valueC : floorC + kneeK * kneeK / (kneeK + belowKneeK);
  }

  private static double shiftK(LocalDate date) {
    double sum = 0;
    for (Turn turn : TURNS) {
      if (turn instanceof Shift shift
          && !date.isBefore(shift.from())
          && !date.isAfter(shift.to())) {
        sum += shift.byK();
      }
    }
    return sum;
  }

  private static double floorC(LocalDate date, double meanC, double winter) {
    double result = meanC - SUMMER_DROP_K - (WINTER_DROP_K - SUMMER_DROP_K) * winter;
    for (Turn turn : TURNS) {
      if (turn instanceof Floor floor
          && !date.isBefore(floor.from())
          && !date.isAfter(floor.to())) {
        result = Math.max(result, floor.lowestC());
      }
    }
    return result;
  }

  /** Pulls the night towards the coldest one of each spell near it, most on that very night. */
  private static double underSpells(LocalDate date, double nightC, double unrestK) {
    double result = nightC;
    for (Turn turn : TURNS) {
      if (turn instanceof Spell spell) {
        long away = Math.abs(ChronoUnit.DAYS.between(date, spell.coldest()));
        double pull = 1 - Math.pow((double) away / spell.reachDays(), 2);
        if (pull > 0) {
          double targetC = spell.nightC() + (away == 0 ? 0 : unrestK);
          result = Math.max(pull * targetC + (1 - pull) * result, targetC);
        }
      }
    }
    return result;
  }

  private static BigDecimal tenths(double valueC) {
    return BigDecimal.valueOf(valueC).setScale(1, RoundingMode.HALF_EVEN);
  }
}
