package org.hibernacle.report;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Published;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Tick;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;

/**
 * Writes the agenda: one entry a moving day with all pots of that day, one a task on the day with
 * which it begins.
 *
 * <p>An entry is known by its rank, the n-th moving day or the n-th task of its kind at its place,
 * and not by its date: a later plan of the same garden and season moves an entry where it would
 * otherwise leave the old one standing beside the new one. What an earlier plan had and this one
 * has not is told as dropped, but for what is done.
 *
 * <p>The number of the agenda grows with each plan that tells something else than the one before,
 * and with the day of the plan; one that tells the same has the same number.
 */
public final class AgendaAuthor {
  /** The evening before: pots are carried by day, and the night may be frosty. */
  private static final Duration EVENING_BEFORE = Duration.ofHours(-6);

  private static final Duration MORNING = Duration.ofHours(8);

  /** Help is not found overnight. */
  private static final Duration WEEK_BEFORE = MORNING.minusDays(7);

  private final Material m;
  private final List<Agenda.Entry> entries = new ArrayList<>();

  private AgendaAuthor(Material material) {
    this.m = material;
  }

  /**
   * Tells the plan day by day.
   *
   * @param plan to tell
   * @param facts of the run
   * @param words in the language of the agenda
   */
  public static Agenda write(SeasonPlan plan, RunFacts facts, Words words) {
    return write(Material.of(plan, facts, words));
  }

  static Agenda write(Material m) {
    AgendaAuthor author = new AgendaAuthor(m);
    author.movingDays();
    author.tasks();
    author.entries.sort(ORDER);
    String digest = digest(author.entries);
    author.published().ifPresent(author::dropped);
    author.entries.sort(ORDER);
    return author.agenda(digest);
  }

  private static final Comparator<Agenda.Entry> ORDER =
      Comparator.comparing(Agenda.Entry::day)
          .thenComparing(Agenda.Entry::title)
          .thenComparing(Agenda.Entry::id);

  private Optional<Published> published() {
    return m.facts().before().flatMap(AsPlanned::published);
  }

  /** Sixteen hexadecimal digits that change when what is planned does. */
  private static String digest(List<Agenda.Entry> entries) {
    return RunFacts.digest(
        entries.stream().filter(e -> !e.dropped()).map(Agenda.Entry::toString).toList());
  }

  private Agenda agenda(String digest) {
    SeasonPlan plan = m.plan();
    LocalDate start = plan.season().start();
    int revision = (int) ChronoUnit.DAYS.between(start, m.asOf());
    LocalDate dated = m.asOf();
    if (published().isPresent()) {
      Published before = published().get();
      boolean same = before.digest().equals(digest);
      revision = same ? before.revision() : Math.max(revision, before.revision() + 1);
      dated = same || dated.isBefore(before.dated()) ? before.dated() : dated;
    }
    return new Agenda(
        m.words().text("report.title"),
        ReportAuthor.subtitle(plan, m.words()),
        m.words().locale(),
        dated,
        revision,
        digest,
        entries);
  }

  private void movingDays() {
    Map<LocalDate, List<PlantMove>> days =
        m.plan().movesByDate().stream()
            .collect(
                Collectors.groupingBy(pm -> pm.move().date(), TreeMap::new, Collectors.toList()));
    int rank = 0;
    for (Map.Entry<LocalDate, List<PlantMove>> day : days.entrySet()) {
      rank++;
      boolean over = day.getValue().stream().allMatch(m.ticks()::isDone);
      entries.add(
          new Agenda.Entry(
              id("moving day", "", rank),
              day.getKey(),
              title(day.getValue()),
              day.getValue().stream().map(this::pot).collect(Collectors.joining("\n\n")),
              over ? Optional.empty() : Optional.of(EVENING_BEFORE),
              "",
              "",
              false));
    }
    if (published().isEmpty()) {
      dropped(days.size());
    }
  }

  /** What an earlier plan told and this one does not, unless it is done or over. */
  private void dropped(Published before) {
    Set<UUID> ids = entries.stream().map(Agenda.Entry::id).collect(Collectors.toSet());
    for (Published.Event event : before.events()) {
      boolean over = !event.kind().isEmpty() && event.day().isBefore(m.asOf());
      if (!ids.contains(event.id()) && (event.dropped() || !(over || isDone(event)))) {
        String text =
            event.kind().isEmpty()
                ? m.words().text("agenda.dropped")
                : m.words().text("agenda.dropped-task");
        entries.add(
            new Agenda.Entry(
                event.id(),
                event.day(),
                event.title(),
                text,
                Optional.empty(),
                event.kind(),
                event.place(),
                true));
      }
    }
  }

