package org.hibernacle.report;

import java.util.Optional;
import org.hibernacle.model.Plant;
import org.hibernacle.physiology.ChillingInjury;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;

/**
 * Puts broken rules into words, one after the other for one plant: what was said before is not said
 * again.
 */
final class Clause {
  /** Of the last digit printed; sums of rounded numbers are not exact. */
  private static final double HALF_A_DIGIT = 0.05;

  private final Words words;
  private final Display display;
  private final Measures measures;
  private final Plant plant;
  private final double marginK;
  private Optional<Violation> before = Optional.empty();
  private boolean limitTold;
  private boolean marginTold;

  /**
   * Begins to tell.
   *
   * @param kept whether the plan keeps the safety margin, so that it may be told
   */
  Clause(Material material, Plant plant, boolean kept) {
    this.words = material.words();
    this.display = material.display();
    this.measures = material.measures();
    this.plant = plant;
    this.marginTold = !kept;
    this.marginK = material.plan().caution().marginK();
  }

  /** Begins to tell what broke in a season that was; the safety margin plays no part in it. */
  Clause(ReviewMaterial material, Plant plant) {
    this.words = material.words();
    this.display = material.display();
    this.measures = material.measures();
    this.plant = plant;
    this.marginTold = true;
    this.marginK = 0;
  }

  /** What would have happened, without full stop. */
  String of(Violation v) {
    String clause =
        words.text(
            key(v),
            words.place(v.place()),
            found(v),
            display.pastDay(v.day()),
            measures.temperature(v.limitC()),
            limitTold ? words.text("limit.plain") : Material.limitWord(words, plant),
            words.text(plant.frostProofPot() ? "frozen.roots" : "frozen.pot"),
            measures.difference(ChillingInjury.doseOfExcess(v.deficitK())),
            measures.difference(Rule.OUT_OF_THE_WARM_K));
    limitTold |= v.rule() == Rule.ROOT_BALL;
    before = Optional.of(v);
    double keptK = keptK(v);
    if ((marginTold && keptK == marginK) || !v.rule().keepsMargin()) {
      return clause;
    }
    marginTold = true;
    return words.text("phrase.with-margin", clause, measures.difference(keptK));
  }

  /** What was kept in hand above the limit, K: for a forecast more than the safety margin. */
  double keptK(Violation v) {
    if (v.rule() == Rule.OUT_OF_THE_WARM) {
      return Rule.OUT_OF_THE_WARM_K;
    }
    double keptK = v.foundC() + v.deficitK() - v.limitC();
    return v.rule().keepsMargin() && keptK > marginK + 1e-6 ? keptK : marginK;
  }

  private String key(Violation v) {
    String key = "phrase." + v.rule().name();
    if (v.rule() == Rule.BALL_FROZEN) {
      boolean onlyBegun = measures.shown(v.foundC()) >= measures.shown(0);
      return key + (onlyBegun ? ".begun" : ".cold");
    }
    boolean again =
        before.filter(b -> b.rule() == v.rule() && b.place().equals(v.place())).isPresent();
    return again && words.has(key + ".again") ? key + ".again" : key;
  }

  /**
   * The temperature found. Where its rounded digits would seem to keep the rule, the bound is named
   * and on which side of it the night was.
   */
  private String found(Violation v) {
    double foundShown = measures.shown(v.foundC());
    double bound = bound(v);
    if (v.rule() == Rule.TOO_WARM_AT_REST && foundShown < bound + HALF_A_DIGIT) {
      return words.text("found.just-above", measures.degreesShown(bound));
    } else if (v.rule() != Rule.TOO_WARM_AT_REST && foundShown > bound - HALF_A_DIGIT) {
      return words.text("found.just-below", measures.degreesShown(bound));
    }
    return measures.temperature(v.foundC());
  }

  /** What the rule asks for, from the digits that are printed. */
  private double bound(Violation v) {
    double limit = measures.shown(v.limitC());
    if (!v.rule().asksForMore()) {
      return limit;
    }
    double kept = limit + measures.shownDifference(keptK(v));
    boolean plateau = v.rule() != Rule.SHOOTS && v.limitC() <= Rule.PLATEAU_SUFFICES_C;
    return plateau ? Math.min(kept, measures.shown(0)) : kept;
  }
}
