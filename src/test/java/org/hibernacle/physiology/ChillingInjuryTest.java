package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Group;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

/** The dose of docs/models/chilling-injury.md. */
class ChillingInjuryTest {
  private static final double LOWEST_C = 12;

  @Test
  void nightsAtOrAboveTheLimitAddNothing() {
    assertEquals(0, dose(12, 12, 25, 13, 12.1, 12, 30));
  }

  @Test
  void theDoseIsTheSumOfWhatSevenNightsFallShort() {
    assertEquals(0.5 + 2 + 4, dose(11.5, 14, 10, 8, 12, 13, 20), 1e-12);
    assertEquals(3, dose(5, 11, 12, 12, 11, 12, 12, 11), 1e-12, "the eighth night back is mended");
    assertEquals(1.5, dose(11, 11.5), 1e-12, "a week cut short by the start of the file");
  }

  /** What growers hold: one cool night harms no one, three do; common practice, no source. */
  @Test
  void grazingHurtsNoOneThreeColdNightsOrADeepOneDo() {
    assertFalse(harms(12, 12, 12, 12, 12, 12, 11.5), "a single night half a kelvin under");
    assertFalse(harms(12, 11.9, 12, 11.9, 11.9, 12, 11.9), "a week of tenths");
    assertFalse(harms(11, 12, 12, 12, 12, 12, 11), "the second night a kelvin under");
    assertTrue(harms(11, 12, 12, 11, 12, 12, 11), "the third");
    assertFalse(harms(12, 12, 12, 12, 12, 12, 10), "2 K in one night");
    assertTrue(harms(12, 12, 12, 12, 12, 12, 9), "one deep night");
    assertTrue(harms(11.5, 11.5, 11.5, 11.5, 11.5, 11.5, 11.5), "a week half a kelvin under");
  }

  /**
   * Figs, umbrella trees and other foliage plants took no harm from one to four days at 7.8 °C, and
   * some none at 2.2 °C (Poole and Conover 1993, CFREC-Apopka Research Report RH-93-6): a bound
   * that lies far beyond the dose at which a plan acts. Chilling injury is known below 8 to 12 °C
   * (Lyons 1973): the storage limits of most tropical rows lie at the warm end of that or above.
   */
  @Test
  void theDoseActsOnTheSafeSideOfWhatWasPublished() {
    for (String taxon : new String[] {"Ficus benjamina", "Heptapleurum arboricola"}) {
      double lowestC = SomePlant.species(taxon).minStoreC();
      assertTrue(lowestC >= 12, taxon);
      double[] oneNight = {7.8};
      assertTrue(
          ChillingInjury.excessK(ChillingInjury.doseK(oneNight, 0, lowestC)) > 0,
          taxon + " stood four days of it");
    }
  }

  /**
   * Under the dose, the air of no single night comes near the limits of a tropical plant itself: a
   * night that uses up the whole dose lies above the unhardened limit.
   */
  @Test
  void aDeepNightIsTooDeepBeforeTheLimitIsReached() {
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (species.group() == Group.TROPICAL) {
        double deepestC = species.minStoreC() - ChillingInjury.HARMLESS_DOSE_K;
        assertTrue(deepestC >= species.unhardenedLimitC(), species.taxon());
      }
    }
  }

  @Test
  void colderNightsNeverMakeTheDoseSmaller() {
    double[] mild = {13, 11, 12, 10.5, 14, 11.9, 12};
    for (int night = 0; night < mild.length; night++) {
      double[] colder = mild.clone();
      colder[night] -= 1.3;
      assertTrue(dose(colder) >= dose(mild));
    }
    double[] all = mild.clone();
    Arrays.setAll(all, n -> mild[n] - 5);
    assertEquals(dose(mild) + 35 - (1 + 2), dose(all), 1e-12, "13 and 14 °C start above the limit");
  }

  @Test
  void excessIsSpreadOverTheWeekAndBack() {
    assertEquals(0, ChillingInjury.excessK(2), 1e-12);
    assertEquals(0.5, ChillingInjury.excessK(5.5), 1e-12);
    assertEquals(5.5, ChillingInjury.doseOfExcess(0.5), 1e-12);
  }

  private static boolean harms(double... airMinC) {
    return ChillingInjury.excessK(dose(airMinC)) > 1e-9;
  }

  private static double dose(double... airMinC) {
    return ChillingInjury.doseK(airMinC, airMinC.length - 1, LOWEST_C);
  }
}
