package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
import org.hibernacle.SomeWinter;
import org.hibernacle.model.Light;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.physiology.PlantState;
import org.hibernacle.thermal.BallTrace;
import org.junit.jupiter.api.Test;

/**
 * One method a rule of docs/planning.md, with the value or the night on either side of its limit.
 * The plant's winter is laid out by hand; only the air of the places is computed.
 */
class RulesTest {
  private static final int BENCH = 0;
  private static final int SHED_AT_FIVE = 1;
  private static final int SHED_A_TENTH_WARMER = 2;
  private static final int GLASS = 3;

  /** 5 °C outside all year, so that a place's week is at 5 °C plus what warms it. */
  private static final WintersOnFile WINTERS =
      new WintersOnFile(
          new Season(2026, false),
          List.of(SomeWinter.wholeYear(day -> SomeWinter.steady(5))),
          List.of(
              SomePlace.of(PlaceKind.BENCH).place(),
              SomePlace.of(PlaceKind.COLD_STORE).named("SHED").warmerBy(0).place(),
              SomePlace.of(PlaceKind.COLD_STORE).named("WARMER").warmerBy(0.1).place(),
              SomePlace.of(PlaceKind.FROST_FREE_ROOM)
                  .named("GLASS")
                  .warmerBy(-1)
                  .light(Light.BRIGHT)
                  .place()),
          SomeWinter.LATITUDE_DEG);

  private static final int NIGHTS = 364;
  private static final double MARGIN_K = 2;

  /** Night of 28 November. */
  private static final int NIGHT = 150;

  private final double[] ballMinC = filled(5);
  private final int[] ballMinHour = noons();
  private final double[] edgeIceMax = filled(0);
  private final double[] airMinC = filled(5);
  private final double[] rootLimitC = filled(-9);
  private final double[] shootLimitC = filled(-20);
  private final boolean[] dormant = new boolean[NIGHTS];
  private final boolean[] bare = new boolean[NIGHTS];
  private final int[] path = new int[NIGHTS];
  private int restEnd = NIGHTS;
  private int budBreak = NIGHTS;
  private Plant plant = SomePlant.of("Acer palmatum").plant();

  @Test
  void anEasyWinterBreaksNothing() {
    assertEquals(List.of(), judge());
  }

  @Test
  void theRootBallKeepsTheMarginAboveItsLimit() {
    ballMinC[NIGHT] = -7;
    assertEquals(List.of(), judge());
    ballMinC[NIGHT] = -7.25;
    ballMinHour[NIGHT] = 24 * NIGHT + 31;
    assertEquals(
        new Violation(
            Rule.ROOT_BALL,
            SomeWinter.SEASON,
            LocalDate.of(2020, 11, 29),
            "BENCH",
            -7.25,
            -9,
            0.25),
        only(NIGHT));
  }

  @Test
  void aBallOnItsPlateauIsSafeIfTheLimitLiesClearlyBelow() {
    rootLimitC[NIGHT] = -0.5;
    ballMinC[NIGHT] = 0;
    assertEquals(List.of(), judge());
    ballMinC[NIGHT] = -0.1;
    assertEquals(0.1, only(NIGHT).deficitK(), 1e-12);
    rootLimitC[NIGHT] = -0.4;
    ballMinC[NIGHT] = 0;
    assertEquals(1.6, only(NIGHT).deficitK(), 1e-12);
    ballMinC[NIGHT] = 1.6;
    assertEquals(List.of(), judge());
  }

  @Test
  void theAirKeepsTheMarginAboveTheShootLimitUntilBudsBreak() {
    airMinC[NIGHT] = -18;
    assertEquals(List.of(), judge());
    airMinC[NIGHT] = -18.5;
    assertEquals(Rule.SHOOTS, only(NIGHT).rule());
    assertEquals(0.5, only(NIGHT).deficitK(), 1e-12);
    budBreak = NIGHT + 1;
    assertEquals(Rule.SHOOTS, only(NIGHT).rule());
    budBreak = NIGHT;
    assertEquals(List.of(), judge());
  }

