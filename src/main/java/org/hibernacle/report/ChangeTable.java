package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;

/**
 * What is other than in the plan before: one row a move that has another date or another place, is
 * new, or is gone. Moves that were made are no plan any more.
 */
final class ChangeTable {
  private final Material m;
  private final AsPlanned before;

  private ChangeTable(Material material, AsPlanned before) {
    this.m = material;
    this.before = before;
  }

  /** One move, before and now. */
  private record Change(
      PlantPlan plan, Move.Kind kind, Optional<MovePlanned> old, Optional<Move> now) {}

  /** Empty if there was no plan before, or nothing changed. */
  static Optional<Section> write(Material m) {
    return m.facts()
        .before()
        .map(before -> new ChangeTable(m, before))
        .filter(changes -> !changes.all().isEmpty())
        .map(ChangeTable::table);
  }

  /** Ids of plants with changes, in order. */
  static List<String> changedIds(Material m) {
    TreeSet<String> ids = new TreeSet<>();
    m.facts()
        .before()
        .ifPresent(
            before ->
                new ChangeTable(m, before).all().forEach(c -> ids.add(c.plan().plant().id())));
    return List.copyOf(ids);
  }

  private List<Change> all() {
    List<Change> changes = new ArrayList<>();
    for (PlantPlan p : m.byName()) {
      if (!before.plantIds().contains(p.plant().id())) {
        continue;
      }
      for (Move.Kind kind : Move.Kind.values()) {
        Change change = new Change(p, kind, old(p, kind), p.move(kind));
        if (differs(change)) {
          changes.add(change);
        }
      }
    }
    return changes;
  }

  private Optional<MovePlanned> old(PlantPlan p, Move.Kind kind) {
    return before.moves().stream()
        .filter(move -> move.plantId().equals(p.plant().id()) && move.kind().equals(kind.name()))
        .findFirst();
  }

  private static boolean differs(Change change) {
    if (change.old().isEmpty() || change.now().isEmpty()) {
      return change.old().isPresent() || change.now().filter(move -> !move.made()).isPresent();
    }
    MovePlanned old = change.old().get();
    Move now = change.now().get();
    return !now.made() && !(old.date().equals(now.date()) && old.to().equals(now.to().name()));
  }

  private Section table() {
    Table table =
        new Table(m.words(), "changes", Table.EVERYWHERE)
            .intro(m.words().text("intro.changes"))
            .column("id", 8)
            .column("name", 24)
            .column("move", 16)
            .column("was-date", 14)
            .column("was-to", 16)
            .column("now-date", 14)
            .column("now-to", 16)
            .wordsColumn("why", 76);
    for (Change change : all()) {
      StyleRole role = MoveTable.role(change.kind());
      table.row(
          StyleRole.PLAIN,
          List.of(
              new Cell.Text(change.plan().plant().id()),
              new Cell.Text(change.plan().plant().name()),
              new Cell.Level(role, m.words().of("move", change.kind())),
              change.old().<Cell>map(old -> new Cell.Day(old.date())).orElse(new Cell.Gap()),
              change
                  .old()
                  .<Cell>map(old -> new Cell.Text(m.words().place(old.to())))
                  .orElse(new Cell.Gap()),
              change.now().<Cell>map(now -> new Cell.Day(now.date())).orElse(new Cell.Gap()),
              change
                  .now()
                  .<Cell>map(now -> new Cell.Text(m.words().place(now.to().name())))
                  .orElse(new Cell.Gap()),
              new Cell.Text(why(change))));
    }
    return table.build();
  }

  private String why(Change change) {
    String sentence = change.now().map(now -> Why.of(m, change.plan(), now)).orElse("");
    return sentence.isEmpty() ? Why.of(m, change.plan()) : sentence;
  }
}
