package org.hibernacle.report;

import java.text.Collator;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Outcome;
import org.hibernacle.review.Cause;
import org.hibernacle.review.PlanVerdict;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.ScoredCause;
import org.hibernacle.review.SeasonReview;

/**
 * What every chapter of a losses review is written from.
 *
 * @param review to tell
 * @param facts of the run
 * @param words to tell it in
 * @param display of numbers and days
 * @param measures in the keeper's units
 */
record ReviewMaterial(
    SeasonReview review, RunFacts facts, Words words, Display display, Measures measures) {

  static ReviewMaterial of(SeasonReview review, RunFacts facts, Words words) {
    Display display = new Display(words);
    Measures measures = new Measures(display, review.inventory().settings().units());
    return new ReviewMaterial(review, facts, words, display, measures);
  }

  /** The plants A to Z by the name people use, then by Id. */
  List<PlantReview> byName() {
    Collator alphabet = Collator.getInstance(words.locale());
    return review.plants().stream()
        .sorted(
            Comparator.comparing((PlantReview p) -> p.plant().name(), alphabet::compare)
                .thenComparing(p -> p.plant().id()))
        .toList();
  }

  /** The harmed plants: first those whom the plan itself failed, then the worst harmed. */
  List<PlantReview> losses() {
    return review
        .harmed()
        .sorted(
            Comparator.comparing((PlantReview p) -> p.verdict() != PlanVerdict.FAILED)
                .thenComparing(PlantReview::outcome, Comparator.reverseOrder())
                .thenComparing(p -> p.plant().id()))
        .toList();
  }

  /** Where the plant spent midwinter. */
  String winterPlace(PlantReview p) {
    return p.winterPlace(review.season().midwinter());
  }

  /** {@code P31 Chinese elm}. */
  static String named(PlantReview p) {
    return p.plant().id() + " " + p.plant().name();
  }

  String cause(Cause cause) {
    return words.of("cause", cause);
  }

  /** {@code frozen roots (72 %)}. */
  String causeWithShare(ScoredCause cause) {
    return words.text("cause.with-share", cause(cause.cause()), percent(cause.share()));
  }

  /** The likeliest cause alone where it is clear, else the two likeliest; nothing without harm. */
  String causes(PlantReview p) {
    List<String> told =
        p.causes().stream()
            .limit(p.likeliest().filter(ScoredCause::isClear).isPresent() ? 1 : 2)
            .map(this::causeWithShare)
            .toList();
    return words.listedApart(told);
  }

  /** Whole percent, {@code 72 %}. */
  String percent(double share) {
    return display.number(100 * share, 0) + " %";
  }

  /** The word of the outcome; told as assumed where the log says nothing. */
  Cell outcome(PlantReview p) {
    if (p.outcomeAssumed()) {
      return new Cell.Gap();
    }
    return level(outcomeRole(p.outcome()), words.of("outcome", p.outcome()));
  }

  private static StyleRole outcomeRole(Outcome outcome) {
    return switch (outcome) {
      case NO_DAMAGE, GONE -> StyleRole.PLAIN;
      case TIPS, BRANCHES -> StyleRole.CAUTION;
      case DEAD -> StyleRole.DANGER;
    };
  }

  static Cell level(StyleRole role, String text) {
    return role == StyleRole.PLAIN ? new Cell.Text(text) : new Cell.Level(role, text);
  }

  static Cell text(String text) {
    return text.isEmpty() ? new Cell.Gap() : new Cell.Text(text);
  }

  static Cell day(Optional<LocalDate> day) {
    return day.<Cell>map(Cell.Day::new).orElse(new Cell.Gap());
  }
}
