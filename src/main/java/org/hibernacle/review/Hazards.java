package org.hibernacle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;
import org.hibernacle.model.Plant;
import org.hibernacle.physiology.ChillingInjury;
import org.hibernacle.planning.Life;
import org.hibernacle.planning.Rule;

/** What threatened a plant along one life. */
final class Hazards {
  /**
   * Index of {@link org.hibernacle.physiology.Drying} at which half would be harmed; own choice.
   */
  private static final double DRYING_HALF = 1.5;

  private static final double DRYING_SPREAD = 0.4;

  /** {@link Warmth} that half bear: four weeks at 10 °C in a frosty winter; own choice. */
  private static final double WARMTH_K_NIGHTS = 140;

  /** Awake for that long in the dark; own choice. */
  private static final double DARK_NIGHTS = 21;

  private static final double WARMTH_SPREAD = 0.5;

  /** Storage limits of plants that do not harden are laid on the careful side by that much, K. */
  private static final double CHILL_CAUTION_K = 2;

  private static final double CUT_ROOTS_CHANCE = 0.8;

  private final Plant plant;
  private final Life life;

  private Hazards(Plant plant, Life life) {
    this.plant = plant;
    this.life = life;
  }

  /** All that there were. */
  static List<Hazard> of(
      Plant plant,
      Life life,
      Tissue roots,
      Tissue shoots,
      Warmth warmth,
      int firstCut,
      int lastCut) {
    Hazards all = new Hazards(plant, life);
    List<Hazard> hazards = new ArrayList<>();
    hazards.add(all.cold(roots, Cause.FROZEN_ROOTS));
    hazards.add(all.cold(shoots, Cause.FROZEN_SHOOTS));
    hazards.add(all.growth());
    hazards.add(all.drying());
    hazards.add(all.warmth(warmth));
    if (!plant.species().group().hardens()) {
      hazards.add(all.chill());
    }
    if (firstCut < lastCut) {
      hazards.add(all.cutRoots(firstCut, lastCut));
    }
    return hazards;
  }

  /** A hazard that adds up, of one name. */
  private static Hazard hazard(Cause cause, IntToDoubleFunction chance) {
    return hazard(chance, n -> cause, n -> n);
  }

  private static Hazard hazard(
      IntToDoubleFunction chance, IntFunction<Cause> cause, IntUnaryOperator day) {
    return new Hazard() {
      @Override
      public double chance(int night) {
        return chance.applyAsDouble(night);
      }

      @Override
      public Cause cause(int night) {
        return cause.apply(night);
      }

      @Override
      public int day(int night) {
        return day.applyAsInt(night);
      }
    };
  }

  /** What does not harden is chilled while nothing freezes; there is no frost above 0 °C. */
  private Hazard cold(Tissue tissue, Cause whenHard) {
    boolean hardens = plant.species().group().hardens();
    return hazard(
        n -> n < tissue.end() ? Hazard.below(tissue.marginK(n)) : 0,
        n -> {
          if (!hardens && tissue.minC()[n] > 0) {
            return Cause.CHILLED;
          }
          return tissue.isHardened(n) ? whenHard : Cause.CAUGHT_UNHARDENED;
        },
        n -> tissue.minHour()[n] / 24);
  }

  private Hazard growth() {
    double limitC = plant.species().newGrowthLimitC();
    return hazard(
        n -> n >= life.state().budBreak() ? Hazard.below(life.trace().airMinC()[n] - limitC) : 0,
        n -> Cause.FROST_ON_WOKEN_GROWTH,
        n -> life.trace().airMinHour()[n] / 24);
  }

  private Hazard drying() {
    return hazard(
        Cause.DRIED_WHILE_FROZEN, n -> Hazard.past(life.dryness()[n], DRYING_HALF, DRYING_SPREAD));
  }

  private Hazard warmth(Warmth warmth) {
    double[] index = new double[life.nights()];
    for (Life.OnNight b : life.limitsBroken()) {
      if (b.violation().rule() == Rule.WAKES_IN_THE_DARK) {
        index[b.night()] += 1 / DARK_NIGHTS;
      }
    }
    for (int n = 0; n < index.length; n++) {
      index[n] += warmth.overK()[n] / WARMTH_K_NIGHTS + (n > 0 ? index[n - 1] : 0);
    }
    return hazard(Cause.WOKE_IN_STORE, n -> Hazard.past(index[n], 1, WARMTH_SPREAD));
  }

  private Hazard chill() {
    double lowestC = plant.species().minStoreC();
    double[] airMinC = life.trace().airMinC();
    return hazard(
        n -> {
          double dose = ChillingInjury.doseK(airMinC, n, lowestC);
          double overK = ChillingInjury.excessK(dose) - CHILL_CAUTION_K;
          return dose == 0 ? 0 : Hazard.normal(overK / Hazard.LIMIT_SD_K);
        },
        n -> Cause.CHILLED,
        n -> life.trace().airMinHour()[n] / 24);
  }

  private Hazard cutRoots(int firstCut, int lastCut) {
    boolean[] frozen = new boolean[life.nights()];
    for (Life.OnNight b : life.limitsBroken()) {
      boolean cut = b.night() >= firstCut && b.night() < lastCut;
      frozen[b.night()] |= cut && b.violation().rule() == Rule.BALL_FROZEN;
    }
    return hazard(Cause.CUT_ROOTS_FROZEN, n -> frozen[n] ? CUT_ROOTS_CHANCE : 0);
  }
}
