package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.review.Chill;
import org.hibernacle.review.Cold;
import org.hibernacle.review.Exposure;
import org.hibernacle.review.FrozenSpell;
import org.hibernacle.review.NewGrowth;
import org.hibernacle.review.PlanVerdict;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.StoreWarmth;

/** One row a plant: what it lived through. */
final class LivedTable {
  private LivedTable() {}

  static Section write(ReviewMaterial m) {
    String degrees = m.measures().degrees();
    String apart = m.measures().degreesApart();
    Table table =
        new Table(m.words(), "lived", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.lived"))
            .column("id", 8)
            .column("name", 26)
            .column("species", 24)
            .column("outcome", 16)
            .column("place", 18)
            .column("root-margin", 11, apart)
            .numbers()
            .column("root-day", 15)
            .column("root-place", 16)
            .column("root-found", 11, degrees)
            .numbers()
            .column("root-limit", 11, degrees)
            .numbers()
            .column("root-hours", 11)
            .numbers()
            .column("shoot-margin", 11, apart)
            .numbers()
            .column("shoot-day", 15)
            .column("frozen-days", 11)
            .numbers()
            .column("drying", 11)
            .numbers()
            .column("warm-nights", 11)
            .numbers()
            .column("woke", 14)
            .column("growth-margin", 11, apart)
            .numbers()
            .column("chill-dose", 11, apart)
            .numbers()
            .column("plan-margin", 11, apart)
            .numbers()
            .column("verdict", 22)
            .column("remark", 30);
    for (PlantReview p : m.byName()) {
      StyleRole role = p.verdict() == PlanVerdict.FAILED ? StyleRole.DANGER : StyleRole.PLAIN;
      table.row(role, cells(m, p));
    }
    return table.build();
  }

  private static List<Cell> cells(ReviewMaterial m, PlantReview p) {
    Exposure lived = p.lived();
    Cold roots = lived.roots();
    Cell shoots = margin(m, lived.shoots().map(Cold::marginK));
    List<Cell> cells = new ArrayList<>();
    cells.addAll(
        List.of(
            new Cell.Text(p.plant().id()),
            new Cell.Text(p.plant().name()),
            new Cell.Text(p.plant().species().taxon()),
            m.outcome(p),
            new Cell.Text(m.winterPlace(p)),
            margin(m, Optional.of(roots.marginK())),
            new Cell.Day(roots.day(), true),
            new Cell.Text(m.words().place(roots.place())),
            m.measures().temperatureCell(roots.foundC()),
            m.measures().temperatureCell(roots.limitC()),
            Measures.count(roots.hoursBelow()),
            shoots,
            ReviewMaterial.day(lived.shoots().map(Cold::day))));
    cells.add(count(lived.frozen().map(FrozenSpell::longestDays)));
    cells.add(
        lived
            .frozen()
            .<Cell>map(f -> new Cell.Quantity(f.dryingIndex(), "", 1))
            .orElse(new Cell.Gap()));
    cells.add(count(lived.store().map(StoreWarmth::warmNights)));
    cells.add(ReviewMaterial.day(lived.growth().map(NewGrowth::woke)));
    cells.add(margin(m, lived.growth().map(NewGrowth::marginK)));
    cells.add(
        lived.chill().map(Chill::doseK).map(m.measures()::differenceCell).orElse(new Cell.Gap()));
    cells.add(margin(m, Optional.of(p.asPlanned().roots().marginK())));
    String verdict = m.words().of("verdict", p.verdict());
    cells.add(
        p.verdict() == PlanVerdict.FAILED
            ? new Cell.Level(StyleRole.DANGER, verdict)
            : new Cell.Text(verdict));
    cells.add(ReviewMaterial.text(p.remark()));
    return cells;
  }

  private static Cell count(Optional<Integer> count) {
    return count.<Cell>map(Measures::count).orElse(new Cell.Gap());
  }

  /** Red below zero. */
  private static Cell margin(ReviewMaterial m, Optional<Double> marginK) {
    if (marginK.isEmpty()) {
      return new Cell.Gap();
    }
    double shown = m.measures().degreesApart(marginK.get());
    StyleRole role = shown < 0 ? StyleRole.DANGER : StyleRole.PLAIN;
    return new Cell.Quantity(shown, "", 1, role);
  }
}
