package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.climate.WinterSummary.Frosts;

/** What the winters on file were like, one row a winter. */
final class WinterTable {
  private WinterTable() {}

  static Section write(Material m) {
    Measures measures = m.measures();
    Table table =
        new Table(m.words(), "winters", Table.EVERYWHERE)
            .intro(m.words().text("intro.winters"))
            .column("winter", 11)
            .column("days-missing", 10)
            .numbers()
            .column("coldest-night", 11, measures.degrees())
            .column("coldest-night-day", 15)
            .column("first-frost", 14)
            .column("last-frost", 14)
            .column("frost-days", 13, measures.threshold(0))
            .column("hard-frost-days", 13, measures.threshold(-5))
            .column("deep-frost-days", 13, measures.threshold(-10))
            .column("frost-run", 13)
            .column("chill", 11)
            .workbookColumn("days-on-file", 9);
    for (WinterSummary w : m.plan().winters()) {
      table.row(
          StyleRole.PLAIN,
          List.of(
              new Cell.Text(w.season().toString()),
              w.missingDays() == 0 ? new Cell.Gap() : Measures.count(w.missingDays()),
              measures.temperatureCell(w.coldestNightC()),
              new Cell.Day(w.coldestNight(), true),
              pastDay(frosts(w, 0).flatMap(Frosts::first)),
              pastDay(frosts(w, 0).flatMap(Frosts::last)),
              days(w, 0),
              days(w, -5),
              days(w, -10),
              Measures.count(w.longestFrostRunDays()),
              new Cell.Quantity(w.chillPortions(), "", 0),
              Measures.count(w.daysOnFile())));
    }
    return table.build();
  }

  private static Optional<Frosts> frosts(WinterSummary w, double thresholdC) {
    return w.frosts().stream().filter(f -> f.thresholdC() == thresholdC).findFirst();
  }

  private static Cell days(WinterSummary w, double thresholdC) {
    Optional<Frosts> frosts = frosts(w, thresholdC);
    return frosts.isPresent() ? Measures.count(frosts.get().days()) : new Cell.Gap();
  }

  private static Cell pastDay(Optional<LocalDate> day) {
    return day.<Cell>map(d -> new Cell.Day(d, true)).orElse(new Cell.Gap());
  }
}
