package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

/**
 * Which way limits go, and when they turn. That mild air hardens a tree at rest and softens it once
 * its chill is met is the common finding behind two phases (Ferguson et al. 2014).
 */
class PlantYearTurnsTest {
  private static final Season SEASON = new Season(2020, false);
  private static final int NIGHTS = 364;
  private static final int CORE_START = 92;
  private static final int REST_END = 180;
  private static final Species MAPLE = SomePlant.species("Acer palmatum");

  /** Days of 8 °C: cold for a plant at rest, warm for one that has had its chill. */
  @Test
  void mildDaysHardenUntilRestIsCompleteAndSoftenAfterwards() {
    PlantState maple = live(MAPLE, constant(8));
    assertEquals(REST_END, maple.restEnd());
    for (int n = 1; n < NIGHTS; n++) {
      assertTurns(n, maple.rootLimitC());
      assertTurns(n, maple.shootLimitC());
    }
  }

  private static void assertTurns(int night, double[] limitC) {
    double step = limitC[night] - limitC[night - 1];
    assertTrue(night <= REST_END ? step < 0 : step > 0, "night " + night + ": " + step);
  }

  /** After a winter at 2 °C, eight weeks of 20 °C leave next to nothing of the hardness. */
  @Test
  void springTakesTheHardnessAway() {
    double[] meanC = constant(2);
    Arrays.fill(meanC, NIGHTS - 56, NIGHTS, 20);
    PlantState maple = live(MAPLE, meanC);
    double hardest = Arrays.stream(maple.rootHardness()).max().orElseThrow();
    assertTrue(hardest > 0.9, "in winter " + hardest);
    assertTrue(maple.rootHardness()[NIGHTS - 1] < 0.35, "" + maple.rootHardness()[NIGHTS - 1]);
    double shootC = maple.shootLimitC()[NIGHTS - 1];
    assertTrue(shootC > maple.shootLimitC()[REST_END] / 2, "" + shootC);
    assertTrue(maple.rootHardness()[NIGHTS - 1] < maple.rootHardness()[NIGHTS - 30]);
  }

  /** A plant without a rest never wakes by heat, one with a rest does. */
  @Test
  void onlyWhatRestsHasABudBreakToForecast() {
    assertEquals(
        OptionalDouble.empty(), Rest.heatToBudBreakKh(SomePlant.species("Ficus microcarpa")));
    assertTrue(Rest.heatToBudBreakKh(MAPLE).isPresent());
    assertEquals(NIGHTS, live(SomePlant.species("Ficus microcarpa"), constant(20)).budBreak());
  }

  /** Chill enough on the last night before {@link #REST_END}, none before. */
  private static PlantState live(Species species, double[] meanC) {
    double[] portions = constant(0);
    portions[REST_END - 1] = 200;
    return PlantState.live(
        SomePlant.of(species).plant(),
        SEASON,
        new Surroundings(
            meanC,
            meanC,
            meanC,
            constant(10),
            portions,
            constant(0),
            constant(0),
            CORE_START,
            198,
            215));
  }

  private static double[] constant(double value) {
    double[] nights = new double[NIGHTS];
    Arrays.fill(nights, value);
    return nights;
  }
}
