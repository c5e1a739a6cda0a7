package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.KnownWinter;
import org.hibernacle.review.WinterCompared;

/** The winter that was among those it was planned for, coldest first. */
final class WinterComparedTable {
  private WinterComparedTable() {}

  static Section write(ReviewMaterial m) {
    Table table =
        new Table(m.words(), "winter-compared", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.winter-compared"))
            .column("rank", 8)
            .column("winter", 12)
            .column("coldest-night", 13, m.measures().degrees())
            .column("coldest-night-day", 15)
            .column("which-winter", 22);
    WinterCompared compared = m.review().winter();
    List<KnownWinter> winters = new ArrayList<>(compared.known());
    KnownWinter reviewed =
        new KnownWinter(
            compared.winter().season(),
            compared.winter().coldestNightC(),
            compared.winter().coldestNight());
    winters.add(Math.min(winters.size(), compared.rank() - 1), reviewed);
    for (int i = 0; i < winters.size(); i++) {
      KnownWinter winter = winters.get(i);
      boolean now = winter.equals(reviewed);
      String which = m.words().text(now ? "winter.reviewed" : "winter.planned-for");
      table.row(
          StyleRole.PLAIN,
          List.of(
              Measures.count(i + 1),
              new Cell.Text(winter.season().toString()),
              m.measures().temperatureCell(winter.coldestNightC()),
              new Cell.Day(winter.coldestNight(), true),
              now ? new Cell.Level(StyleRole.HEADING, which) : new Cell.Text(which)));
    }
    return table.build();
  }
}
