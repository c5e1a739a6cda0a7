package org.hibernacle.report;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Tick;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;

/**
 * The keeper's ticks in an earlier plan, and the work of this one that they belong to.
 *
 * <p>A pot that was carried to a place stands there, on whatever day this plan would carry it: a
 * tick belongs to the move of the same plant and kind to the same place. Other work is the same if
 * kind and place are, if it asks nothing of a plant that the ticked work did not have, and if their
 * days meet or miss each other by a week at most: to thaw the pots in January is not done because
 * it was in December.
 */
public final class Ticks {
  /** How far apart the days of one and the same work may lie; common practice, no source. */
  static final int DAYS_APART = 7;

  private final Map<String, Tick> moves = new HashMap<>();
  private final Map<Task, Tick> tasks = new HashMap<>();
  private final List<Tick> withoutWork = new ArrayList<>();

  private Ticks() {}

  static Ticks of(SeasonPlan plan, List<Tick> ticks) {
    Ticks found = new Ticks();
    List<PlantMove> planned = plan.movesByDate();
    for (Tick tick : ticks) {
      boolean belongs = tick.moving() ? found.move(planned, tick) : found.tasks(plan.tasks(), tick);
      if (!belongs) {
        found.withoutWork.add(tick);
      }
    }
    return found;
  }

  /** Tells the ticks of the earlier plan that belong to nothing in this one. */
  public static List<Diagnostic> withoutWork(SeasonPlan plan, AsPlanned before) {
    Ticks found = of(plan, before.ticks());
    return found.withoutWork.stream()
        .filter(tick -> !isNote(tick) || found.done().noneMatch(again -> tells(tick, again)))
        .map(Ticks::told)
        .distinct()
        .toList();
  }

  private Stream<Tick> done() {
    return Stream.concat(moves.values().stream(), tasks.values().stream());
  }

  /** Whether it is what the notes of an earlier plan tell of a tick. */
  private static boolean isNote(Tick tick) {
    return tick.kind().isEmpty() && tick.plantIds().isEmpty() && tick.place().isEmpty();
  }

  /** Whether a note is about the work that was ticked: one of its plants, or else its place. */
  private static boolean tells(Tick note, Tick ticked) {
    List<String> about = ticked.plantIds().isEmpty() ? List.of(ticked.place()) : ticked.plantIds();
    return note.what().contains(ticked.what())
        && about.stream().anyMatch(text -> word(text).matcher(note.what()).find());
  }

  private static Pattern word(String text) {
    return Pattern.compile("(?<![\\p{L}\\p{N}-])" + Pattern.quote(text) + "(?![\\p{L}\\p{N}-])");
  }

  private static Diagnostic told(Tick tick) {
    if (isNote(tick)) {
      return new Diagnostic(Severity.NOTE, "PL-460.again", tick.where(), List.of(tick.what()));
    }
    List<Object> parts = new ArrayList<>(List.of(tick.what()));
    if (!tick.plantIds().isEmpty()) {
      parts.add(String.join(" ", tick.plantIds()));
    }
    if (!tick.place().isEmpty()) {
      parts.add(tick.place());
    }
    if (tick.from().toEpochDay() != 0) {
      boolean one = tick.to().equals(tick.from());
      parts.add(one ? tick.from() : Phrase.of("day-to-day", tick.from(), tick.to()));
    }
    if (!tick.mark().isEmpty()) {
      parts.add(Phrase.quoted(tick.mark()));
    }
    String key = tick.kind().isEmpty() ? "PL-460.untold" : Tick.WITHOUT_WORK;
    return new Diagnostic(Severity.WARNING, key, tick.where(), List.of(parts));
  }

  private boolean move(List<PlantMove> planned, Tick tick) {
    Optional<PlantMove> same =
        planned.stream()
            .filter(pm -> tick.plantIds().contains(pm.plan().plant().id()))
            .filter(pm -> pm.move().kind().name().equals(tick.kind()))
            .filter(pm -> pm.move().to().name().equals(tick.place()))
            .findFirst();
    same.ifPresent(pm -> moves.put(key(pm), tick));
    return same.isPresent();
  }

  /** Of work on the same plants, that which is nearest to the ticked day. */
  private boolean tasks(List<Task> planned, Tick tick) {
    Map<List<String>, Optional<Task>> nearest =
        planned.stream()
            .filter(task -> isSame(task, tick))
            .collect(
                Collectors.groupingBy(
                    Task::plantIds,
                    Collectors.minBy(
                        Comparator.comparing((Task task) -> daysBetween(task, tick))
                            .thenComparing(Task::from))));
    nearest.values().forEach(task -> task.ifPresent(t -> tasks.put(t, tick)));
    return !nearest.isEmpty();
  }

  private static long daysBetween(Task task, Tick tick) {
    return Math.abs(ChronoUnit.DAYS.between(task.from(), tick.from()));
  }

  private static boolean isSame(Task task, Tick tick) {
    boolean covered =
        tick.plantIds().isEmpty()
            || (!task.plantIds().isEmpty() && tick.plantIds().containsAll(task.plantIds()));
    return covered
        && task.kind().name().equals(tick.kind())
        && task.place().equals(tick.place())
        && !task.from().isAfter(tick.to().plusDays(DAYS_APART))
        && !task.to().isBefore(tick.from().minusDays(DAYS_APART));
  }

  private static String key(PlantMove pm) {
    return MoveTable.about(pm.plan().plant().id(), pm.move().kind());
  }

  /** Whether the move is ticked, or made by the log. */
  boolean isDone(PlantMove pm) {
    return pm.move().made() || moves.containsKey(key(pm));
  }

  boolean isDone(Task task) {
    return tasks.containsKey(task);
  }

  /** What stands under Done: the keeper's tick, or else that the log has the move. */
  Cell cell(PlantMove pm, Words words) {
    Optional<Tick> tick = Optional.ofNullable(moves.get(key(pm)));
    return tick.isEmpty() && pm.move().made()
        ? new Cell.Text(words.text("move.made"))
        : mark(tick, words);
  }

  /** What stands under Done. */
  Cell cell(Task task, Words words) {
    return mark(Optional.ofNullable(tasks.get(task)), words);
  }

  private static Cell mark(Optional<Tick> tick, Words words) {
    return tick.<Cell>map(
            t -> new Cell.Text(t.mark().isEmpty() ? words.text("workbook.tick") : t.mark()))
        .orElse(new Cell.Gap());
  }
}
