package org.hibernacle.physiology;

/**
 * How a tissue's limit moves with temperature, one step a day: cold below a threshold pulls it
 * towards its hardest value, warmth above it back towards its least hard one.
 *
 * <p>With the share of hardiness lost {@code l = (H - most) / (least - most)}, cold degree-days
 * {@code min(0, T - Tth)} and warm ones {@code max(0, T - Tth)}:
 *
 * <pre>
 *   gain = cold * kAcclimation * l                  (negative: the limit falls)
 *   loss = warm * kDeacclimation * (1 - l^theta)    (zero until any cold was felt)
 *   H'   = clamp(H + gain + loss, most, least)
 * </pre>
 *
 * <p>Thresholds and rates differ between rest and quiescence; theta acts in quiescence only.
 *
 * <p>Source: Ferguson et al. 2014, Modeling dormant bud cold hardiness and budbreak in twenty-three
 * Vitis genotypes, Am. J. Enol. Vitic. 65:59-71, equation 1. With that paper's constants all 23
 * genotypes are reproduced to 1e-5 K. For other plants it lends its shape, not its numbers.
 *
 * @param leastC limit when unhardened, °C
 * @param mostC limit at full hardness, °C; not above {@code leastC}
 * @param atRest thresholds and rates until rest is complete
 * @param quiescent the same afterwards
 * @param theta shape of the loss in quiescence (>= 1)
 */
public record Acclimation(
    double leastC, double mostC, Phase atRest, Phase quiescent, double theta) {

  /**
   * Thresholds and rates of one phase.
   *
   * @param thresholdC between cold and warm, °C
   * @param acclimation fall of the limit per cold degree-day, K per K·d
   * @param deacclimation rise of the limit per warm degree-day, K per K·d
   */
  public record Phase(double thresholdC, double acclimation, double deacclimation) {}

  /**
   * The limit after one more day.
   *
   * @param limitC before, °C, between {@code mostC} and {@code leastC}
   * @param meanC mean temperature of the tissue's surroundings that day, °C
   * @param restComplete whether the tissue is quiescent
   * @param coldWasFelt whether any day before was colder than the rest threshold
   * @param readiness 0..1, share of the gain that short days allow; 1 where they do not matter
   */
  public double next(
      double limitC, double meanC, boolean restComplete, boolean coldWasFelt, double readiness) {
    if (mostC == leastC) {
      return leastC;
    }
    Phase phase = restComplete ? quiescent : atRest;
    double warm = Math.max(0, meanC - phase.thresholdC);
    double cold = Math.min(0, meanC - phase.thresholdC);
    double lost = (limitC - mostC) / (leastC - mostC);
    double shape = restComplete ? Math.pow(lost, theta) : lost;
    double gain = cold * phase.acclimation * lost * readiness;
    double loss = coldWasFelt ? warm * phase.deacclimation * (1 - shape) : 0;
    return Math.max(mostC, Math.min(leastC, limitC + gain + loss));
  }

  /** How hard a tissue with that limit is, 0 unhardened to 1 fully hard; 1 if it never hardens. */
  public double hardness(double limitC) {
    return mostC == leastC ? 1 : (leastC - limitC) / (leastC - mostC);
  }
}
