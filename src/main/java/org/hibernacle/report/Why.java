package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Tightest;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;

/** The sentences that give one plant's reasons with their numbers. */
final class Why {
  /** Rules about light: a number of degrees would explain nothing. */
  private static final Set<Rule> WITHOUT_DEGREES = Set.of(Rule.TOO_DARK, Rule.WAKES_IN_THE_DARK);

  /** Rules that keep the safety margin. */
  private static final Set<Rule> WITH_MARGIN =
      Set.of(Rule.ROOT_BALL, Rule.SHOOTS, Rule.WOKEN_GROWTH);

  private static final Comparator<Violation> WORST_LAST =
      Comparator.comparingDouble(Violation::deficitK)
          .thenComparing(Comparator.comparing(Violation::day).reversed());

  private final Material m;
  private final PlantPlan p;
  private final int winters;
  private final List<String> sentences = new ArrayList<>();

  /** The margin is named once, with the first limit. */
  private boolean marginTold;

  private Why(Material material, PlantPlan plan) {
    this.m = material;
    this.p = plan;
    this.winters = material.plan().winters().size();
  }

  /** Why the plant goes where and when the plan says, or stays. */
  static String of(Material m, PlantPlan p) {
    Why why = new Why(m, p);
    switch (p.verdict()) {
      case STAYS_HOME -> why.stays();
      case MOVES -> why.moves();
      case UNPROTECTED -> why.unprotected();
    }
    return String.join(" ", why.sentences);
  }

  private void say(String key, Object... arguments) {
    sentences.add(m.words().text(key, arguments));
  }

  private void stays() {
    Tightest t = p.tightest();
    say(
        "why.stays",
        p.plant().home(),
        m.measures().temperature(t.rootBallC()),
        m.display().pastDay(t.day()),
        m.limit(p.plant(), Rule.ROOT_BALL, t.rootLimitC()));
    accepted();
  }

  private void moves() {
    p.plant().stayIn().ifPresent(wish -> say("why.wish", wish));
    if (p.moves().stream().allMatch(move -> move.because().isEmpty())) {
      p.withoutMoves().ifPresent(v -> say("why.at-home", clause(v)));
    }
    for (Move move : p.moves()) {
      move.because().ifPresent(v -> because(move, v));
    }
    accepted();
  }

  private void because(Move move, Violation v) {
    String key =
        switch (move.kind()) {
          case MOVE_DOWN, MOVE_IN -> "why.autumn";
          case STEP_OUT, RETURN -> "why.spring";
        };
    String kind = m.words().of("move.sentence", move.kind());
    say(key, kind, m.display().day(move.date()), clause(v));
  }

  /** Winters that fail with the keeper's leave. */
  private void accepted() {
    worst().ifPresent(v -> say("why.accepted", m.wintersBroken(p), winters, clause(v)));
  }

  private void unprotected() {
    Violation worst =
        worst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(p.plant().id() + " is unprotected from nothing"));
    say("why.unprotected", clause(worst));
    if (WITHOUT_DEGREES.contains(worst.rule())) {
      say("why.winters", m.wintersBroken(p), winters);
    } else {
      String deficit = m.measures().difference(worst.deficitK());
      say("why.deficit", deficit, m.wintersBroken(p), winters);
    }
    boolean onGround = m.winterStay(p).place().kind() == PlaceKind.GROUND;
    if (onGround && worst.rule() == Rule.ROOT_BALL) {
      say("why.ground", m.winterStay(p).place().name());
    }
    sentences.add(m.words().of("advice", worst.rule()));
  }

  private Optional<Violation> worst() {
    return p.broken().stream().max(WORST_LAST);
  }

  /** What would have happened, without full stop. */
  private String clause(Violation v) {
    Plant plant = p.plant();
    String key = "phrase." + v.rule().name();
    if (v.rule() == Rule.BALL_FROZEN) {
      key += plant.frostProofPot() ? ".roots" : ".pot";
    }
    String clause =
        m.words()
            .text(
                key,
                v.place(),
                m.measures().temperature(v.foundC()),
                m.display().pastDay(v.day()),
                m.limit(plant, v.rule(), v.limitC()));
    if (marginTold || !WITH_MARGIN.contains(v.rule())) {
      return clause;
    }
    marginTold = true;
    double marginK = m.plan().inventory().settings().safetyMarginK();
    return m.words().text("phrase.with-margin", clause, m.measures().difference(marginK));
  }
}
