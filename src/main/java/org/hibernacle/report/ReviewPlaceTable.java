package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hibernacle.review.PlaceReview;

/** One row a place in hindsight. */
final class ReviewPlaceTable {
  private ReviewPlaceTable() {}

  static Section write(ReviewMaterial m) {
    boolean logged = m.review().places().stream().anyMatch(p -> p.modelError().isPresent());
    Table table =
        new Table(m.words(), "review-places", Table.EVERYWHERE)
            .intro(m.words().text(logged ? "intro.review-places.logged" : "intro.review-places"))
            .column("place-named", 20)
            .column("place-kind", 18)
            .column("coldest", 12, m.measures().degrees())
            .column("coldest-day", 15)
            .column("rows-there", 12)
            .column("rows-harmed", 12)
            .numbers();
    if (logged) {
      PlaceTables.errorColumns(table, m.measures().degreesApart(), true);
    }
    for (PlaceReview p : m.review().places()) {
      if (p.place().wrapOf().isPresent() && p.plants() == 0) {
        continue;
      }
      List<Cell> cells =
          List.of(
              new Cell.Text(m.words().place(p.place().name())),
              new Cell.Text(m.words().of("place", p.place().kind())),
              m.measures().temperatureCell(p.coldestC()),
              new Cell.Day(p.coldestDay(), true),
              Measures.count(p.plants()),
              p.harmed() == 0 ? new Cell.Gap() : Measures.count(p.harmed()));
      List<Cell> more =
          logged ? PlaceTables.modelError(m.measures(), p.modelError()) : new ArrayList<>();
      table.row(StyleRole.PLAIN, Stream.concat(cells.stream(), more.stream()).toList());
    }
    return table.build();
  }
}
