package org.hibernacle.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;

/**
 * How far plan and oracle may lie apart. Both follow the same pages, so what remains is arithmetic:
 * the program holds the air for a whole hour where the oracle draws it as a line, steps the ball in
 * quarter hours, cuts the soil coarser, and takes day length from another formula. Night by night,
 * over the demo and both cities, edges lie apart by 0.1 K (root mean square), air, week's mean and
 * root limits by 0.03 K, shoot limits by 0.1 K. It can be up to 1 K of limit where rest ends a few
 * nights apart, and more than that of the edge of a small pot in the hour in which it comes off its
 * 0 °C plateau, since it then falls fast.
 */
final class Agreement {
  static final double BALL_K = 0.5;
  private static final double BALL_OFF_ITS_PLATEAU_K = 1;
  static final double LIMIT_K = 0.3;
  static final double AIR_K = 0.2;

  /** The sun's warmth under glass comes from a formula and is kept for hours. */
  static final double AIR_UNDER_GLASS_K = 0.4;

  /**
   * A ball of more than {@value #BIG_BALL_L} L needs days to freeze through, so that the hour in
   * which it does hangs on small things; it is the docs' worst case as well.
   */
  private static final double BIG_BALL_K = 1;

  private static final double BIG_BALL_L = 35;
  static final double WEEK_K = 0.2;

  /** Of a week's chill, spread over its nights. */
  private static final double CHILL_K = 0.1;

  /** Share of ice in the edge; the ball's 0.5 K while it is on the way to freezing. */
  private static final double ICE_SHARE = 0.1;

  private Agreement() {}

  /** How far edges of that plant's ball may lie apart, K. */
  static double ballK(Plant plant) {
    return plant.container().volumeL() > BIG_BALL_L ? BIG_BALL_K : BALL_K;
  }

  /** By how much the oracle may see a rule broken that the plan sees kept. */
  static double mostMiss(Rule rule) {
    return mostMiss(rule, BALL_K);
  }

  /** The same for a ball whose edges may lie so far apart. */
  static double mostMiss(Rule rule, double ballK) {
    return switch (rule) {
      case ROOT_BALL, OUT_OF_THE_WARM -> ballK + LIMIT_K;
      case SHOOTS -> AIR_K + LIMIT_K;
      case CHILLING -> CHILL_K;
      case WOKEN_GROWTH -> AIR_K;
      case TOO_WARM_AT_REST -> WEEK_K;
      case BALL_FROZEN -> ICE_SHARE;
      case WAKES_IN_THE_DARK, TOO_DARK -> 0;
    };
  }

  /**
   * The night a violation speaks of, if the oracle met the same there. A plan dates a night by the
   * day of its coldest hour, which is the day on which it begins or the next.
   */
  static Stream<Night> nights(Violation told, List<Night> nights) {
    return nights(told, nights, BALL_K);
  }

  /** The same for a ball whose edges may lie so far apart. */
  static Stream<Night> nights(Violation told, List<Night> nights, double ballK) {
    int morning = told.winter().index(told.day());
    List<Night> same = new ArrayList<>();
    for (int i = Math.max(0, morning - 1); i <= Math.min(morning, nights.size() - 1); i++) {
      Night night = nights.get(i);
      if (night.place().name().equals(told.place()) && sameMeasures(told, night, ballK)) {
        same.add(night);
      }
    }
    return same.stream();
  }

  private static boolean sameMeasures(Violation told, Night night, double ballK) {
    boolean glass = night.place().kind() == PlaceKind.GLASSHOUSE;
    double airK = glass ? AIR_UNDER_GLASS_K : AIR_K;
    return switch (told.rule()) {
      case ROOT_BALL ->
          nearBall(told.foundC(), night.lowestEdgeC(), ballK)
              && near(told.limitC(), night.rootLimitC(), LIMIT_K);
      case SHOOTS ->
          near(told.foundC(), night.lowestAirC(), airK)
              && near(told.limitC(), night.shootLimitC(), LIMIT_K);
      case OUT_OF_THE_WARM ->
          nearBall(told.foundC(), night.lowestEdgeC(), ballK)
              || near(told.foundC(), night.lowestAirC(), airK);
      case CHILLING, WOKEN_GROWTH -> near(told.foundC(), night.lowestAirC(), airK);
      case TOO_WARM_AT_REST, WAKES_IN_THE_DARK -> near(told.foundC(), night.weekMeanC(), WEEK_K);
      case BALL_FROZEN -> nearBall(told.foundC(), night.lowestEdgeC(), ballK);
      case TOO_DARK -> near(told.foundC(), night.meanAirC(), airK);
    };
  }

  private static boolean nearBall(double a, double b, double ballK) {
    double warmer = Math.max(a, b);
    boolean comesOff = warmer <= 0 && warmer > -BALL_OFF_ITS_PLATEAU_K;
    return near(a, b, comesOff ? BALL_OFF_ITS_PLATEAU_K : ballK);
  }

  private static boolean near(double a, double b, double most) {
    return Math.abs(a - b) <= most;
  }

  /** Whether the oracle sees that rule broken, in that night, as the plan tells it. */
  static boolean sees(Violation told, List<Night> nights, List<Finding> findings) {
    return sees(told, nights, findings, BALL_K);
  }

  /** The same for a ball whose edges may lie so far apart. */
  static boolean sees(Violation told, List<Night> nights, List<Finding> findings, double ballK) {
    boolean hairline = told.deficitK() <= mostMiss(told.rule(), ballK);
    return nights(told, nights, ballK)
        .anyMatch(
            night ->
                hairline
                    || justFreezes(told, night)
                    || findings.stream()
                        .anyMatch(f -> f.rule() == told.rule() && f.day().equals(night.day())));
  }

  /** Whether so little of the edge is ice that the program may well see a tenth of it. */
  private static boolean justFreezes(Violation told, Night night) {
    return told.rule() == Rule.BALL_FROZEN && night.lowestEdgeC() <= 0;
  }

  /** The findings that no rounding explains. */
  static List<Finding> beyondRounding(List<Finding> findings) {
    return findings.stream().filter(f -> f.miss() > mostMiss(f.rule())).toList();
  }
}
