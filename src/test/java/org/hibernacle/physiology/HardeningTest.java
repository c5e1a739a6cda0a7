package org.hibernacle.physiology;

import static org.hibernacle.physiology.SomeYear.NIGHTS;
import static org.hibernacle.physiology.SomeYear.SEASON;
import static org.hibernacle.physiology.SomeYear.live;
import static org.hibernacle.physiology.SomeYear.night;
import static org.hibernacle.physiology.SomeYear.wave;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.SplittableRandom;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Group;
import org.hibernacle.model.HardinessZone;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

/**
 * What growers and the literature named in docs/models/hardening.md expect of the fitted kernel.
 */
class HardeningTest {
  private static final Plant MAPLE = SomePlant.of("Acer palmatum").plant();

  /** Common practice: the first hard frost after a mild autumn does more harm than midwinter. */
  @Test
  void minusEightAfterAMildNovemberIsWorseThanInAColdJanuary() {
    PlantState mildAutumn = live(MAPLE, night -> night < night(11, 30) ? 11 : 2);
    PlantState coldWinter = live(MAPLE, SomeYear::wave);
    double november = -8 - mildAutumn.rootLimitC()[night(11, 30)];
    double january = -8 - coldWinter.rootLimitC()[night(1, 20)];
    assertTrue(january > 0 && november < -3, "margins, K: " + november + " and " + january);
    double shootsNovember = -8 - mildAutumn.shootLimitC()[night(11, 30)];
    double shootsJanuary = -8 - coldWinter.shootLimitC()[night(1, 20)];
    assertTrue(shootsNovember < shootsJanuary - 3, shootsNovember + " and " + shootsJanuary);
  }

  /** Howell and Weiser 1970 on apple bark: what a warm room takes comes back slowly, in part. */
  @Test
  void warmDaysCostHardinessThatTakesLongerToRegain() {
    for (boolean restComplete : new boolean[] {false, true}) {
      Acclimation shoots = Hardening.shoots(MAPLE.species());
      double fullC = shoots.mostC() + 0.02 * (shoots.leastC() - shoots.mostC());
      double limitC = fullC;
      int warmDays = 5;
      for (int day = 0; day < warmDays; day++) {
        limitC = shoots.next(limitC, 20, restComplete, true, 1);
      }
      double lostK = limitC - fullC;
      int days = 0;
      while (limitC > fullC + 0.02 * lostK) {
        limitC = shoots.next(limitC, 0, restComplete, true, 1);
        days++;
      }
      assertTrue(lostK > 1 && days > warmDays, lostK + " K lost, regained in " + days + " days");
    }
  }

