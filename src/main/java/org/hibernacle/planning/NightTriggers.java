package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.climate.Winter;

/**
 * Works out what a plan knows of nights to come: half a month at a time, the forecast below which a
 * plant must not be left as it stands.
 *
 * <p>A night is known to be safe if as cold a one was come through in a winter on file in the same
 * stay with the margin kept, when the plant was as tender or more so: earlier in the stay before
 * midwinter, later in it afterwards, at any time if the plant does not harden. It is also safe if
 * not even the most tender state on file would have broken the margin: a ball falls by no more than
 * the air does, so each night could have been colder by what it had to spare.
 */
final class NightTriggers {
  private final WintersOnFile winters;
  private final Rules rules;

  NightTriggers(WintersOnFile winters, Rules rules) {
    this.winters = winters;
    this.rules = rules;
  }

  /** By date, over the judged part of the season without gaps. */
  List<NightTrigger> of(PlantPlanner.Found found, boolean hardens) {
    List<NightTrigger> triggers = new ArrayList<>();
    for (Stay stay : found.path().stays(winters.season(), winters.places())) {
      List<Known> halves = halves(found.lived(), stay);
      for (int i = 0; i < halves.size(); i++) {
        Known half = halves.get(i);
        boolean softening = half.from.isAfter(winters.season().midwinter());
        int first = hardens && softening ? i : 0;
        int end = hardens && !softening ? i + 1 : halves.size();
        double triggerC =
            halves.subList(first, end).stream().mapToDouble(Known::triggerC).min().orElseThrow();
        triggers.add(new NightTrigger(half.from, half.to, stay.place(), triggerC));
      }
    }
    return triggers;
  }

  /** The half months of a stay that are judged. */
  private List<Known> halves(List<Lived> lived, Stay stay) {
    List<Known> halves = new ArrayList<>();
    LocalDate from = stay.fromInclusive();
    while (from.isBefore(stay.toExclusive())) {
      LocalDate next = nextHalfMonth(from);
      LocalDate to = next.isBefore(stay.toExclusive()) ? next : stay.toExclusive();
      Known known = known(lived, from, to);
      if (known.nights > 0) {
        halves.add(known);
      }
      from = to;
    }
    return halves;
  }

  private static LocalDate nextHalfMonth(LocalDate day) {
    return day.getDayOfMonth() < 16 ? day.withDayOfMonth(16) : day.withDayOfMonth(1).plusMonths(1);
  }

  /** What nights on file tell of half a month. */
  private static final class Known {
    private final LocalDate from;
    private final LocalDate to;
    private final List<Double> keptC = new ArrayList<>();
    private double warmestBrokenC = Double.NEGATIVE_INFINITY;
    private double safeForAllC = Double.NEGATIVE_INFINITY;
    private int nights;

    Known(LocalDate from, LocalDate to) {
      this.from = from;
      this.to = to;
    }

    double triggerC() {
      double coldestKeptC =
          keptC.stream()
              .mapToDouble(c -> c)
              .filter(c -> c > warmestBrokenC)
              .min()
              .orElse(warmestBrokenC);
      boolean broken = warmestBrokenC > Double.NEGATIVE_INFINITY;
      return broken ? coldestKeptC : Math.min(coldestKeptC, safeForAllC);
    }
  }

  private Known known(List<Lived> lives, LocalDate fromInclusive, LocalDate toExclusive) {
    Known known = new Known(fromInclusive, toExclusive);
    int from = winters.season().index(fromInclusive);
    int to = winters.season().index(toExclusive);
    for (Lived lived : lives) {
      boolean[] broken = new boolean[lived.path().length];
      lived.violations().stream()
          .filter(b -> b.violation().rule().isCold())
          .forEach(b -> broken[b.night()] = true);
      Winter winter = winters.winter(lived.winter());
      int end = Rules.endJudged(winter);
      for (int n = winters.firstJudged(lived.winter()); n < end; n++) {
        int night = winters.planNight(lived.winter(), n);
        if (night < from || night >= to) {
          continue;
        }
        double stationC = winter.stationMinC(n);
        known.nights++;
        if (broken[n]) {
          known.warmestBrokenC = Math.max(known.warmestBrokenC, stationC);
        } else {
          known.keptC.add(stationC);
          double mightBeC = stationC - rules.spareK(lived, n);
          known.safeForAllC = Math.max(known.safeForAllC, mightBeC);
        }
      }
    }
    return known;
  }
}
