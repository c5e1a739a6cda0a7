package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Group;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Species;
import org.hibernacle.physiology.ChillingInjury;
import org.hibernacle.thermal.BallTrace;

/**
 * The hard rules, one method each, judged night by night along a path. A rule sees what the plant
 * lived through and says by how many kelvin it was broken; it never changes anything. High summer,
 * the first month and the last fortnight of the season, is not judged: plants stand in their summer
 * quarters and the keeper watches the forecast.
 */
final class Rules {
  /** Week's mean air above which hardy plants at rest may not stand under a roof, °C. */
  static final double REST_CEILING_C = 5;

  private static final int WEEK = 7;

  /** Freshly cut roots must not freeze for this long, days; common practice, no source. */
  static final int FRESH_ROOT_DAYS = 42;

  /** Share of ice in the edge shell that counts as a wet freeze. */
  private static final double WET_FREEZE_ICE = 0.1;

  private final Plant plant;
  private final Species species;
  private final WintersOnFile winters;
  private final double marginK;
  private final boolean[] roofed;

  Rules(Plant plant, WintersOnFile winters, double marginK) {
    this.plant = plant;
    this.species = plant.species();
    this.winters = winters;
    this.marginK = marginK;
    roofed = new boolean[winters.places().size()];
    for (int p = 0; p < roofed.length; p++) {
      roofed[p] = winters.places().get(p).roofed();
    }
  }

  /** Every rule broken, in order of nights. */
  List<Lived.Broken> judge(Lived lived) {
    List<Lived.Broken> broken = new ArrayList<>();
    Winter winter = winters.winter(lived.winter());
    int end = endJudged(winter);
    for (int night = winters.firstJudged(lived.winter()); night < end; night++) {
      rootBall(lived, night, broken);
      shoots(lived, night, broken);
      outOfTheWarm(lived, night, broken);
      chilling(lived, night, broken);
      wokenGrowth(lived, night, broken);
      ballFrozen(lived, night, broken);
      if (roofed[lived.path()[night]]) {
        wakesInTheDark(lived, night, broken);
        tooWarm(lived, night, broken);
        tooDark(lived, night, broken);
      }
    }
    return broken;
  }

  /** First night that is judged: a month after the season's start, or the first on file. */
  static int firstJudged(Winter winter) {
    return Math.max(0, winter.index(winter.season().start().plusMonths(1)));
  }

  /** Night after the last that is judged: a fortnight before the season's end. */
  static int endJudged(Winter winter) {
    return Math.min(winter.nights(), winter.index(winter.season().endExclusive().minusDays(14)));
  }

  /** The safety margin, and for a forecast what it may be wrong by. */
  private double marginK(Lived lived, int night) {
    if (!winters.outlook().inSeason()) {
      return marginK;
    }
    return marginK + winters.outlook().leadMarginK(winters.planNight(lived.winter(), night));
  }

  private Place place(Lived lived, int night) {
    return winters.places().get(lived.path()[night]);
  }

  /**
   * The root ball keeps the safety margin above today's root limit. While it rests on its 0 °C
   * plateau it breaks nothing, if the limit lies clearly below: the ice still to form is a margin
   * of hours.
   */
  private void rootBall(Lived lived, int night, List<Lived.Broken> broken) {
    BallTrace trace = lived.trace();
    double limitC = lived.state().rootLimitC()[night];
    double deficitK = keptC(limitC, marginK(lived, night)) - trace.ballMinC()[night];
    add(
        broken,
        lived,
        Rule.ROOT_BALL,
        night,
        trace.ballMinHour()[night],
        trace.ballMinC()[night],
        limitC,
        deficitK);
  }

  /** What a root ball has to keep, °C. */
  private static double keptC(double rootLimitC, double inHandK) {
    double keptC = rootLimitC + inHandK;
    return rootLimitC <= Rule.PLATEAU_SUFFICES_C ? Math.min(keptC, 0) : keptC;
  }

