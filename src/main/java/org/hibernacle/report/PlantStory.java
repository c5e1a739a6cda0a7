package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.planning.Explanation;
import org.hibernacle.planning.Explanation.Ease;
import org.hibernacle.planning.Explanation.PlaceTrial;
import org.hibernacle.planning.Explanation.WhatIf;
import org.hibernacle.planning.Explanation.WinterLived;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlaceFit;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Violation;

/** One plant's whole season in words, for reading on a screen. */
public final class PlantStory {
  private final Material m;
  private final Explanation told;
  private final PlantPlan p;
  private final List<String> lines = new ArrayList<>();

  private PlantStory(Explanation told, RunFacts facts, Words words) {
    this.m = Material.of(told.season(), facts, words);
    this.told = told;
    this.p = told.plan();
  }

  /**
   * Tells it, line by line.
   *
   * @param told by the planner
   * @param facts of the run
   * @param words in the language of the report
   */
  public static List<String> write(Explanation told, RunFacts facts, Words words) {
    PlantStory story = new PlantStory(told, facts, words);
    story.title();
    story.stays();
    story.places();
    story.winters();
    story.whatIfs();
    return List.copyOf(story.lines);
  }

  private void line(String key, Object... arguments) {
    lines.add(m.words().text("story." + key, arguments));
  }

  private void item(String key, Object... arguments) {
    lines.add("  " + m.words().text("story." + key, arguments));
  }

  private void heading(String key, Object... arguments) {
    lines.add("");
    line(key, arguments);
  }

  private void title() {
    line(
        "title",
        p.plant().id(),
        p.plant().name(),
        p.plant().species().taxon(),
        m.measures().volume(p.plant().container().volumeL()),
        p.plant().home());
    lines.add(Why.of(m, p));
  }

  private void stays() {
    heading("stays");
    for (Stay stay : p.stays()) {
      item(
          "stay",
          m.display().day(stay.fromInclusive()),
          m.display().day(stay.toExclusive().minusDays(1)),
          m.words().place(stay.place().name()));
    }
    Ease e = told.ease();
    item(
        "ease",
        e.moves(),
        e.autumnNightsAway(),
        e.roofNights(),
        e.springNightsAway(),
        m.display().number(m.measures().degreesApart(e.storageDegreeDays()), 0),
        m.measures().degreesApart());
  }

  private void places() {
    heading("places");
    for (PlaceTrial trial : told.places()) {
      if (trial.fit() != PlaceFit.SUITS) {
        item("place.not", m.words().place(trial.place().name()), m.words().of("fit", trial.fit()));
      } else if (trial.worst().isEmpty()) {
        item("place.safe", m.words().place(trial.place().name()));
      } else {
        item(
            "place.breaks",
            m.words().place(trial.place().name()),
            m.inWinters(trial.wintersBroken()),
            m.display().day(trial.unsafeFrom().orElseThrow()),
            m.display().day(trial.unsafeTo().orElseThrow()),
            clause(trial.worst().get()));
      }
    }
  }

  private void winters() {
    heading("winters");
    for (WinterLived w : told.winters()) {
      item(
          "winter",
          w.winter().toString(),
          m.measures().difference(w.tightest().marginK()),
          m.display().pastDay(w.tightest().day()),
          m.words().place(w.tightest().place()),
          m.measures().temperature(w.tightest().rootBallC()),
          m.measures().temperature(w.tightest().rootLimitC()),
          w.restComplete().map(m.display()::day).orElse(m.words().text("story.never")),
          w.budBreak().map(m.display()::day).orElse(m.words().text("story.never")));
      w.worst().ifPresent(v -> item(w.excused() ? "excused" : "broken", clause(v)));
    }
  }

  private void whatIfs() {
    if (told.whatIfs().isEmpty()) {
      return;
    }
    heading("what-ifs");
    for (WhatIf whatIf : told.whatIfs()) {
      Move move = whatIf.move();
      String date = whatIf.date().map(m.display()::day).orElse("");
      String change =
          m.words()
              .text(
                  "story.what-if." + whatIf.kind(),
                  m.words().of("move", move.kind()),
                  m.display().day(move.date()),
                  date);
      item("what-if", change, outcome(whatIf.worst(), whatIf.wintersBroken()));
    }
  }

  private String outcome(Optional<Violation> worst, int winters) {
    return worst
        .map(v -> m.words().text("story.outcome", m.inWinters(winters), clause(v)))
        .orElseGet(() -> m.words().text("story.outcome.safe"));
  }

  private String clause(Violation v) {
    return new Clause(m, p.plant(), false).of(v);
  }
}
