package org.hibernacle.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Tightest;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Shuttle;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Violation;

/** The sentences that give one plant's reasons with their numbers. */
final class Why {
  /** Rules about light: a number of degrees would explain nothing. */
  private static final Set<Rule> WITHOUT_DEGREES = Set.of(Rule.TOO_DARK, Rule.WAKES_IN_THE_DARK);

  private static final Comparator<Violation> WORST_LAST =
      Comparator.comparingDouble(Violation::deficitK)
          .thenComparing(Comparator.comparing(Violation::day).reversed());

  private final Material m;
  private final PlantPlan p;
  private final Clause clause;
  private final int winters;
  private final List<String> sentences = new ArrayList<>();

  private Why(Material material, PlantPlan plan) {
    this.m = material;
    this.p = plan;
    this.clause = new Clause(material, plan.plant(), plan.verdict() != Verdict.UNPROTECTED);
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
    return m.words().sentences(why.sentences);
  }

  /** Why one move is when it is; empty where there is nothing to say of it alone. */
  static String of(Material m, PlantPlan p, Move move) {
    Why why = new Why(m, p);
    LocalDate before = LocalDate.MIN;
    for (Move earlier : p.moves()) {
      if (earlier.equals(move)) {
        why.date(move, before);
      }
      before = earlier.date();
    }
    return m.words().sentences(why.sentences);
  }

  private void say(String key, Object... arguments) {
    sentences.add(m.words().text(key, arguments));
  }

  private void stays() {
    Tightest t = p.tightest();
    say(
        "why.stays",
        p.plant().home(),
        m.display().pastDay(t.day()),
        m.measures().temperature(t.rootBallC()),
        m.limitWord(p.plant()),
        m.measures().temperature(t.rootLimitC()));
    accepted();
  }

  private void moves() {
    p.plant().stayIn().ifPresent(wish -> say("why.wish", wish));
    if (p.moves().stream().allMatch(move -> move.because().isEmpty() && !move.made())) {
      p.withoutMoves().ifPresent(v -> say("why.at-home", clause.of(v)));
    }
    dates();
    displaced();
    accepted();
  }

  /** What others took first. */
  private void displaced() {
    p.displaced()
        .ifPresent(
            d ->
                sentences.add(
                    m.words()
                        .text(
                            "why.displaced." + d.kind(),
                            d.place().name(),
                            m.display().day(d.day()))));
  }

  /** One sentence a date. */
  private void dates() {
    LocalDate before = LocalDate.MIN;
    for (Move move : p.moves()) {
      date(move, before);
      before = move.date();
    }
  }

  private void date(Move move, LocalDate before) {
    String kind = m.words().of("move.sentence", move.kind());
    String date = m.display().day(move.date());
    Optional<Violation> because = move.because();
    if (move.made()) {
      say("why.made", kind, date);
    } else if (because.isPresent()) {
      say("why." + when(move, because.get()), kind, date, clause.of(because.get()));
    } else if (move.kind() == Move.Kind.RETURN && p.shuttle().isPresent()) {
      shuttle(p.shuttle().get(), date);
    } else if (move.kind().homeward()) {
      withoutReason(move, before, kind, date);
    }
  }

  private void shuttle(Shuttle s, String date) {
    say(
        "why.shuttle",
        date,
        m.display().day(s.waking()),
        s.refuge().name(),
        m.measures().temperature(s.triggerC()),
        m.display().day(s.to()),
        s.mostInAWinter(),
        m.inWinters(s.winters()));
  }

  /** How far from the date the move would have had to be for the rule to be broken. */
  private String when(Move move, Violation v) {
    LocalDate day = m.plan().season().sameDay(v.day());
    if (!move.kind().homeward()) {
      return day.isAfter(movingDay(move.date(), 1)) ? "autumn.left" : "autumn";
    } else if (day.isAfter(move.date())) {
      return "spring.later";
    }
    return day.isBefore(movingDay(move.date(), -1)) ? "spring.some" : "spring";
  }

  /** No frost on file keeps the plant away from home: then a rule of the calendar does. */
  private void withoutReason(Move move, LocalDate before, String kind, String date) {
    LocalDate earlier = movingDay(move.date(), -1);
    LocalDate earliestReturn = Move.earliestReturn(m.plan().season());
    if (ChronoUnit.DAYS.between(before, earlier) < Stay.LEAST_NIGHTS) {
      say("why.least-stay", kind, date, Stay.LEAST_NIGHTS);
    } else if (move.kind() != Move.Kind.STEP_OUT && earlier.isBefore(earliestReturn)) {
      say("why.midwinter", kind, date, m.display().day(earliestReturn));
    }
  }

  /** The next moving day in that direction, or the first day beyond the season. */
  private LocalDate movingDay(LocalDate date, int direction) {
    Settings settings = m.plan().inventory().settings();
    LocalDate day = date.plusDays(direction);
    while (m.plan().season().contains(day) && !settings.isMovingDay(day)) {
      day = day.plusDays(direction);
    }
    return day;
  }

  /** Winters that fail with the keeper's leave. */
  private void accepted() {
    worst().ifPresent(v -> say("why.accepted", m.wintersBroken(p), winters, clause.of(v)));
  }

  private void unprotected() {
    Violation worst =
        worst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(p.plant().id() + " is unprotected from nothing"));
    say("why.unprotected", clause.of(worst));
    if (WITHOUT_DEGREES.contains(worst.rule())) {
      say("why.winters", m.wintersBroken(p), winters);
    } else {
      String key = worst.rule().asksForMore() ? "why.deficit.margin" : "why.deficit";
      String deficit = m.measures().difference(worst.deficitK());
      String kept = m.measures().difference(clause.keptK(worst));
      say(key, deficit, m.wintersBroken(p), winters, kept);
    }
    displaced();
    String protecting = new RemedyWords(m).protecting(p);
    if (protecting.isEmpty()) {
      sentences.add(m.words().of("advice", worst.rule()));
    } else {
      say("why.remedy", protecting);
    }
    dates();
  }

  private Optional<Violation> worst() {
    return p.broken().stream().max(WORST_LAST);
  }
}
