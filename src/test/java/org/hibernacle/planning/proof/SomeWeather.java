package org.hibernacle.planning.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;

/**
 * Whole winters by chance, mild to brutal: a yearly wave, days that remember the day before, and on
 * top what gardens suffer from: a cold snap in the second month before midwinter, a hard spell
 * after it, a mild month that wakes plants, a late frost. Dates count from the start of the season,
 * so north and south are drawn alike.
 */
final class SomeWeather {
  private static final double MEMORY = 0.75;
  private static final int MIDWINTER = 198;

  private final Draw draw;
  private final double winterMeanC;
  private final double summerMeanC;

  SomeWeather(Draw draw) {
    this.draw = draw;
    winterMeanC = draw.between(-7.0, 6.0);
    summerMeanC = draw.between(16.0, 23.0);
  }

  /** Nights around one day that are pulled down, most on that very day. */
  private record Spell(int day, int reachDays, double nightC) {
    /** 1 on the day itself, 0 out of reach. */
    double pull(int onDay) {
      double away = (double) (onDay - day) / reachDays;
      return Math.max(0, 1 - away * away);
    }
  }

  /** Days that are warmer throughout. */
  private record Mild(int from, int to, double byK) {}

  TemperatureSeries winters(Season first, int count) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    TreeMap<LocalDate, Double> snowCm = new TreeMap<>();
    boolean tellsSnow = draw.chance(0.25);
    Season season = first;
    for (int i = 0; i < count; i++) {
      winter(season, days);
      if (tellsSnow) {
        snow(season, snowCm);
      }
      season = season.next();
    }
    return new TemperatureSeries("chance", days, new TreeMap<>(), snowCm);
  }

  private void winter(Season season, TreeMap<LocalDate, DailyExtremes> days) {
    List<Spell> spells = new ArrayList<>();
    if (draw.chance(0.4)) {
      double nightC = winterMeanC - draw.between(2.0, 9.0);
      spells.add(new Spell(draw.between(123, 150), draw.between(2, 6), nightC));
    }
    if (draw.chance(0.6)) {
      double nightC = winterMeanC - draw.between(6.0, 16.0);
      spells.add(new Spell(draw.between(165, 240), draw.between(3, 10), nightC));
    }
    if (draw.chance(0.4)) {
      spells.add(new Spell(draw.between(290, 322), draw.between(2, 4), draw.between(-6.0, 0.0)));
    }
    int mildFrom = draw.between(150, 260);
    Mild mild =
        new Mild(
            mildFrom,
            mildFrom + draw.between(15, 45),
            draw.chance(0.4) ? draw.between(3.0, 8.0) : 0);
    double anomaly = 0;
    double clear = 0.5;
    for (int i = 0; i < season.days(); i++) {
      double winterness = (1 + Math.cos(2 * Math.PI * (i - MIDWINTER) / 365.25)) / 2;
      anomaly = MEMORY * anomaly + Math.sqrt(1 - MEMORY * MEMORY) * draw.bell();
      clear = 0.5 * clear + 0.5 * draw.between(0.0, 1.0);
      double rangeK = (12 - 4 * winterness) * (0.3 + 1.2 * clear);
      double meanC = summerMeanC + (winterMeanC - summerMeanC) * winterness;
      double warmerK = i >= mild.from() && i < mild.to() ? mild.byK() : 0;
      double nightC = meanC + (1.5 + 2 * winterness) * anomaly + warmerK - rangeK / 2;
      for (Spell spell : spells) {
        double pull = spell.pull(i);
        nightC = Math.min(nightC, pull * spell.nightC() + (1 - pull) * nightC);
      }
      days.put(season.day(i), new DailyExtremes(tenths(nightC), tenths(nightC + rangeK)));
    }
  }

  /** One cover of snow that comes, settles and goes. */
  private void snow(Season season, TreeMap<LocalDate, Double> snowCm) {
    int from = draw.between(150, 220);
    int to = from + draw.between(5, 50);
    double mostCm = draw.between(2.0, 40.0);
    for (int i = 0; i < season.days(); i++) {
      boolean lies = i >= from && i < to;
      snowCm.put(season.day(i), lies ? tenths(mostCm * (to - i) / (to - from)) : 0);
    }
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
