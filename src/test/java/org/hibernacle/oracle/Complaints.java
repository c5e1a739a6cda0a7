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
 * Agreement}). Nights next to one in which growth ends, rest ends or buds break are not judged, nor
 * is growth that broke bud next to a move: all that hangs on a single date.
 */
public final class Complaints {
  /** Air under glass is less sure than elsewhere. */
  private static final double UNDER_GLASS_K = Agreement.AIR_UNDER_GLASS_K - Agreement.AIR_K;

  private final JudgedPlan garden;
  private final PlantPlan plant;
  private final boolean givenUp;
  private final double ballK;
  private final List<String> complaints = new ArrayList<>();

  private Complaints(JudgedPlan garden, PlantPlan plant) {
    this.garden = garden;
    this.plant = plant;
    this.ballK = Agreement.ballK(plant.plant());
    this.givenUp = plant.verdict() == Verdict.UNPROTECTED;
  }

  /** All of them; none if oracle and plan agree. */
  public static List<String> about(JudgedPlan garden, PlantPlan plant) {
    Complaints of = new Complaints(garden, plant);
    int failing = 0;
    for (Season winter : garden.winters()) {
      List<Night> nights = garden.nights(plant, winter);
      failing += of.breaksIn(winter, nights) ? 1 : 0;
    }
    int allowed = accepted(garden, plant);
    of.expect(of.givenUp || failing <= allowed, failing + " winters fail, accepted " + allowed);
    of.expect(!of.givenUp || !plant.broken().isEmpty(), "given up without a reason");
    return of.complaints;
  }

  /** Winters that may fail: docs/planning.md, "Risk". */
  private static int accepted(JudgedPlan garden, PlantPlan plant) {
    int winters = garden.winters().size();
    boolean none = winters <= 3 || plant.plant().priority() >= 4;
    int ofTen = garden.plan().inventory().settings().acceptedRiskOfTen();
    return none ? 0 : winters * ofTen / 10;
  }

  private void expect(boolean holds, String otherwise) {
    if (!holds) {
      complaints.add(plant.plant().id() + " " + otherwise);
    }
  }

  /** Whether any rule is broken in that winter. */
  private boolean breaksIn(Season winter, List<Night> nights) {
    List<Finding> all = garden.broken(plant, winter, nights);
    List<Finding> findings = beyondRounding(nights, all);
    Set<Rule> told = EnumSet.noneOf(Rule.class);
    for (Violation violation : plant.broken()) {
      if (violation.winter().equals(winter)) {
        told.add(violation.rule());
        toldInVain(violation, nights, all);
      }
    }
    findings.forEach(f -> expect(told.contains(f.rule()), "breaks untold: " + f));
    if (!givenUp) {
      beyondRounding(nights, garden.oracle().brokenLimits(plant.plant(), winter, nights))
          .forEach(f -> expect(false, "is below its limit: " + f));
    }
    return !findings.isEmpty();
  }

  /** A rule that the plan says is broken, where the oracle sees nothing of the kind. */
  private void toldInVain(Violation told, List<Night> nights, List<Finding> findings) {
    if (turns(nights, told.winter().index(told.day()))) {
      return;
    }
    boolean air = told.rule() == Rule.SHOOTS || told.rule() == Rule.WOKEN_GROWTH;
    double mostK = Agreement.mostMiss(told.rule(), ballK) + (air ? UNDER_GLASS_K : 0);
    boolean seen = Agreement.sees(told, nights, findings, ballK);
    expect(seen, "is said to break, and does not: " + told);
    boolean asMuch =
        !measured(told.rule())
            || told.deficitK() <= mostK
            || Agreement.nights(told, nights, ballK)
                .anyMatch(night -> misses(told, night, findings, mostK));
    expect(!seen || asMuch, "misses by other than told: " + told);
  }

  private static boolean misses(Violation told, Night night, List<Finding> findings, double mostK) {
    return findings.stream()
        .filter(f -> f.rule() == told.rule() && f.day().equals(night.day()))
        .anyMatch(f -> Math.abs(f.miss() - told.deficitK()) <= mostK);
  }

  /** Whether plan and oracle measure what is missed in the same kelvins. */
  private static boolean measured(Rule rule) {
    return switch (rule) {
      case ROOT_BALL, SHOOTS, OUT_OF_THE_WARM, WOKEN_GROWTH, TOO_WARM_AT_REST -> true;
      case CHILLING, WAKES_IN_THE_DARK, TOO_DARK, BALL_FROZEN -> false;
    };
  }

  private List<Finding> beyondRounding(List<Night> nights, List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.miss() > Agreement.mostMiss(f.rule(), ballK))
        .filter(f -> !turns(nights, f.winter().index(f.day())))
        .filter(f -> f.rule() != Rule.WOKEN_GROWTH || !wokeNextToAMove(nights))
        .toList();
  }

  /** Whether growth ends, rest ends or buds break within two nights, which rounding may shift. */
  private static boolean turns(List<Night> nights, int index) {
    Night last = nights.get(Math.min(index + 2, nights.size() - 1));
    Night first = nights.get(Math.max(0, Math.min(index, nights.size()) - 2));
    return first.dormant() != last.dormant()
        || first.atRest() != last.atRest()
        || first.budsOpen() != last.budsOpen();
  }

  private static boolean wokeNextToAMove(List<Night> nights) {
    for (int i = 1; i + 1 < nights.size(); i++) {
      boolean before = !nights.get(i - 1).place().equals(nights.get(i).place());
      boolean after = !nights.get(i).place().equals(nights.get(i + 1).place());
      if (nights.get(i).budBreak() && (before || after)) {
        return true;
      }
    }
    return false;
  }
}
