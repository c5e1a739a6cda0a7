package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Lifting;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;

/** One row a plant to be carried, by date. */
final class MoveTable {
  /** What one person lifts at most, kg; less of a wide pot. */
  static final double ONE_PERSON_KG = Lifting.MOST_KG;

  private MoveTable() {}

  static Section write(Material m) {
    Table table =
        new Table(m.words(), "moving-days", Table.EVERYWHERE)
            .intro(
                m.words()
                    .text(
                        "intro.moving-days",
                        m.measures().mass(ONE_PERSON_KG),
                        m.measures().mass(Lifting.CAUTION_KG)))
            .column("date", 15)
            .column("move", 16)
            .leads("tasks", "")
            .column("id", 8)
            .leads("season-plan", "")
            .column("name", 28)
            .leads("log", "")
            .column("from", 16)
            .column("to", 16)
            .workbookColumn("count", 8)
            .column("kg-each", 9, m.measures().kilograms())
            .column("people", 10)
            .entry("done", 10, Section.Entry.TICK)
            .workbookFormula("when", 10, When.moving(m.words()));
    When.mark(table, m.words());
    table.workbookColumn("early", 15).workbookColumn("typical", 15).workbookColumn("late", 15);
    for (PlantMove pm : m.plan().movesByDate()) {
      Plant plant = pm.plan().plant();
      Move move = pm.move();
      StyleRole role = role(move.kind());
      List<Cell> cells = new ArrayList<>();
      cells.addAll(
          List.of(
              new Cell.Day(move.date()),
              new Cell.Level(role, m.words().of("move", move.kind())),
              new Cell.Text(plant.id()),
              new Cell.Text(name(m, plant)),
              new Cell.Text(m.words().place(move.from().name())),
              new Cell.Text(m.words().place(move.to().name())),
              Measures.count(plant.count()),
              m.measures().massCell(pm.plan().estimatedMassKg()),
              people(m, pm),
              m.ticks().cell(pm, m.words()),
              When.of(m, pm)));
      cells.addAll(ownDays(Optional.of(move)));
      table.row(role, cells, List.of(plant.id(), about(plant.id(), move.kind())));
    }
    return table.build();
  }

  /** What a row about one move of a plant is about. */
  static String about(String plantId, Move.Kind kind) {
    return plantId + "/" + kind;
  }

  /** Early, typical and late of the winters' own dates of a move; gaps where there are none. */
  static List<Cell> ownDays(Optional<Move> move) {
    return Stream.of(
            move.flatMap(Move::earliest), move.flatMap(Move::typical), move.flatMap(Move::latest))
        .map(day -> day.<Cell>map(Cell.Day::new).orElse(new Cell.Gap()))
        .toList();
  }

  /** What people call the plant, with the pots of its row where there are several. */
  static String name(Material m, Plant plant) {
    return plant.count() == 1
        ? plant.name()
        : m.words().text("move.pots", plant.name(), plant.count());
  }

  /** Whether one pot of the row is carried and wants two people. */
  static boolean heavy(PlantMove pm) {
    PlantPlan p = pm.plan();
    return pm.move().kind().carries()
        && p.estimatedMassKg() > Lifting.aloneKg(p.plant().container());
  }

  private static Cell people(Material m, PlantMove pm) {
    PlantPlan p = pm.plan();
    if (heavy(pm)) {
      return new Cell.Level(StyleRole.CAUTION, m.words().text("people.two"));
    }
    return pm.move().kind().carries() && p.estimatedMassKg() > Lifting.CAUTION_KG
        ? new Cell.Text(m.words().text("people.care"))
        : new Cell.Text(m.words().text("people.one"));
  }

  static StyleRole role(Move.Kind kind) {
    return switch (kind) {
      case MOVE_DOWN, WRAP -> StyleRole.MOVE_DOWN;
      case MOVE_IN -> StyleRole.MOVE_IN;
      case STEP_OUT -> StyleRole.STEP_OUT;
      case RETURN, UNWRAP -> StyleRole.RETURN;
    };
  }
}
