package org.hibernacle.thermal;

/**
 * What is taken for granted about root balls, since nobody measures it. Plans use {@link #USUAL};
 * other guesses show how much hangs on it (docs/sensitivity.md).
 *
 * @param waterFraction water in the ball, m3/m3 (0..0.9)
 * @param airExchangeShare heat passed between ball and air, and lost to the night sky, as a share
 *     of what {@link Exchange} computes (> 0)
 */
public record BallGuess(double waterFraction, double airExchangeShare) {
  /** What every plan rests on. */
  public static final BallGuess USUAL = new BallGuess(RootBall.WATER_FRACTION, 1);

  public BallGuess {
    if (!(waterFraction >= 0 && waterFraction <= 0.9)) {
      throw new IllegalArgumentException("waterFraction must be 0..0.9 but is " + waterFraction);
    }
    if (!(airExchangeShare > 0)) {
      throw new IllegalArgumentException("airExchangeShare must be > 0: " + airExchangeShare);
    }
  }

  /** How strongly such a ball is coupled. */
  Exchange apply(Exchange usual) {
    return new Exchange(
        usual.airWPerK() * airExchangeShare,
        usual.baseWPerK(),
        usual.skyWPerK() * airExchangeShare);
  }
}
