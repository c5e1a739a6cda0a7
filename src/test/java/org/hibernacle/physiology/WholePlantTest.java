package org.hibernacle.physiology;

import static org.hibernacle.physiology.SomeYear.SEASON;
import static org.hibernacle.physiology.SomeYear.live;
import static org.hibernacle.physiology.SomeYear.night;
import static org.hibernacle.physiology.SomeYear.wave;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

/** What must hold for every row of the species table, each lived through a whole winter. */
class WholePlantTest {
  private static final List<Species> HARDENING =
      SomePlant.CATALOGUE.species().stream().filter(s -> s.group().hardens()).toList();

  /** The first hard frost after a mild November; common practice, no source. */
  @Test
  void minusEightIsWorseAfterAMildNovemberThanInAColdJanuary() {
    for (Species species : HARDENING) {
      Plant plant = SomePlant.of(species).plant();
      PlantState mild = live(plant, n -> n < night(11, 30) ? 12 : -2);
      PlantState cold = live(plant, SomeYear::wave);
      double november = -8 - mild.rootLimitC()[night(11, 30)];
      double january = -8 - cold.rootLimitC()[night(1, 20)];
      double spanK = species.unhardenedLimitC() - species.rootLimitC();
      assertTrue(january - november > 0.9 * spanK, species.taxon() + ", roots");
      double shootsNovember = -8 - mild.shootLimitC()[night(11, 30)];
      double shootsJanuary = -8 - cold.shootLimitC()[night(1, 20)];
      double shootSpanK = Hardening.unhardenedShootC(species) - Hardening.shootLimitC(species);
      assertTrue(shootsJanuary - shootsNovember >= 0.9 * shootSpanK, species.taxon() + ", shoots");
    }
  }

  /**
   * After Howell and Weiser 1970 (J. Amer. Soc. Hort. Sci. 95:190-192) on apple bark: warmth takes
   * hardiness fast, cold gives it back in part. A week at 20 °C in January, then as before.
   */
  @Test
  void aWeekInAWarmRoomTakesLongerToMakeGood() {
    int in = night(1, 20);
    int out = in + 7;
    IntToDoubleFunction room = n -> n >= in && n < out ? 20 : wave(n);
    for (Species species : HARDENING) {
      Plant plant = SomePlant.of(species).plant();
      PlantState kept = live(plant, SomeYear::wave);
      PlantState warmed = live(plant, room);
      assertLostAndLateRegained(plant, kept, warmed, PlantState::rootLimitC, in, out);
      if (Hardening.shootLimitC(species) < Hardening.unhardenedShootC(species)) {
        assertLostAndLateRegained(plant, kept, warmed, PlantState::shootLimitC, in, out);
      }
    }
  }

  private static void assertLostAndLateRegained(
      Plant plant,
      PlantState kept,
      PlantState warmed,
      Function<PlantState, double[]> limit,
      int in,
      int out) {
    double[] before = limit.apply(kept);
    double[] after = limit.apply(warmed);
    String taxon = plant.species().taxon();
    double lostK = after[out] - before[out];
    double spanK = before[0] - before[in];
    assertTrue(lostK > 0.1 * spanK, taxon + " lost " + lostK + " K of " + spanK);
    int weekLater = out + (out - in);
    assertTrue(after[weekLater] - before[weekLater] > 0.1 * lostK, taxon + " is not whole again");
  }

  /** Smit-Spinks et al. 1985, Lindström and Nyström 1987; equality where nothing hardens. */
  @Test
  void rootsStandNoMoreThanTopsUntilMidwinter() {
    for (Species species : SomePlant.CATALOGUE.species()) {
      PlantState state = live(SomePlant.of(species).plant(), SomeYear::wave);
      for (int n = 0; n <= night(1, 15); n++) {
        String where = species.taxon() + ", " + SEASON.day(n);
        assertTrue(state.rootLimitC()[n] >= state.shootLimitC()[n], where);
      }
    }
  }

  /** Smit-Spinks et al. 1985 (roots), Howell and Weiser 1970 (tops). */
  @Test
  void onlyTopsWaitForShortDays() {
    for (Species species : HARDENING) {
      Plant plant = SomePlant.of(species).plant();
      PlantState shortDays = live(plant, SomeYear::wave, n -> 9);
      PlantState longDays = live(plant, SomeYear::wave, n -> 16);
      int midwinter = night(1, 15);
      assertEquals(
          shortDays.rootLimitC()[midwinter], longDays.rootLimitC()[midwinter], species.taxon());
      assertEquals(
          Hardening.unhardenedShootC(species), longDays.shootLimitC()[midwinter], species.taxon());
    }
  }

  /** A week of frost: on 1 September they buy next to nothing, on 1 November most of a top. */
  @Test
  void aColdSnapInEarlySeptemberBuysNoMidwinterTop() {
    for (Species species : HARDENING) {
      Acclimation shoots = Hardening.shoots(species);
      if (shoots.mostC() == shoots.leastC()) {
        continue;
      }
      double september = hardnessAfterSnap(species, night(9, 1));
      double november = hardnessAfterSnap(species, night(11, 1));
      assertTrue(september < 0.25, species.taxon() + " " + september);
      assertTrue(november > 0.8 && november > 3 * september, species.taxon() + " " + november);
    }
  }

  private static double hardnessAfterSnap(Species species, int first) {
    PlantState state =
        live(SomePlant.of(species).plant(), n -> n >= first && n < first + 7 ? 0 : 15);
    return Hardening.shoots(species).hardness(state.shootLimitC()[first + 7]);
  }

  @Test
  void disturbedRootsAndWeakPlantsStandLessAllWinter() {
    LocalDate repotted = LocalDate.of(2020, 4, 1);
    for (Species species : HARDENING) {
      PlantState whole = live(SomePlant.of(species).plant(), SomeYear::wave);
      PlantState weak = live(SomePlant.of(species).weak().plant(), SomeYear::wave);
      PlantState young = live(SomePlant.of(species).lastRootWork(repotted).plant(), SomeYear::wave);
      for (int n = night(10, 15); n < night(4, 1); n++) {
        assertTrue(young.rootLimitC()[n] > weak.rootLimitC()[n], species.taxon());
        assertTrue(weak.rootLimitC()[n] > whole.rootLimitC()[n], species.taxon());
      }
    }
  }

  /** A Japanese white pine on black pine roots stands in its ball what the black pine stands. */
  @Test
  void theRootstockSetsTheRootLimitAndTheTopItsOwn() {
    Plant grafted = SomePlant.of("Pinus parviflora").on("Pinus thunbergii").plant();
    PlantState state = live(grafted, SomeYear::wave);
    PlantState black = live(SomePlant.of("Pinus thunbergii").plant(), SomeYear::wave);
    PlantState white = live(SomePlant.of("Pinus parviflora").plant(), SomeYear::wave);
    int midwinter = night(1, 15);
    assertEquals(black.rootLimitC()[midwinter], state.rootLimitC()[midwinter]);
    assertEquals(white.shootLimitC()[midwinter], state.shootLimitC()[midwinter]);
    assertTrue(white.rootLimitC()[midwinter] < state.rootLimitC()[midwinter]);
  }
}