  /**
   * How much colder a night that broke nothing might have been at least, K (>= 0): the least that
   * root ball or air have to spare. A plant that does not harden is taken to bear a night of 2 K
   * below its storage range, which is the whole dose of a week.
   */
  double spareK(Lived lived, int night) {
    BallTrace trace = lived.trace();
    double ballC = trace.ballMinC()[night];
    double airC = trace.airMinC()[night];
    double keptK = marginK(lived, night);
    if (isOutOfTheWarm(lived, night)) {
      keptK = Math.max(keptK, Rule.OUT_OF_THE_WARM_K);
    }
    double spareK = ballC - keptC(lived.state().rootLimitC()[night], keptK);
    if (night < lived.state().budBreak()) {
      double shootLimitC = lived.state().shootLimitC()[night];
      spareK = Math.min(spareK, airC - shootLimitC - keptK);
    } else if (wokeUnderRoof(lived)) {
      spareK = Math.min(spareK, airC - species.newGrowthLimitC());
    }
    if (!species.group().hardens()) {
      spareK = Math.min(spareK, airC - species.minStoreC() + ChillingInjury.HARMLESS_DOSE_K);
    }
    if (!plant.frostProofPot() || freshRoots(lived, night)) {
      spareK = Math.min(spareK, ballC);
    }
    return Math.max(0, spareK);
  }

  /**
   * The air keeps the safety margin above today's shoot limit, until buds break; after that frost
   * on new growth is a matter of fleece, and of {@link #wokenGrowth} if a roof woke it.
   */
  private void shoots(Lived lived, int night, List<Lived.Broken> broken) {
    if (night >= lived.state().budBreak()) {
      return;
    }
    BallTrace trace = lived.trace();
    double limitC = lived.state().shootLimitC()[night];
    double deficitK = limitC + marginK(lived, night) - trace.airMinC()[night];
    add(
        broken,
        lived,
        Rule.SHOOTS,
        night,
        trace.airMinHour()[night],
        trace.airMinC()[night],
        limitC,
        deficitK);
  }

  /**
   * A plant that stood for a week under a roof, and that week above 5 °C, meets no night within 4 K
   * of its limits in its first week outside.
   */
  private void outOfTheWarm(Lived lived, int night, List<Lived.Broken> broken) {
    if (!isOutOfTheWarm(lived, night)) {
      return;
    }
    BallTrace trace = lived.trace();
    double rootLimitC = lived.state().rootLimitC()[night];
    double rootsMissK = keptC(rootLimitC, Rule.OUT_OF_THE_WARM_K) - trace.ballMinC()[night];
    double shootLimitC = lived.state().shootLimitC()[night];
    double shootsMissK =
        night < lived.state().budBreak()
            ? shootLimitC + Rule.OUT_OF_THE_WARM_K - trace.airMinC()[night]
            : Double.NEGATIVE_INFINITY;
    boolean roots = rootsMissK >= shootsMissK;
    add(
        broken,
        lived,
        Rule.OUT_OF_THE_WARM,
        night,
        roots ? trace.ballMinHour()[night] : trace.airMinHour()[night],
        roots ? trace.ballMinC()[night] : trace.airMinC()[night],
        roots ? rootLimitC : shootLimitC,
        Math.max(rootsMissK, shootsMissK));
  }

  private boolean isOutOfTheWarm(Lived lived, int night) {
    int[] path = lived.path();
    int inside = night;
    while (inside > night - WEEK && inside >= 0 && !roofed[path[inside]]) {
      inside--;
    }
    if (inside == night || inside < WEEK - 1) {
      return false;
    }
    for (int n = inside; n > inside - WEEK; n--) {
      if (!roofed[path[n]]) {
        return false;
      }
    }
    double weekC = winters.nights(lived.winter(), path[inside]).weekMeanC()[inside];
    return weekC > REST_CEILING_C;
  }

  /** A plant that does not harden is spared a harmful dose of chill. */
  private void chilling(Lived lived, int night, List<Lived.Broken> broken) {
    double[] airMinC = lived.trace().airMinC();
    double lowestC = species.minStoreC();
    if (species.group().hardens() || airMinC[night] >= lowestC) {
      return;
    }
    double dose = ChillingInjury.doseK(airMinC, night, lowestC);
    add(
        broken,
        lived,
        Rule.CHILLING,
        night,
        lived.trace().airMinHour()[night],
        airMinC[night],
        lowestC,
        ChillingInjury.excessK(dose));
  }

