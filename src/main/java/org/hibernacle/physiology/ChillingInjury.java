package org.hibernacle.physiology;

/**
 * Harm that cold above freezing does to plants that do not harden, by dose: how far and for how
 * many nights of a week the air falls below the lowest temperature the species is stored at.
 *
 * <p>Chilling injury grows with the depth of the cold and with its length and passes if warmth
 * returns in time (Lyons 1973, Annu. Rev. Plant Physiol. 24:445-466; Poole and Conover 1993 for
 * foliage plants). The form, the week and the harmless dose are own choices, laid so that three
 * nights of a week a kelvin too cold do harm, as one night of more than 2 K does, and a night or
 * two that graze the limit do not. The limits themselves are thresholds from practice.
 */
public final class ChillingInjury {
  /** Nights over which the dose is summed; what lies further back is mended. */
  public static final int WINDOW_NIGHTS = 7;

  /** Largest dose in a window that does no harm, kelvin times nights. */
  public static final double HARMLESS_DOSE_K = 2;

  private ChillingInjury() {}

  /**
   * What the week up to a night adds up to.
   *
   * @param airMinC lowest air of each night, °C
   * @param night last of the week; a week that begins before the first night is cut
   * @param lowestStoreC the species' lowest storage temperature, °C
   * @return kelvin times nights, 0 or more
   */
  public static double doseK(double[] airMinC, int night, double lowestStoreC) {
    double dose = 0;
    for (int n = Math.max(0, night - WINDOW_NIGHTS + 1); n <= night; n++) {
      dose += Math.max(0, lowestStoreC - airMinC[n]);
    }
    return dose;
  }

  /** By how much a night of that week, taken evenly, was too cold, K; negative if harmless. */
  public static double excessK(double doseK) {
    return (doseK - HARMLESS_DOSE_K) / WINDOW_NIGHTS;
  }

  /** The dose that has that excess. */
  public static double doseOfExcess(double excessK) {
    return HARMLESS_DOSE_K + WINDOW_NIGHTS * excessK;
  }
}
