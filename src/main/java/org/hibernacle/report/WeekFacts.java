package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.hibernacle.planning.InSeason;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;

/** What a plan made within the season asks for tonight and in the week that follows. */
final class WeekFacts {
  private static final int NAMES_IN_A_LINE = 12;

  private final Material m;
  private final InSeason now;
  private final List<SeasonReport.Fact> facts = new ArrayList<>();

  private WeekFacts(Material material, InSeason now) {
    this.m = material;
    this.now = now;
  }

  /** The lines for the top of the overview. */
  static List<SeasonReport.Fact> write(Material m, InSeason now) {
    WeekFacts week = new WeekFacts(m, now);
    week.tonight();
    week.threatened();
    NavigableMap<LocalDate, List<PlantMove>> days = week.ahead();
    week.today(days);
    week.tooLate();
    week.movingDays(days);
    week.tasks();
    return week.facts;
  }

  private void tonight() {
    String day = m.display().longDay(now.asOf());
    String text =
        now.tonightC().isPresent()
            ? m.words()
                .text(
                    "week.text.tonight",
                    day,
                    m.measures().temperature(now.tonightC().getAsDouble()),
                    m.display().day(now.knownTo()))
            : m.words().text("week.text.tonight.unknown", day);
    fact(m.words().text("week.tonight"), text, StyleRole.HEADING);
  }

  private NavigableMap<LocalDate, List<PlantMove>> ahead() {
    TreeMap<LocalDate, List<PlantMove>> days = new TreeMap<>();
    m.plan().movesByDate().stream()
        .filter(pm -> !pm.move().made())
        .forEach(pm -> days.computeIfAbsent(pm.move().date(), d -> new ArrayList<>()).add(pm));
    return days;
  }

  private void today(NavigableMap<LocalDate, List<PlantMove>> days) {
    List<PlantMove> moves = days.getOrDefault(now.asOf(), List.of());
    String text = moves.isEmpty() ? m.words().text("week.text.nothing") : trips(moves);
    StyleRole role = moves.isEmpty() ? StyleRole.PLAIN : StyleRole.CAUTION;
    fact(m.words().text("week.today"), text, role);
  }

  /** Moving days after today within a week, or else the next one. */
  private void movingDays(NavigableMap<LocalDate, List<PlantMove>> days) {
    days.tailMap(now.asOf(), false)
        .forEach(
            (date, moves) -> {
              if (now.thisWeek(date) || date.equals(days.firstKey())) {
                fact(m.words().text("week.on", day(date)), trips(moves), StyleRole.HEADING);
              }
            });
  }

  private String day(LocalDate date) {
    return m.display().day(date);
  }

  private String trips(List<PlantMove> moves) {
    Map<String, List<PlantPlan>> byPlace = new TreeMap<>();
    for (PlantMove pm : moves) {
      byPlace.computeIfAbsent(pm.move().to().name(), p -> new ArrayList<>()).add(pm.plan());
    }
    return byPlace.entrySet().stream()
        .map(e -> m.words().text("calendar.trip", m.words().place(e.getKey()), names(e.getValue())))
        .collect(m.words().listingApart());
  }

  /** With names where they are few, else by Id; nobody is left out. */
  private String names(List<PlantPlan> plants) {
    Function<PlantPlan, String> name =
        plants.size() <= NAMES_IN_A_LINE
            ? p -> p.plant().id() + " " + p.plant().name()
            : p -> p.plant().id();
    return plants.stream().map(name).sorted().collect(m.words().listing());
  }

  private void tooLate() {
    Map<LocalDate, List<PlantMove>> extra = new TreeMap<>();
    List<PlantPlan> lost = new ArrayList<>();
    for (InSeason.Late late : now.late()) {
      PlantPlan plan = m.plant(late.plantId());
      late.extra()
          .filter(move -> move.date().isBefore(now.asOf().plusDays(InSeason.WEEK_DAYS)))
          .ifPresentOrElse(
              move ->
                  extra
                      .computeIfAbsent(move.date(), d -> new ArrayList<>())
                      .add(new PlantMove(plan, move)),
              () -> lost.add(plan));
    }
    extra.forEach(
        (date, moves) ->
            fact(
                m.words().text("week.extra", day(date)),
                m.words().text("week.text.extra", trips(moves)),
                StyleRole.DANGER));
    if (!lost.isEmpty()) {
      fact(m.words().text("week.lost"), names(lost), StyleRole.DANGER);
    }
  }

  private void threatened() {
    if (now.tonightC().isEmpty()) {
      return;
    }
    if (now.threatened().isEmpty()) {
      fact(m.words().text("week.threatened"), m.words().text("week.text.none"), StyleRole.PLAIN);
      return;
    }
    String text =
        now.threatened().stream()
            .map(
                threat ->
                    m.words()
                        .text(
                            "week.text.threat",
                            threat.plantId() + " " + m.plant(threat.plantId()).plant().name(),
                            m.words().place(threat.place()),
                            m.measures().temperature(threat.triggerC())))
            .collect(m.words().listingApart());
    fact(m.words().text("week.threatened"), text, StyleRole.DANGER);
  }

  private void tasks() {
    TreeSet<String> work = new TreeSet<>();
    for (Task task : m.plan().tasks()) {
      if (now.thisWeek(task.from())) {
        String brief =
            m.words().text("task.short." + task.kind().name(), m.words().listed(task.plantIds()));
        work.add(
            task.place().isEmpty()
                ? brief
                : m.words().text("calendar.task", m.words().place(task.place()), brief));
      }
    }
    if (!work.isEmpty()) {
      fact(m.words().text("week.tasks"), m.words().listedApart(work), StyleRole.PLAIN);
    }
  }

  private void fact(String label, String text, StyleRole role) {
    facts.add(new SeasonReport.Fact(label, text, role));
  }
}