  /** Whether the keeper ticked it, of a moving day every pot. */
  private boolean isDone(Published.Event event) {
    AsPlanned before = m.facts().before().orElseThrow();
    Stream<Tick> ticks =
        before.ticks().stream()
            .filter(t -> t.moving() == event.kind().isEmpty() && t.from().equals(event.day()));
    if (event.kind().isEmpty()) {
      Set<String> ticked = ticks.map(t -> t.kind() + t.plantIds()).collect(Collectors.toSet());
      List<String> moves =
          before.moves().stream()
              .filter(move -> move.date().equals(event.day()))
              .map(move -> move.kind() + List.of(move.plantId()))
              .toList();
      return !moves.isEmpty() && ticked.containsAll(moves);
    }
    return ticks.anyMatch(t -> t.kind().equals(event.kind()) && t.place().equals(event.place()));
  }

  /** The moving days that the plan before had beyond those of this one. */
  private void dropped(int kept) {
    List<LocalDate> before =
        m.facts().before().stream()
            .flatMap(b -> b.moves().stream())
            .map(MovePlanned::date)
            .distinct()
            .sorted()
            .toList();
    for (int rank = kept + 1; rank <= before.size(); rank++) {
      String title = m.words().text("agenda.dropped");
      LocalDate day = before.get(rank - 1);
      entries.add(
          new Agenda.Entry(
              id("moving day", "", rank), day, title, title, Optional.empty(), "", "", true));
    }
  }

  private String title(List<PlantMove> moves) {
    int carried = pots(moves, true);
    int wrapped = pots(moves, false);
    if (wrapped == 0) {
      return m.words().text("agenda.move", carried);
    }
    return carried == 0
        ? m.words().text("agenda.wrap", wrapped)
        : m.words().text("agenda.move-and-wrap", carried, wrapped);
  }

  private static int pots(List<PlantMove> moves, boolean carried) {
    return moves.stream()
        .filter(pm -> pm.move().kind().carries() == carried)
        .mapToInt(pm -> pm.plan().plant().count())
        .sum();
  }

  /** What is done with one row of the inventory, and why. */
  private String pot(PlantMove pm) {
    Move move = pm.move();
    String line =
        m.words()
            .text(
                "agenda.pot",
                pm.plan().plant().id(),
                MoveTable.name(m, pm.plan().plant()),
                m.words().place(move.from().name()),
                m.words().place(move.to().name()),
                m.measures().mass(pm.plan().estimatedMassKg()));
    if (MoveTable.heavy(pm)) {
      line = m.words().text("agenda.pot.two", line);
    }
    if (move.made()) {
      return m.words().text("agenda.pot.made", line);
    }
    String why = Why.of(m, pm.plan(), move);
    return why.isEmpty() ? line : line + "\n" + why;
  }

  private void tasks() {
    TaskTable table = new TaskTable(m);
    Map<String, Integer> ranks = new HashMap<>();
    for (Task task : m.plan().tasks()) {
      int rank = ranks.merge(task.kind() + "|" + task.place(), 1, Integer::sum);
      String brief =
          m.words().text("task.short." + task.kind().name(), m.list(task.plantIds(), MOST_NAMED));
      entries.add(
          new Agenda.Entry(
              id(task.kind().name(), task.place(), rank),
              task.from(),
              task.place().isEmpty()
                  ? brief
                  : m.words().text("calendar.task", m.words().place(task.place()), brief),
              text(table, task),
              alarm(task),
              task.kind().name(),
              task.place(),
              false));
    }
  }

  private Optional<Duration> alarm(Task task) {
    if (m.ticks().isDone(task)) {
      return Optional.empty();
    }
    return Optional.of(task.kind() == Task.Kind.TWO_PERSON_LIFT ? WEEK_BEFORE : MORNING);
  }

  private static final int MOST_NAMED = 3;

  private String text(TaskTable table, Task task) {
    List<String> lines = new ArrayList<>();
    lines.add(table.sentence(task));
    if (!task.to().equals(task.from())) {
      lines.add(m.words().text("agenda.until", m.display().longDay(task.to())));
    }
    if (!task.plantIds().isEmpty()) {
      lines.add(m.words().text("agenda.plants", table.plants(task)));
    }
    String amount = m.display().text(table.amount(task));
    if (!amount.isEmpty()) {
      lines.add(m.words().text("agenda.amount", amount));
    }
    return String.join("\n", lines);
  }

  /** Different for every garden, season, kind and place; the same on every machine. */
  private UUID id(String kind, String place, int rank) {
    Settings s = m.plan().inventory().settings();
    String text =
        String.join(
            "\n",
            "hibernacle",
            s.site(),
            Double.toString(s.latitudeDeg()),
            Double.toString(s.longitudeDeg()),
            m.plan().season().toString(),
            kind,
            place,
            Integer.toString(rank));
    return UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8));
  }
}