  /** Fresh growth made under a roof is not brought out into frost. */
  private void wokenGrowth(Lived lived, int night, List<Lived.Broken> broken) {
    if (night < lived.state().budBreak() || !wokeUnderRoof(lived)) {
      return;
    }
    double limitC = species.newGrowthLimitC();
    double airC = lived.trace().airMinC()[night];
    add(
        broken,
        lived,
        Rule.WOKEN_GROWTH,
        night,
        lived.trace().airMinHour()[night],
        airC,
        limitC,
        limitC - airC);
  }

  private boolean wokeUnderRoof(Lived lived) {
    int woke = lived.state().budBreak();
    return woke > 0 && woke <= lived.path().length && place(lived, woke - 1).roofed();
  }

  /** Freshly cut roots, and a pot that frost cracks, do not freeze. */
  private void ballFrozen(Lived lived, int night, List<Lived.Broken> broken) {
    double ice = lived.trace().edgeIceMax()[night];
    if (ice <= WET_FREEZE_ICE || (plant.frostProofPot() && !freshRoots(lived, night))) {
      return;
    }
    double ballC = lived.trace().ballMinC()[night];
    add(
        broken,
        lived,
        Rule.BALL_FROZEN,
        night,
        lived.trace().ballMinHour()[night],
        ballC,
        0,
        Math.max(1, -ballC));
  }

  private boolean freshRoots(Lived lived, int night) {
    if (plant.plannedRootWork().isEmpty()) {
      return false;
    }
    LocalDate planned = winters.season().day(winters.planNight(lived.winter(), night));
    LocalDate work = plant.plannedRootWork().get();
    return !planned.isBefore(work) && planned.isBefore(work.plusDays(FRESH_ROOT_DAYS));
  }

  /** No bud breaks in a place without enough light. */
  private void wakesInTheDark(Lived lived, int night, List<Lived.Broken> broken) {
    if (night >= lived.state().budBreak() && place(lived, night).light() == Light.DARK) {
      double weekC = winters.nights(lived.winter(), lived.path()[night]).weekMeanC()[night];
      add(
          broken,
          lived,
          Rule.WAKES_IN_THE_DARK,
          night,
          24 * night + 24,
          weekC,
          REST_CEILING_C,
          Math.max(1, weekC - REST_CEILING_C));
    }
  }

  /** No roof for a hardy plant at rest where a week would average above 5 °C. */
  private void tooWarm(Lived lived, int night, List<Lived.Broken> broken) {
    boolean hardy = species.group().restsCold() && species.group() != Group.TENDER_ROOTED_HARDY;
    boolean atRest = lived.state().dormant()[night] && night < lived.state().restEnd();
    if (hardy && atRest) {
      double weekC = winters.nights(lived.winter(), lived.path()[night]).weekMeanC()[night];
      add(
          broken,
          lived,
          Rule.TOO_WARM_AT_REST,
          night,
          24 * night + 24,
          weekC,
          REST_CEILING_C,
          weekC - REST_CEILING_C);
    }
  }

  /** No dark place for a plant in leaf. */
  private void tooDark(Lived lived, int night, List<Lived.Broken> broken) {
    Light light = place(lived, night).light();
    if (light == Light.DARK
        && lived.state().inLeaf(night, species.foliage())
        && night < lived.state().budBreak()) {
      add(
          broken,
          lived,
          Rule.TOO_DARK,
          night,
          24 * night + 24,
          lived.trace().airMeanC()[night],
          0,
          5);
    }
  }

  private void add(
      List<Lived.Broken> broken,
      Lived lived,
      Rule rule,
      int night,
      int hour,
      double foundC,
      double limitC,
      double deficitK) {
    if (deficitK <= 1e-9) {
      return;
    }
    Winter winter = winters.winter(lived.winter());
    Violation violation =
        new Violation(
            rule,
            winter.season(),
            winters.measuredOn(lived.winter(), hour / 24),
            place(lived, night).name(),
            foundC,
            limitC,
            deficitK);
    broken.add(new Lived.Broken(night, lived.path()[night], violation));
  }
}
