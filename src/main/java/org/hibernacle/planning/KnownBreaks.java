package org.hibernacle.planning;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is known of the rules that a plant would see broken: for every winter, place and night, the
 * most that any life lived so far has met there. Kept twice, with the safety margin and of the
 * limits alone, so that a winter can be excused from the margin without being lived again.
 */
final class KnownBreaks {
  private final WintersOnFile winters;

  /** Short, since these are what takes memory in large gardens; {@link Cost} keeps them small. */
  private final short[][][] withMargin;

  private final short[][][] ofLimit;

  KnownBreaks(WintersOnFile winters) {
    this.winters = winters;
    int nights = winters.season().days();
    withMargin = new short[winters.count()][winters.places().size()][nights];
    ofLimit = new short[winters.count()][winters.places().size()][nights];
  }

  private KnownBreaks(KnownBreaks other) {
    winters = other.winters;
    withMargin = copy(other.withMargin);
    ofLimit = copy(other.ofLimit);
  }

  /** The same knowledge, which then goes its own way. */
  KnownBreaks copy() {
    return new KnownBreaks(this);
  }

  private static short[][][] copy(short[][][] ticks) {
    return Stream.of(ticks)
        .map(places -> Stream.of(places).map(short[]::clone).toArray(short[][]::new))
        .toArray(short[][][]::new);
  }

  /** Takes in what lives have met. */
  void learn(List<Lived> lives) {
    for (Lived lived : lives) {
      int[] ticks = new int[lived.path().length];
      int[] limitTicks = new int[lived.path().length];
      for (Lived.Broken b : lived.violations()) {
        ticks[b.night()] += Cost.ticks(b.violation());
        limitTicks[b.night()] += Cost.ticksOfLimit(b.violation());
      }
      for (int n = 0; n < ticks.length; n++) {
        int night = winters.planNight(lived.winter(), n);
        raise(withMargin[lived.winter()][lived.path()[n]], night, ticks[n]);
        raise(ofLimit[lived.winter()][lived.path()[n]], night, limitTicks[n]);
      }
    }
  }

  private static void raise(short[] known, int night, int ticks) {
    known[night] = (short) Math.max(known[night], Math.min(ticks, Cost.MOST_BROKEN_PER_NIGHT));
  }

  /**
   * The worst of all winters by place and night, in ticks.
   *
   * @param excused winters in which only the limits themselves count
   */
  int[][] worst(Set<Integer> excused) {
    int[][] worst = new int[winters.places().size()][winters.season().days()];
    for (int w = 0; w < withMargin.length; w++) {
      short[][] counts = excused.contains(w) ? ofLimit[w] : withMargin[w];
      for (int p = 0; p < worst.length; p++) {
        for (int n = 0; n < worst[p].length; n++) {
          worst[p][n] = Math.max(worst[p][n], counts[p][n]);
        }
      }
    }
    return worst;
  }

  /** What lives met that counts, in ticks over all winters and nights. */
  static long ticks(List<Lived> lives, Set<Integer> excused) {
    long sum = 0;
    for (Lived lived : lives) {
      for (Lived.Broken b : lived.violations()) {
        sum +=
            excused.contains(lived.winter())
                ? Cost.ticksOfLimit(b.violation())
                : Cost.ticks(b.violation());
      }
    }
    return sum;
  }
}
