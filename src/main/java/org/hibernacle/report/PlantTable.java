package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;

/** One row a plant, A to Z: where it winters, its dates, how close it gets, and why. */
final class PlantTable {
  private final Material m;

  private PlantTable(Material material) {
    this.m = material;
  }

  static Section write(Material m) {
    return new PlantTable(m).write();
  }

  private Section write() {
    Table table =
        new Table(m.words(), "season-plan", Table.EVERYWHERE)
            .intro(
                m.words()
                    .text(
                        "intro.season-plan",
                        m.measures().difference(m.plan().inventory().settings().safetyMarginK())))
            .column("id", 8)
            .column("name", 20)
            .column("species", 20)
            .column("pot", 8, m.measures().litres())
            .column("home", 10)
            .column("place", 14)
            .column("move-down", 13, StyleRole.MOVE_DOWN)
            .column("move-in", 13, StyleRole.MOVE_IN)
            .column("step-out", 13, StyleRole.STEP_OUT)
            .column("return", 13, StyleRole.RETURN)
            .column("margin", 9, m.measures().degreesApart())
            .column("margin-day", 14)
            .column("held", 16)
            .column("status", 12)
            .column("poison", 13)
            .column("why", 58)
            .workbookColumn("earliest", 13)
            .workbookColumn("typical", 13)
            .workbookColumn("latest", 13);
    for (PlantPlan p : m.byName()) {
      table.row(role(p), cells(p));
    }
    return table.build();
  }

  private List<Cell> cells(PlantPlan p) {
    Plant plant = p.plant();
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell.Text(plant.id()));
    cells.add(new Cell.Text(plant.name()));
    cells.add(new Cell.Text(plant.species().taxon()));
    cells.add(m.measures().volumeCell(plant.container().volumeL()));
    cells.add(new Cell.Text(plant.home()));
    cells.add(new Cell.Text(m.winterStay(p).place().name()));
    for (Move.Kind kind : Move.Kind.values()) {
      cells.add(date(p, kind));
    }
    cells.add(m.measures().differenceCell(p.tightest().marginK()));
    cells.add(new Cell.Day(p.tightest().day(), true));
    cells.add(new Cell.Text(m.held(p)));
    cells.add(new Cell.Level(role(p), status(p)));
    cells.add(m.poison(plant.species()));
    cells.add(new Cell.Text(Why.of(m, p)));
    List<LocalDate> own = p.ownLastSafeDays();
    cells.add(ownDay(own, 0));
    cells.add(ownDay(own, (own.size() - 1) / 2));
    cells.add(ownDay(own, own.size() - 1));
    return cells;
  }

  private Cell date(PlantPlan p, Move.Kind kind) {
    Optional<Move> move = p.move(kind);
    if (move.isPresent()) {
      return new Cell.Day(move.get().date());
    }
    return new Cell.Gap(p.verdict() == Verdict.STAYS_HOME ? status(p) : "");
  }

  private Cell ownDay(List<LocalDate> days, int index) {
    return days.isEmpty()
        ? new Cell.Gap(m.words().text("gap.home-is-safe"))
        : new Cell.Day(days.get(index));
  }

  private String status(PlantPlan p) {
    if (p.verdict() == Verdict.STAYS_HOME && m.winterStay(p).place().roofed()) {
      return m.words().text("status.stays-in");
    }
    return m.words().of("status", p.verdict());
  }

  private StyleRole role(PlantPlan p) {
    return switch (p.verdict()) {
      case STAYS_HOME -> StyleRole.STAYS;
      case MOVES -> m.winterStay(p).place().roofed() ? StyleRole.MOVE_IN : StyleRole.MOVE_DOWN;
      case UNPROTECTED -> StyleRole.DANGER;
    };
  }
}
