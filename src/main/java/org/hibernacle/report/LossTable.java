package org.hibernacle.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hibernacle.review.MoveCompared;
import org.hibernacle.review.PlanVerdict;
import org.hibernacle.review.PlantReview;

/** One row a harmed plant: its likely cause, and what the plan would have done. */
final class LossTable {
  private LossTable() {}

  static Section write(ReviewMaterial m) {
    List<PlantReview> losses = m.losses();
    Table table =
        new Table(m.words(), "losses", Table.EVERYWHERE)
            .intro(m.words().text(losses.isEmpty() ? "intro.losses.none" : "intro.losses"))
            .column("id", 8)
            .column("name", 18)
            .column("outcome", 13)
            .column("place", 14)
            .column("cause", 22)
            .column("plan-worth", 16)
            .column("days-off", 8)
            .numbers()
            .column("value", 8)
            .numbers()
            .column("noticed", 13)
            .wordsColumn("story", 52)
            .wordsColumn("remark", 14);
    for (PlantReview p : losses) {
      OptionalDouble value = p.plant().value();
      table.row(
          p.verdict() == PlanVerdict.FAILED ? StyleRole.DANGER : StyleRole.PLAIN,
          List.of(
              new Cell.Text(p.plant().id()),
              new Cell.Text(p.plant().name()),
              m.outcome(p),
              new Cell.Text(m.winterPlace(p)),
              new Cell.Text(m.causes(p)),
              worth(m, p),
              daysOff(p),
              value.isPresent() ? new Cell.Quantity(value.getAsDouble(), "", 0) : new Cell.Gap(),
              ReviewMaterial.day(p.noticed()),
              new Cell.Text(new LossStory(m, p).tell()),
              p.remark().isBlank()
                  ? new Cell.Gap()
                  : new Cell.Text(m.words().text("loss.remark", p.remark()))));
    }
    return table.build();
  }

  /** What the plan was worth to the plant, in a few words. */
  static Cell worth(ReviewMaterial m, PlantReview p) {
    if (p.verdict() == PlanVerdict.FAILED) {
      return new Cell.Level(StyleRole.DANGER, m.words().of("verdict", p.verdict()));
    }
    return p.prevention()
        .<Cell>map(w -> new Cell.Text(m.words().of("prevention", w)))
        .orElse(new Cell.Text(m.words().of("verdict", p.verdict())));
  }

  /** By how much the move was late, or early, on one side of which the harm lies. */
  private static Cell daysOff(PlantReview p) {
    Optional<Integer> days =
        p.moves().stream()
            .filter(MoveCompared::harmBetween)
            .map(MoveCompared::daysLate)
            .filter(OptionalInt::isPresent)
            .map(OptionalInt::getAsInt)
            .findFirst();
    return days.<Cell>map(Measures::count).orElse(new Cell.Gap());
  }
}