  /** The warmer shed is at 5.1 °C; limits -9 and -20 °C. */
  @Test
  void outOfTheWarmAWeekIsSparedNightsCloseToTheLimits() {
    bare(true);
    restEnd = 0;
    for (int n = NIGHT - 7; n < NIGHT; n++) {
      path[n] = SHED_A_TENTH_WARMER;
    }
    ballMinC[NIGHT + 6] = -5;
    assertEquals(List.of(), judge(), "4 K are kept");
    ballMinC[NIGHT + 6] = -5.5;
    assertEquals(Rule.OUT_OF_THE_WARM, only(NIGHT + 6).rule());
    assertEquals(0.5, only(NIGHT + 6).deficitK(), 1e-12);
    assertEquals(0, only(NIGHT + 6).belowLimitK());
    path[NIGHT - 7] = BENCH;
    assertEquals(List.of(), judge(), "six nights do not soften it");
    path[NIGHT - 7] = SHED_A_TENTH_WARMER;
    ballMinC[NIGHT + 7] = -5.5;
    assertEquals(1, judge().size(), "a week is enough");
    ballMinC[NIGHT + 6] = 5;
    airMinC[NIGHT] = -17;
    assertEquals(1, only(NIGHT).deficitK(), 1e-12);
    budBreak = NIGHT;
    assertEquals(Rule.WOKEN_GROWTH, only(NIGHT).rule(), "open buds have a rule of their own");
    budBreak = NIGHTS;
    Arrays.fill(path, NIGHT - 7, NIGHT, SHED_AT_FIVE);
    assertEquals(List.of(), judge(), "5 °C are no warmth");
  }

  /** Lowest storage temperature of the fig is 12 °C; its limits are out of the way. */
  @Test
  void aTropicalPlantIsSparedTooMuchChillInAWeek() {
    plant = SomePlant.of("Ficus microcarpa").plant();
    Arrays.fill(airMinC, 12);
    airMinC[NIGHT - 6] = 11;
    airMinC[NIGHT - 3] = 11;
    assertEquals(List.of(), judge(), "two nights of a kelvin");
    airMinC[NIGHT - 3] = 11.5;
    airMinC[NIGHT] = 11.5;
    assertEquals(List.of(), judge(), "2 K in all are borne");
    airMinC[NIGHT] = 11;
    assertEquals(Rule.CHILLING, only(NIGHT).rule());
    assertEquals(11, only(NIGHT).foundC());
    assertEquals(12, only(NIGHT).limitC());
    assertEquals(0.5 / 7, only(NIGHT).deficitK(), 1e-12);
    airMinC[NIGHT] = 12;
    airMinC[NIGHT + 1] = 11;
    assertEquals(List.of(), judge(), "the first of three is eight nights back");
    airMinC[NIGHT - 6] = 12;
    airMinC[NIGHT - 3] = 12;
    airMinC[NIGHT + 1] = 9.9;
    assertEquals(0.1 / 7, only(NIGHT + 1).deficitK(), 1e-12);
    plant = SomePlant.of("Acer palmatum").plant();
    Arrays.fill(airMinC, 1);
    assertEquals(List.of(), judge(), "plants that harden want the cold");
  }

  /** New growth of the maple stands -1 °C. */
  @Test
  void growthThatARoofWokeIsNotFrosted() {
    path[NIGHT - 1] = GLASS;
    budBreak = NIGHT;
    airMinC[NIGHT + 20] = -1;
    assertEquals(List.of(), judge());
    airMinC[NIGHT + 20] = -1.5;
    assertEquals(Rule.WOKEN_GROWTH, only(NIGHT + 20).rule());
    assertEquals(0.5, only(NIGHT + 20).deficitK(), 1e-12);
    airMinC[NIGHT - 1] = -1.5;
    assertEquals(1, judge().size(), "before buds broke it harmed nothing");
    path[NIGHT - 1] = BENCH;
    path[NIGHT] = GLASS;
    assertEquals(List.of(), judge(), "growth made outdoors is a matter of fleece");
  }

  @Test
  void noBudBreaksInADarkPlace() {
    bare(true);
    path[NIGHT] = SHED_AT_FIVE;
    budBreak = NIGHT + 1;
    assertEquals(List.of(), judge());
    budBreak = NIGHT;
    assertEquals(Rule.WAKES_IN_THE_DARK, only(NIGHT).rule());
    assertEquals("SHED", only(NIGHT).place());
    path[NIGHT] = GLASS;
    assertEquals(List.of(), judge());
  }

