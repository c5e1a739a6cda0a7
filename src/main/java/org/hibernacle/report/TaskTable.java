package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.planning.Task;

/** Work beside the moves, by date. */
final class TaskTable {
  private final Material m;

  TaskTable(Material material) {
    this.m = material;
  }

  static Section write(Material m) {
    return new TaskTable(m).write();
  }

  private Section write() {
    Table table =
        new Table(m.words(), "tasks", Table.EVERYWHERE).intro(m.words().text("intro.tasks"));
    return fill(table, m.plan().tasks(), true);
  }

  /** The tasks of one place, for its page. */
  static Section ofPlace(Material m, List<Task> tasks) {
    return new TaskTable(m)
        .fill(new Table(m.words(), "place-tasks", Table.EVERYWHERE), tasks, false);
  }

  /** On the page of a place it needs no telling where. */
  private Section fill(Table table, List<Task> tasks, boolean everywhere) {
    table.column("task-from", 15).column("task-to", 15).column("task", 56);
    if (everywhere) {
      table.column("place", 16);
    }
    table.wordsColumn("plants", 36);
    if (everywhere) {
      table.leads("season-plan", "");
    }
    table.column("amount", 16).entry("done", 8, Section.Entry.TICK);
    if (everywhere) {
      table.workbookFormula("when", 10, When.working(m.words()));
      When.mark(table, m.words());
    }
    for (Task task : tasks) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Day(task.from()));
      cells.add(task.to().equals(task.from()) ? new Cell.Gap() : new Cell.Day(task.to()));
      cells.add(new Cell.Text(sentence(task)));
      if (everywhere) {
        cells.add(
            task.place().isEmpty() ? new Cell.Gap() : new Cell.Text(m.words().place(task.place())));
      }
      cells.add(task.plantIds().isEmpty() ? new Cell.Gap() : new Cell.Text(plants(task)));
      cells.add(amount(task));
      cells.add(m.ticks().cell(task, m.words()));
      if (everywhere) {
        cells.add(When.of(m, task));
      }
      table.row(StyleRole.TASK, cells, task.plantIds());
    }
    return table.build();
  }

  /** What to do. */
  String sentence(Task task) {
    return sentence(task.kind());
  }

  String sentence(Task.Kind kind) {
    String key = "task." + kind.name();
    return m.words().text(key, m.measures().threshold(5), m.measures().threshold(2));
  }

  /** Which plants; empty for all that stand there. */
  String plants(Task task) {
    return task.plantIds().stream()
        .map(id -> task.kind() == Task.Kind.TWO_PERSON_LIFT ? withMass(id) : id)
        .collect(m.words().listing());
  }

  private String withMass(String id) {
    double kg = m.plant(id).estimatedMassKg();
    return m.words().text("task.plant-mass", id, m.measures().mass(kg));
  }

  /** How much; a gap where that says nothing. */
  Cell amount(Task task) {
    if (task.amount().isEmpty()) {
      return new Cell.Gap();
    }
    double amount = task.amount().getAsDouble();
    return switch (task.kind()) {
      case MULCH_ON, MULCH_OFF, WRAP -> m.measures().volumeWithUnit(amount);
      case TWO_PERSON_LIFT -> m.measures().massWithUnit(amount);
      case POWER_FAILURE, WAKING_ALARM -> new Cell.Text(m.measures().temperature(amount));
      case IN_AND_OUT -> new Cell.Text(m.words().text("unit.nights-at-most", (int) amount));
      case FLEECE_READY -> new Cell.Text(m.inWinters((int) amount));
      case THAW_OUT -> new Cell.Quantity(amount, m.words().text("unit.days"), 0);
      case CLEAN_UP,
          RODENT_GUARD,
          FLEECE_ON,
          FLEECE_OFF,
          HUDDLE,
          QUARANTINE,
          UNWRAP,
          WATER_STORE,
          VENT_STORE,
          PEST_LOOK,
          KEEP_DRY ->
          new Cell.Quantity(amount, "", 0);
    };
  }
}
