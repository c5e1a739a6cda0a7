package org.hibernacle.oracle;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.hibernacle.model.Season;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;

/**
 * What the oracle has to say against one plant's plan, beyond what rounding explains ({@link
 * Agreement}); nothing if it agrees. Growth that broke bud within a night of a move under or out of
 * a roof hangs on that single date and is not held against a plan.
 */
public final class Complaints {
  private final JudgedPlan garden;
  private final PlantPlan plant;

  public Complaints(JudgedPlan garden, PlantPlan plant) {
    this.garden = garden;
    this.plant = plant;
  }

  /** Rules broken that the plan does not tell of, and more winters than the risk allows. */
  public List<String> brokenUntold() {
    List<String> complaints = new ArrayList<>();
    int failing = 0;
    for (Season winter : garden.winters()) {
      List<Night> nights = garden.nights(plant, winter);
      List<Finding> findings = beyondRounding(nights, garden.broken(plant, winter, nights));
      Set<Rule> told = EnumSet.noneOf(Rule.class);
      plant.broken().stream()
          .filter(v -> v.winter().equals(winter))
          .forEach(v -> told.add(v.rule()));
      findings.stream()
          .filter(f -> !told.contains(f.rule()))
          .forEach(f -> complaints.add("breaks untold: " + f));
      failing += findings.isEmpty() ? 0 : 1;
    }
    int allowed = plant.plant().priority() >= 4 ? 0 : garden.plan().caution().failuresAllowed();
    if (plant.verdict() != Verdict.UNPROTECTED && failing > allowed) {
      complaints.add("breaks rules in " + failing + " winters, of " + allowed + " accepted");
    }
    return complaints;
  }

  /** Limits broken, in any winter, though the plan counts the plant as protected. */
  public List<String> belowLimits() {
    List<String> complaints = new ArrayList<>();
    for (Season winter : garden.winters()) {
      if (plant.verdict() != Verdict.UNPROTECTED) {
        List<Night> nights = garden.nights(plant, winter);
        List<Finding> limits = garden.oracle().brokenLimits(plant.plant(), winter, nights);
        beyondRounding(nights, limits).forEach(f -> complaints.add("below its limit: " + f));
      }
    }
    return complaints;
  }

  /** Rules that the plan says are broken where the oracle sees nothing of the kind. */
  public List<String> toldInVain() {
    List<String> complaints = new ArrayList<>();
    if (plant.verdict() == Verdict.UNPROTECTED && plant.broken().isEmpty()) {
      complaints.add("given up without a reason");
    }
    for (Violation told : plant.broken()) {
      List<Night> nights = garden.nights(plant, told.winter());
      List<Finding> findings = garden.broken(plant, told.winter(), nights);
      if (!Agreement.sees(told, nights, findings)) {
        complaints.add("is said to break, and does not: " + told);
      } else if (!missesAsMuch(told, nights, findings)) {
        complaints.add("misses by other than told: " + told);
      }
    }
    return complaints;
  }

  private static boolean missesAsMuch(Violation told, List<Night> nights, List<Finding> findings) {
    double most = Agreement.mostMiss(told.rule());
    return !measured(told.rule())
        || told.deficitK() <= most
        || Agreement.nights(told, nights)
            .anyMatch(
                night ->
                    findings.stream()
                        .filter(f -> f.rule() == told.rule() && f.day().equals(night.day()))
                        .anyMatch(f -> Math.abs(f.miss() - told.deficitK()) <= most));
  }

  /** Whether plan and oracle measure what is missed in the same kelvins. */
  private static boolean measured(Rule rule) {
    return switch (rule) {
      case ROOT_BALL, SHOOTS, WOKEN_GROWTH, TOO_WARM_AT_REST -> true;
      case CHILLING, WAKES_IN_THE_DARK, TOO_DARK, BALL_FROZEN -> false;
    };
  }

  private static List<Finding> beyondRounding(List<Night> nights, List<Finding> findings) {
    return Agreement.beyondRounding(findings).stream()
        .filter(f -> f.rule() != Rule.WOKEN_GROWTH || !wokeOnTheMove(nights))
        .toList();
  }

  private static boolean wokeOnTheMove(List<Night> nights) {
    for (int i = 1; i < nights.size() - 1; i++) {
      boolean moved =
          !nights.get(i - 1).place().equals(nights.get(i).place())
              || !nights.get(i).place().equals(nights.get(i + 1).place());
      if (nights.get(i).budBreak() && moved) {
        return true;
      }
    }
    return false;
  }
}
