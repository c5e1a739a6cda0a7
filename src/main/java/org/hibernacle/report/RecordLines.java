package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Outcome;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.Task;
import org.hibernacle.report.Section.Column;

/**
 * What the workbook of a plan says of itself, so that a later run understands it whatever its
 * language: the words it uses for what is read back, its season, and what it told calendar
 * programs.
 *
 * <p>{@code word, log.outcome, Outcome} is the heading of a column, {@code word, outcome.DEAD,
 * dead} a word of a list, {@code word, section.log, Log} the name of a sheet.
 */
final class RecordLines {
  /** Sections that are read back. */
  private static final List<String> READ_BACK =
      List.of("log", "moving-days", "tasks", "occupancy", "winters", "notes");

  private final Material m;
  private final List<List<String>> lines = new ArrayList<>();

  private RecordLines(Material material) {
    this.m = material;
  }

  static List<List<String>> of(Material m, List<Section> sections) {
    RecordLines record = new RecordLines(m);
    sections.stream().filter(s -> READ_BACK.contains(s.id())).forEach(record::headings);
    record.words();
    record.lines.add(List.of("season", m.plan().season().start().toString()));
    record.plants();
    record.agenda();
    return record.lines;
  }

  private void headings(Section section) {
    word("section." + section.id(), section.title());
    section.columns().stream()
        .filter(column -> m.words().has("column." + column.id()))
        .forEach(column -> heading(section, column));
  }

  private void heading(Section section, Column column) {
    word(section.id() + "." + column.id(), column.heading());
  }

  private void words() {
    Arrays.stream(Outcome.values()).forEach(o -> constant("outcome", o));
    Arrays.stream(IfBlank.values()).forEach(b -> constant("if-blank", b));
    Arrays.stream(Move.Kind.values()).forEach(k -> constant("move", k));
    TaskTable tasks = new TaskTable(m);
    Arrays.stream(Task.Kind.values())
        .forEach(kind -> word("task." + kind.name(), tasks.sentence(kind)));
    word("workbook.tick", m.words().text("workbook.tick"));
    word("done.made", m.words().text("move.made"));
    word("list.joint", m.words().listed(List.of("", "")));
    word("place.wrapped", m.words().text("place.wrapped", "{0}"));
  }

  /** What the Ids stand for, since an Id may be given to another plant. */
  private void plants() {
    m.plan().inventory().plants().stream()
        .map(p -> List.of("plant", p.id(), p.name(), p.species().taxon()))
        .forEach(lines::add);
  }

  /** What calendar programs are told, for the next plan to take back what it has no longer. */
  private void agenda() {
    Agenda agenda = AgendaAuthor.write(m);
    lines.add(
        List.of(
            "agenda",
            Integer.toString(agenda.revision()),
            agenda.dated().toString(),
            agenda.digest()));
    for (Agenda.Entry e : agenda.entries()) {
      lines.add(
          List.of(
              "event",
              e.id().toString(),
              e.day().toString(),
              e.title(),
              e.kind(),
              e.place(),
              e.dropped() ? "dropped" : "planned"));
    }
  }

  private void constant(String prefix, Enum<?> constant) {
    word(prefix + "." + constant.name(), m.words().of(prefix, constant));
  }

  private void word(String key, String text) {
    lines.add(List.of("word", key, text));
  }
}
