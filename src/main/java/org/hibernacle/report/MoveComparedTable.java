package org.hibernacle.report;

import java.util.List;
import java.util.Optional;
import org.hibernacle.review.MoveCompared;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.Punctuality;

/** Moves as planned beside moves as made. */
final class MoveComparedTable {
  private MoveComparedTable() {}

  /** One row a kind of move. */
  static Section punctuality(ReviewMaterial m) {
    Table table =
        new Table(m.words(), "punctuality", Table.EVERYWHERE)
            .intro(m.words().text("intro.punctuality"))
            .column("move", 18)
            .column("planned", 10)
            .column("told", 10)
            .column("skipped", 10)
            .column("unplanned", 10)
            .column("mean-days-late", 12)
            .numbers()
            .column("most-days-late", 12)
            .numbers()
            .column("latest-plant", 14);
    for (Punctuality p : m.review().punctuality()) {
      boolean told = p.told() > 0;
      table.row(
          StyleRole.PLAIN,
          List.of(
              new Cell.Level(MoveTable.role(p.kind()), m.words().of("move", p.kind())),
              Measures.count(p.planned()),
              Measures.count(p.told()),
              Measures.count(p.skipped()),
              Measures.count(p.unplanned()),
              told ? new Cell.Quantity(p.meanDaysLate(), "", 1) : new Cell.Gap(),
              told ? Measures.count(p.mostDaysLate()) : new Cell.Gap(),
              ReviewMaterial.text(p.latestId().orElse(""))));
    }
    return table.build();
  }

  /** One row a move. */
  static Section moves(ReviewMaterial m) {
    Table table =
        new Table(m.words(), "real-moves", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.real-moves"))
            .column("id", 8)
            .column("name", 26)
            .column("move", 18)
            .column("planned-day", 15)
            .column("real-day", 15)
            .column("days-late", 10)
            .numbers()
            .column("how-told", 22)
            .column("harm-between", 12);
    for (PlantReview p : m.byName()) {
      p.moves().forEach(move -> table.row(StyleRole.PLAIN, cells(m, p, move)));
    }
    return table.build();
  }

  private static List<Cell> cells(ReviewMaterial m, PlantReview p, MoveCompared move) {
    Optional<Cell> late =
        move.daysLate().isPresent()
            ? Optional.of(Measures.count(move.daysLate().getAsInt()))
            : Optional.empty();
    return List.of(
        new Cell.Text(p.plant().id()),
        new Cell.Text(p.plant().name()),
        new Cell.Level(MoveTable.role(move.kind()), m.words().of("move", move.kind())),
        ReviewMaterial.day(move.planned()),
        ReviewMaterial.day(move.real()),
        late.orElse(new Cell.Gap()),
        new Cell.Text(m.words().text("move-told." + told(move))),
        move.harmBetween()
            ? new Cell.Level(StyleRole.DANGER, m.words().text("harm-between.yes"))
            : new Cell.Gap());
  }

  private static String told(MoveCompared move) {
    if (move.real().isEmpty()) {
      return "not-made";
    }
    return move.assumed() ? "assumed" : move.planned().isEmpty() ? "unplanned" : "told";
  }
}