  /**
   * Lindström and Nyström 1987, Smit-Spinks et al. 1985: roots come some weeks later and less far.
   * Left out are the two rows of zone 9, whose tops the zone leaves nothing to gain.
   */
  @Test
  void rootsHardenLaterAndLessDeeplyThanShoots() {
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (!species.group().hardens() || species.zone().zone() >= 9) {
        continue;
      }
      Plant plant = SomePlant.of(species).plant();
      PlantState state = live(plant, SomeYear::wave);
      Acclimation roots = Hardening.roots(plant, SEASON);
      Acclimation shoots = Hardening.shoots(species);
      assertTrue(shoots.mostC() < roots.mostC(), species.taxon());
      int rootsHalf = firstAtHalf(roots, state.rootLimitC());
      int shootsHalf = firstAtHalf(shoots, state.shootLimitC());
      int laterDays = rootsHalf - shootsHalf;
      assertTrue(laterDays >= 10 && laterDays <= 30, species.taxon() + ": " + laterDays + " days");
      int midwinter = night(1, 15);
      assertTrue(state.shootLimitC()[midwinter] < state.rootLimitC()[midwinter], species.taxon());
    }
  }

  private static int firstAtHalf(Acclimation acclimation, double[] limitC) {
    for (int n = 0; n < limitC.length; n++) {
      if (acclimation.hardness(limitC[n]) >= 0.5) {
        return n;
      }
    }
    throw new AssertionError("never half hard");
  }

  /** docs/models/hardening.md: shoots in about three weeks of near-freezing days, roots in six. */
  @Test
  void nearFreezingDaysHardenShootsInThreeWeeksAndRootsInSix() {
    int shoots = daysToHarden(Hardening.shoots(MAPLE.species()));
    int roots = daysToHarden(Hardening.roots(MAPLE, SEASON));
    assertTrue(shoots >= 16 && shoots <= 24, "shoots, days: " + shoots);
    assertTrue(roots >= 36 && roots <= 46, "roots, days: " + roots);
  }

  /** Days at 2 °C until all but a fiftieth is gained. */
  private static int daysToHarden(Acclimation acclimation) {
    double limitC = acclimation.leastC();
    int days = 0;
    while (acclimation.hardness(limitC) < 0.98) {
      limitC = acclimation.next(limitC, 2, false, true, 1);
      days++;
    }
    return days;
  }

  /** Mityga and Lanphear 1971: roots lost their hardiness more slowly in spring. */
  @Test
  void rootsLoseHardinessMoreSlowlyThanShoots() {
    Acclimation roots = Hardening.roots(MAPLE, SEASON);
    Acclimation shoots = Hardening.shoots(MAPLE.species());
    double root = roots.mostC();
    double shoot = shoots.mostC();
    for (int day = 0; day < 10; day++) {
      root = roots.next(root, 14, true, true, 1);
      shoot = shoots.next(shoot, 14, true, true, 1);
      assertTrue(roots.hardness(root) > shoots.hardness(shoot), "day " + day);
    }
  }

  /** Smit-Spinks et al. 1985: only cold hardens roots. */
  @Test
  void rootsIgnoreDayLengthAndShootsWaitForShortDays() {
    PlantState shortDays = live(MAPLE, SomeYear::wave, n -> 9);
    PlantState longDays = live(MAPLE, SomeYear::wave, n -> 15);
    int midwinter = night(1, 15);
    assertEquals(shortDays.rootLimitC()[midwinter], longDays.rootLimitC()[midwinter]);
    assertEquals(-7, longDays.shootLimitC()[midwinter]);
    assertTrue(shortDays.shootLimitC()[midwinter] < -18);
    assertEquals(0, Hardening.shortDayReadiness(13.5));
    assertEquals(0.5, Hardening.shortDayReadiness(12.5));
    assertEquals(1, Hardening.shortDayReadiness(11.5));
  }

  /** A week of frost on 1 September, days of 13.4 h, hardens the tops next to nothing. */
  @Test
  void aColdSnapInSeptemberDoesNotBuyAMidwinterTop() {
    PlantState state =
        live(MAPLE, n -> n >= night(9, 1) && n < night(9, 8) ? 0 : n < night(9, 1) ? 18 : 14);
    Acclimation shoots = Hardening.shoots(MAPLE.species());
    double hardness = shoots.hardness(state.shootLimitC()[night(9, 8)]);
    assertTrue(hardness < 0.25, "hardness " + hardness);
  }

  @Test
  void subtropicalAndTropicalPlantsHaveOneLimitAllWinter() {
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (species.group().hardens()) {
        continue;
      }
      PlantState state = live(SomePlant.of(species).plant(), SomeYear::wave);
      for (int n = 0; n < NIGHTS; n += 10) {
        assertEquals(species.unhardenedLimitC(), state.rootLimitC()[n], species.taxon());
        assertEquals(species.unhardenedLimitC(), state.shootLimitC()[n], species.taxon());
      }
    }
  }

  /** Mityga and Lanphear 1971: young roots hardly harden; a weak plant keeps less in hand. */
  @Test
  void youngRootsAndWeakPlantsAreShallower() {
    double whole = limit(SomePlant.of("Acer palmatum"));
    assertEquals(-9, whole);
    assertEquals(-3.75, limit(SomePlant.of("Acer palmatum").lastRootWork(date(2020, 3, 15))));
    assertEquals(-7.25, limit(SomePlant.of("Acer palmatum").weak()));
    assertEquals(
        -2 - 7 * 0.25 * 0.75,
        limit(SomePlant.of("Acer palmatum").weak().lastRootWork(date(2020, 3, 15))));
  }

  /** Half a year before the season starts, and the season's own end, are the two edges. */
  @Test
  void rootWorkCountsForAboutAYear() {
    assertEquals(-9, limit(SomePlant.of("Acer palmatum").lastRootWork(date(2019, 12, 31))));
    assertEquals(-3.75, limit(SomePlant.of("Acer palmatum").lastRootWork(date(2020, 1, 1))));
    assertEquals(-3.75, limit(SomePlant.of("Acer palmatum").lastRootWork(date(2021, 6, 30))));
    assertEquals(-9, limit(SomePlant.of("Acer palmatum").lastRootWork(date(2021, 7, 1))));
  }

  @Test
  void theKeepersOwnLimitAndTheRootstockComeFirst() {
    assertEquals(-4, limit(SomePlant.of("Acer palmatum").ownRootLimit(-4).weak()));
    assertEquals(1, limit(SomePlant.of("Acer palmatum").ownRootLimit(1)), "warmer than unhardened");
    Acclimation never =
        Hardening.roots(SomePlant.of("Acer palmatum").ownRootLimit(1).plant(), SEASON);
    assertEquals(1, never.leastC(), "and then it never hardens");
    Acclimation fig =
        Hardening.roots(SomePlant.of("Ficus microcarpa").ownRootLimit(3).plant(), SEASON);
    assertEquals(3, fig.leastC(), "nor does a plant that can not");
    assertEquals(3, fig.mostC());
    double olive = SomePlant.species("Olea europaea").rootLimitC();
    assertEquals(olive, limit(SomePlant.of("Acer palmatum").on("Olea europaea")));
  }

  /** Zone 5b ends at -15 °F, -26.1 °C; fine twigs 5 K above. Tropicals have no zone rule. */
  @Test
  void theShootLimitFollowsFromTheZone() {
    assertEquals(-26.11 + 5, Hardening.shootLimitC(MAPLE.species()), 0.01);
    assertEquals("5b", MAPLE.species().zone().toString());
    assertEquals(-26.11, HardinessZone.parse("5b").coldEndC(), 0.01);
    Species ficus = SomePlant.species("Ficus microcarpa");
    assertEquals(ficus.unhardenedLimitC(), Hardening.shootLimitC(ficus));
  }

  @Test
  void limitsOfEveryRowAreInOrder() {
    for (Species species : SomePlant.CATALOGUE.species()) {
      Acclimation roots = Hardening.roots(SomePlant.of(species).plant(), SEASON);
      Acclimation shoots = Hardening.shoots(species);
      String taxon = species.taxon();
      assertTrue(roots.mostC() <= roots.leastC() && shoots.mostC() <= shoots.leastC(), taxon);
      boolean warmest = species.group() == Group.MEDITERRANEAN && species.zone().coldEndC() > -6.5;
      assertTrue(warmest || shoots.mostC() <= roots.mostC(), taxon + ": tops stand more");
      assertTrue(shoots.leastC() <= roots.leastC(), taxon + ": unhardened tops too");
      if (species.group().hardens()) {
        assertTrue(species.newGrowthLimitC() >= shoots.leastC(), taxon + ": new growth is tender");
      }
      assertEquals(species.group().hardens(), roots.mostC() < roots.leastC(), taxon);
      boolean topsHarden = species.group().hardens() && !warmest;
      assertEquals(topsHarden, shoots.mostC() < shoots.leastC(), taxon);
    }
  }

  /** Until rest is complete, and from the same start. */
  @Test
  void aColderAutumnNeverLeavesAPlantLessHardy() {
    long seed = 8_201;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 50; run++) {
      double[] mildC = new double[NIGHTS];
      double[] coldC = new double[NIGHTS];
      for (int n = 0; n < NIGHTS; n++) {
        mildC[n] = wave(n) + random.nextDouble(-8, 8);
        coldC[n] = mildC[n] - Math.max(0, random.nextDouble(-4, 6));
      }
      PlantState mild = live(MAPLE, n -> mildC[n]);
      PlantState cold = live(MAPLE, n -> coldC[n]);
      for (int n = 0; n < Math.min(mild.restEnd(), cold.restEnd()); n++) {
        String where = "seed " + seed + ", run " + run + ", night " + n;
        assertTrue(cold.rootLimitC()[n] <= mild.rootLimitC()[n] + 1e-9, where);
        assertTrue(cold.shootLimitC()[n] <= mild.shootLimitC()[n] + 1e-9, where);
      }
    }
  }

  private static double limit(SomePlant plant) {
    return Hardening.midwinterRootLimitC(plant.plant(), SEASON);
  }

  private static LocalDate date(int year, int month, int day) {
    return LocalDate.of(year, month, day);
  }
}
