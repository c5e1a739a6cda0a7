package org.hibernacle.planning;

import org.hibernacle.model.Container;
import org.hibernacle.model.Plant;

/**
 * What one person lifts: at most {@value #MOST_KG} kg, less for a wide pot.
 *
 * <p>The lift that is judged is a plain one: from the ground to a bench of 75 cm, now and then, no
 * turn, a poor grip (wet pots have no handles), hands half way up the pot, held out by half its
 * width and 20 cm. Two people are asked for at more than twice the weight limit of that {@link
 * Lift}: the limit itself is for work all day by nearly everyone and would want two for most pots
 * of 10 kg, while back pain was found to be clearly more frequent above twice the limit (Waters and
 * others 1999, Spine 24, from memory). A pot wider than 86 cm is beyond reach: never alone. See
 * docs/lifting.md.
 */
public final class Lifting {
  /** Never more alone, kg; load constant of the NIOSH equation. */
  public static final double MOST_KG = Lift.IDEAL_KG;

  /** From here on take care, kg; own choice, from the HSE's filter figures. */
  public static final double CAUTION_KG = 16;

  /** What two people carry at most, kg; above it pots stay where they are. Own round figure. */
  static final double TWO_PEOPLE_KG = 60;

  private static final double BENCH_CM = 75;
  private static final double BODY_CM = 20;
  private static final double POOR_GRIP_SHARE = 0.90;
  private static final double TIMES_THE_LIMIT = 2;

  private Lifting() {}

  /** Whether one pot of the row is more than two people should carry. */
  static boolean tooHeavyToCarry(Plant plant) {
    return Mass.wetKg(plant.container()) > TWO_PEOPLE_KG;
  }

  /** The lift that is judged; a long pot is held at its ends, its shorter side to the body. */
  static Lift plain(Container pot) {
    double handsCm = Math.min(BENCH_CM, pot.depthCm() / 2);
    return new Lift(BODY_CM + pot.widthCm() / 2, handsCm, BENCH_CM, 0, 1, POOR_GRIP_SHARE);
  }

  /** What one person lifts of such a pot, kg. */
  public static double aloneKg(Container pot) {
    return Math.min(MOST_KG, TIMES_THE_LIMIT * plain(pot).limitKg());
  }
}
