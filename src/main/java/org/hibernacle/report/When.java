package org.hibernacle.report;

import java.time.LocalDate;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;

/**
 * The word that tells how a row of work stands on the day of the {@link Glance}: done, overdue,
 * next. The workbook finds it by itself when the keeper ticks a row or types another day.
 */
final class When {
  private When() {}

  /** For moving days: next are those of the next day on which anything is left to carry. */
  static String moving(Words words) {
    return "IF({done}<>\"\","
        + quoted(words, "done")
        + ",IF({date}<"
        + Glance.AS_OF
        + ","
        + quoted(words, "overdue")
        + ",IF({date}="
        + WorkbookParts.NEXT_DAY
        + ","
        + quoted(words, "next")
        + ",\"\")))";
  }

  /** For tasks. Those that go on for a while are over some day, and never overdue. */
  static String working(Words words) {
    return "IF({done}<>\"\","
        + quoted(words, "done")
        + ",IF({task-from}>"
        + Glance.AS_OF
        + ",\"\",IF(MAX({task-from},{task-to})>="
        + Glance.AS_OF
        + ","
        + quoted(words, "now")
        + ",IF({task-to}>0,\"\","
        + quoted(words, "overdue")
        + "))))";
  }

  /** Gives the last column of the table, which holds the word, the looks of its words. */
  static void mark(Table table, Words words) {
    table
        .marked("{when}=" + quoted(words, "overdue"), StyleRole.DANGER, "")
        .marked("{when}=" + quoted(words, "next"), StyleRole.HEADING, "")
        .marked("{when}=" + quoted(words, "now"), StyleRole.HEADING, "")
        .marked("{when}=" + quoted(words, "done"), StyleRole.SUBTLE, "");
  }

  private static String quoted(Words words, String key) {
    return Table.quoted(words.text("when." + key));
  }

  static Cell of(Material m, PlantMove pm) {
    Move move = pm.move();
    if (m.ticks().isDone(pm)) {
      return word(m, "done");
    } else if (move.date().isBefore(m.asOf())) {
      return word(m, "overdue");
    }
    return WorkbookParts.nextDay(m).filter(move.date()::equals).isPresent()
        ? word(m, "next")
        : new Cell.Text("");
  }

  static Cell of(Material m, Task task) {
    LocalDate asOf = m.asOf();
    if (m.ticks().isDone(task)) {
      return word(m, "done");
    }
    if (task.to().isBefore(asOf)) {
      return task.to().equals(task.from()) ? word(m, "overdue") : new Cell.Text("");
    }
    return task.from().isAfter(asOf) ? new Cell.Text("") : word(m, "now");
  }

  private static Cell word(Material m, String key) {
    return new Cell.Text(m.words().text("when." + key));
  }
}
