package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Tightest;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;

/** The sentences that give each plant's reasons with their numbers. */
final class Why {
  /** Rules about light: a temperature would explain nothing. */
  private static final Set<Rule> WITHOUT_DEFICIT = Set.of(Rule.TOO_DARK, Rule.WAKES_IN_THE_DARK);

  private static final Comparator<Violation> WORST_LAST =
      Comparator.comparingDouble(Violation::deficitK)
          .thenComparing(Comparator.comparing(Violation::day).reversed());

  private final Material m;

  Why(Material material) {
    this.m = material;
  }

  /** Why the plant goes where and when the plan says, or stays. */
  String of(PlantPlan p) {
    List<String> sentences = new ArrayList<>();
    switch (p.verdict()) {
      case STAYS_HOME -> sentences.add(stays(p));
      case MOVES -> moves(p, sentences);
      case UNPROTECTED -> unprotected(p, sentences);
    }
    return String.join(" ", sentences);
  }

  private String stays(PlantPlan p) {
    Tightest t = p.tightest();
    return m.words()
        .text(
            "why.stays",
            p.plant().home(),
            m.measures().temperature(t.rootBallC()),
            m.display().pastDay(t.day()),
            m.limit(p.plant(), Rule.ROOT_BALL, t.rootLimitC()));
  }

  private void moves(PlantPlan p, List<String> sentences) {
    p.plant().stayIn().ifPresent(wish -> sentences.add(m.words().text("why.wish", wish)));
    if (p.moves().stream().allMatch(move -> move.because().isEmpty())) {
      p.withoutMoves()
          .ifPresent(
              v -> sentences.add(m.words().text("why.at-home", v.place(), phrase(p.plant(), v))));
    }
    for (Move move : p.moves()) {
      move.because().ifPresent(v -> sentences.add(because(p.plant(), move, v)));
    }
    worst(p)
        .ifPresent(
            v ->
                sentences.add(
                    m.words()
                        .text(
                            "why.accepted",
                            m.wintersBroken(p),
                            m.plan().winters().size(),
                            phrase(p.plant(), v))));
  }

  private String because(Plant plant, Move move, Violation v) {
    String key =
        switch (move.kind()) {
          case MOVE_DOWN, MOVE_IN -> "why.autumn";
          case STEP_OUT, RETURN -> "why.spring";
        };
    return m.words()
        .text(
            key,
            m.words().of("move.sentence", move.kind()),
            m.display().day(move.date()),
            phrase(plant, v));
  }

  private void unprotected(PlantPlan p, List<String> sentences) {
    Violation worst =
        worst(p)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(p.plant().id() + " is unprotected from nothing"));
    boolean withDeficit = !WITHOUT_DEFICIT.contains(worst.rule());
    sentences.add(m.words().text("why.unprotected", phrase(p.plant(), worst)));
    if (withDeficit) {
      sentences.add(
          m.words()
              .text(
                  "why.deficit",
                  m.measures().difference(worst.deficitK()),
                  m.wintersBroken(p),
                  m.plan().winters().size()));
    } else {
      sentences.add(m.words().text("why.winters", m.wintersBroken(p), m.plan().winters().size()));
    }
    boolean onGround = m.winterStay(p).place().kind() == PlaceKind.GROUND;
    if (onGround && worst.rule() == Rule.ROOT_BALL) {
      sentences.add(m.words().text("why.ground", m.winterStay(p).place().name()));
    }
    sentences.add(m.words().of("advice", worst.rule()));
  }

  private static java.util.Optional<Violation> worst(PlantPlan p) {
    return p.broken().stream().max(WORST_LAST);
  }

  /** What would have happened, as a clause without capital and full stop. */
  String phrase(Plant plant, Violation v) {
    String key = "phrase." + v.rule().name();
    if (v.rule() == Rule.BALL_FROZEN) {
      key += plant.frostProofPot() ? ".roots" : ".pot";
    }
    return m.words()
        .text(
            key,
            v.place(),
            m.measures().temperature(v.foundC()),
            m.display().pastDay(v.day()),
            m.limit(plant, v.rule(), v.limitC()),
            m.measures().difference(m.plan().inventory().settings().safetyMarginK()));
  }
}
