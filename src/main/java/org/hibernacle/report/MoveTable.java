package org.hibernacle.report;

import java.util.List;
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
            .column("date", 14)
            .column("move", 16)
            .column("id", 8)
            .column("name", 28)
            .column("from", 16)
            .column("to", 16)
            .column("kg-each", 9, m.measures().kilograms())
            .column("people", 10)
            .entry("done", 8, Section.Entry.TICK)
            .workbookColumn("count", 8);
    for (PlantMove pm : m.plan().movesByDate()) {
      Plant plant = pm.plan().plant();
      Move move = pm.move();
      StyleRole role = role(move.kind());
      table.row(
          role,
          List.of(
              new Cell.Day(move.date()),
              new Cell.Level(role, m.words().of("move", move.kind())),
              new Cell.Text(plant.id()),
              new Cell.Text(name(m, plant)),
              new Cell.Text(move.from().name()),
              new Cell.Text(move.to().name()),
              m.measures().massCell(pm.plan().estimatedMassKg()),
              people(m, pm.plan()),
              move.made() ? new Cell.Text(m.words().text("move.made")) : new Cell.Gap(),
              Measures.count(plant.count())));
    }
    return table.build();
  }

  private static String name(Material m, Plant plant) {
    return plant.count() == 1
        ? plant.name()
        : m.words().text("move.pots", plant.name(), plant.count());
  }

  /** Whether one pot of the row wants two people. */
  static boolean heavy(PlantPlan p) {
    return p.estimatedMassKg() > Lifting.aloneKg(p.plant().container());
  }

  private static Cell people(Material m, PlantPlan p) {
    if (heavy(p)) {
      return new Cell.Level(StyleRole.CAUTION, m.words().text("people.two"));
    }
    return p.estimatedMassKg() > Lifting.CAUTION_KG
        ? new Cell.Text(m.words().text("people.care"))
        : new Cell.Text(m.words().text("people.one"));
  }

  static StyleRole role(Move.Kind kind) {
    return switch (kind) {
      case MOVE_DOWN -> StyleRole.MOVE_DOWN;
      case MOVE_IN -> StyleRole.MOVE_IN;
      case STEP_OUT -> StyleRole.STEP_OUT;
      case RETURN -> StyleRole.RETURN;
    };
  }
}