  @Test
  void aHardyPlantAtRestIsNotKeptAboveFiveDegrees() {
    bare(true);
    Arrays.fill(dormant, true);
    path[NIGHT] = SHED_AT_FIVE;
    assertEquals(List.of(), judge());
    path[NIGHT] = SHED_A_TENTH_WARMER;
    assertEquals(Rule.TOO_WARM_AT_REST, only(NIGHT).rule());
    assertEquals(0.1, only(NIGHT).deficitK(), 1e-6);
    restEnd = NIGHT + 1;
    assertEquals(1, judge().size());
    restEnd = NIGHT;
    assertEquals(List.of(), judge(), "rest is complete");
    restEnd = NIGHTS;
    dormant[NIGHT] = false;
    assertEquals(List.of(), judge(), "not yet dormant");
    dormant[NIGHT] = true;
    plant = SomePlant.of("Acer buergerianum").plant();
    assertEquals(List.of(), judge(), "tender roots are worth a warmer store");
  }

  @Test
  void aPlantInLeafIsNotInTheDark() {
    path[NIGHT] = SHED_AT_FIVE;
    assertEquals(Rule.TOO_DARK, only(NIGHT).rule());
    bare[NIGHT] = true;
    assertEquals(List.of(), judge());
    plant = SomePlant.of("Juniperus chinensis").plant();
    assertEquals(Rule.TOO_DARK, only(NIGHT).rule());
    path[NIGHT] = GLASS;
    assertEquals(List.of(), judge());
  }

  @Test
  void aPotThatFrostCracksDoesNotFreeze() {
    edgeIceMax[NIGHT] = 0.11;
    assertEquals(List.of(), judge());
    plant = SomePlant.of("Acer palmatum").frostTenderPot().plant();
    assertEquals(Rule.BALL_FROZEN, only(NIGHT).rule());
    edgeIceMax[NIGHT] = 0.1;
    assertEquals(List.of(), judge());
  }

  /** Work on 28 November 2026; the 42nd day after is 9 January. */
  @Test
  void freshlyCutRootsDoNotFreezeForSixWeeks() {
    plant = SomePlant.of("Acer palmatum").plannedRootWork(LocalDate.of(2026, 11, 28)).plant();
    edgeIceMax[NIGHT - 1] = 0.5;
    assertEquals(List.of(), judge());
    edgeIceMax[NIGHT] = 0.5;
    assertEquals(Rule.BALL_FROZEN, only(NIGHT).rule());
    edgeIceMax[NIGHT] = 0;
    edgeIceMax[NIGHT + 41] = 0.5;
    assertEquals(Rule.BALL_FROZEN, only(NIGHT + 41).rule());
    edgeIceMax[NIGHT + 41] = 0;
    edgeIceMax[NIGHT + 42] = 0.5;
    assertEquals(List.of(), judge());
  }

  /** From 1 August to 16 June. */
  @Test
  void highSummerIsLeftToTheKeeper() {
    ballMinC[30] = -30;
    ballMinC[351] = -30;
    assertEquals(List.of(), judge());
    ballMinC[30] = 5;
    ballMinC[351] = 5;
    ballMinC[31] = -30;
    assertEquals(Rule.ROOT_BALL, only(31).rule());
    ballMinC[31] = 5;
    ballMinC[350] = -30;
    assertEquals(Rule.ROOT_BALL, only(350).rule());
  }

  @Test
  void everyBrokenRuleOfANightIsTold() {
    ballMinC[NIGHT] = -12;
    airMinC[NIGHT] = -25;
    path[NIGHT] = SHED_AT_FIVE;
    List<Rule> rules = judge().stream().map(b -> b.violation().rule()).toList();
    assertEquals(List.of(Rule.ROOT_BALL, Rule.SHOOTS, Rule.TOO_DARK), rules);
  }

  private Violation only(int night) {
    List<Lived.Broken> broken = judge();
    assertEquals(1, broken.size(), broken.toString());
    assertEquals(night, broken.get(0).night());
    assertEquals(path[night], broken.get(0).place());
    return broken.get(0).violation();
  }

  private List<Lived.Broken> judge() {
    BallTrace trace =
        new BallTrace(
            ballMinC, ballMinHour, ballMinC, edgeIceMax, filled(0), airMinC, noons(), airMinC);
    PlantState state =
        new PlantState(rootLimitC, shootLimitC, filled(0), dormant, bare, restEnd, budBreak);
    Rules rules = new Rules(plant, WINTERS, MARGIN_K);
    return rules.judge(new Lived(0, path, trace, state, List.of()));
  }

  private void bare(boolean value) {
    Arrays.fill(bare, value);
  }

  private static double[] filled(double value) {
    double[] nights = new double[NIGHTS];
    Arrays.fill(nights, value);
    return nights;
  }

  private static int[] noons() {
    int[] hours = new int[NIGHTS];
    Arrays.setAll(hours, n -> 24 * n + 12);
    return hours;
  }
}
