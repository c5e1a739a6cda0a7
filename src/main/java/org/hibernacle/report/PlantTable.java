package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Rule;

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
                        m.measures().difference(m.plan().caution().marginK()),
                        m.measures().temperature(0),
                        m.measures().temperature(Rule.PLATEAU_SUFFICES_C)))
            .column("id", 8)
            .leads(ForScreen.INVENTORY, "")
            .column("name", 22)
            .leads("log", "")
            .column("place", 14);
    for (Move.Kind kind : m.kinds()) {
      if (kind.carries()) {
        table.column(column(kind), 15, MoveTable.role(kind));
      } else {
        table.workbookColumn(column(kind), 15);
      }
      table.leads("moving-days", MoveTable.about("", kind));
    }
    table
        .column("status", 13)
        .leads("tasks", "")
        .paperLine("summary")
        .wordsColumn("why", 62)
        .workbookColumn("species", 24)
        .workbookColumn("home", 15)
        .workbookColumn("count", 8);
    if (m.valued()) {
      table.workbookColumn("value", 10);
    }
    table
        .workbookColumn("pot", 8, m.measures().litres())
        .workbookColumn("margin", 12, m.measures().degreesApart())
        .workbookColumn("margin-day", 15)
        .workbookColumn("act-below", 60)
        .workbookColumn("held", 17)
        .workbookColumn("poison", 20)
        .workbookColumn("leave-early", 15)
        .workbookColumn("leave-typical", 15)
        .workbookColumn("leave-late", 15)
        .workbookColumn("back-early", 15)
        .workbookColumn("back-typical", 15)
        .workbookColumn("back-late", 15);
    for (PlantPlan p : m.byName()) {
      table.row(role(p), cells(p), List.of(p.plant().id()));
    }
    return table.build();
  }

  private static String column(Move.Kind kind) {
    return switch (kind) {
      case MOVE_DOWN -> "move-down";
      case MOVE_IN -> "move-in";
      case STEP_OUT -> "step-out";
      case RETURN -> "return";
      case WRAP -> "wrap";
      case UNWRAP -> "unwrap";
    };
  }

  private List<Cell> cells(PlantPlan p) {
    Plant plant = p.plant();
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell.Text(plant.id()));
    cells.add(new Cell.Text(plant.name()));
    cells.add(new Cell.Text(m.words().place(m.winterStay(p).place().name())));
    for (Move.Kind kind : m.kinds()) {
      cells.add(p.move(kind).<Cell>map(mv -> new Cell.Day(mv.date())).orElse(new Cell.Gap()));
    }
    cells.add(new Cell.Level(role(p), status(p)));
    cells.add(new Cell.Text(summary(p)));
    cells.add(new Cell.Text(Why.of(m, p)));
    cells.add(new Cell.Text(plant.species().taxon()));
    cells.add(new Cell.Text(plant.home()));
    cells.add(Measures.count(plant.count()));
    if (m.valued()) {
      cells.add(
          plant.value().isPresent()
              ? new Cell.Quantity(plant.value().getAsDouble(), "", 0)
              : new Cell.Gap());
    }
    cells.add(m.measures().volumeCell(plant.container().volumeL()));
    cells.add(m.measures().differenceCell(p.tightest().marginK()));
    cells.add(new Cell.Day(p.tightest().day(), true));
    cells.add(new Cell.Text(ActBelow.of(m, p)));
    cells.add(new Cell.Text(m.held(p)));
    cells.add(m.poison(plant.species()));
    cells.addAll(MoveTable.ownDays(p.moves().stream().findFirst()));
    cells.addAll(MoveTable.ownDays(comingHome(p)));
    return cells;
  }

  /** For paper, what the workbook has columns for. */
  private String summary(PlantPlan p) {
    return m.words()
            .text(
                "plant.summary",
                p.plant().species().taxon(),
                m.measures().volume(p.plant().container().volumeL()),
                p.plant().home(),
                m.measures().difference(p.tightest().marginK()),
                m.display().pastDay(p.tightest().day()),
                ActBelow.of(m, p),
                m.held(p),
                m.display().text(m.poison(p.plant().species())))
        + ownDays(p);
  }

  /** The winters' own dates of leaving and coming back, as phrases; blank where there are none. */
  private String ownDays(PlantPlan p) {
    String leaving = ownDays("plant.leaving", p.moves().stream().findFirst());
    return leaving + ownDays("plant.back", comingHome(p));
  }

  private static Optional<Move> comingHome(PlantPlan p) {
    return p.move(Move.Kind.RETURN).or(() -> p.move(Move.Kind.UNWRAP));
  }

  private String ownDays(String phrase, Optional<Move> move) {
    return move.filter(mv -> !mv.ownDays().isEmpty())
        .map(
            mv ->
                m.words()
                    .text(
                        phrase,
                        m.display().dayAndMonth(mv.earliest().orElseThrow()),
                        m.display().dayAndMonth(mv.typical().orElseThrow()),
                        m.display().dayAndMonth(mv.latest().orElseThrow())))
        .orElse("");
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
