package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.Displaced;
import org.hibernacle.planning.Help;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Violation;

/** The plan in a dozen lines. */
final class Overview {
  private static final int NAMES_IN_A_LINE = 12;

  private final Material m;
  private final SeasonPlan plan;
  private final List<SeasonReport.Fact> facts = new ArrayList<>();

  private Overview(Material material) {
    this.m = material;
    this.plan = material.plan();
  }

  static List<SeasonReport.Fact> write(Material m) {
    Overview overview = new Overview(m);
    m.plan()
        .inSeason()
        .ifPresentOrElse(
            now -> overview.facts.addAll(WeekFacts.write(m, now)), overview::firstMove);
    overview.changes();
    overview.collection();
    overview.dangers();
    overview.work();
    overview.weather();
    return overview.facts;
  }

  private void firstMove() {
    List<PlantMove> moves = plan.movesByDate();
    if (moves.isEmpty()) {
      fact("first-move", StyleRole.STAYS, "none");
      return;
    }
    LocalDate first = moves.get(0).move().date();
    List<PlantPlan> carried =
        moves.stream().filter(pm -> pm.move().date().equals(first)).map(PlantMove::plan).toList();
    fact("first-move", StyleRole.HEADING, "day", m.display().longDay(first), named(carried));
  }

  private void changes() {
    List<String> ids = ChangeTable.changedIds(m);
    if (!ids.isEmpty()) {
      List<PlantPlan> changed = ids.stream().map(m::plant).toList();
      fact("changes", StyleRole.CAUTION, "plants-named", ids.size(), named(changed));
    }
  }

  private void collection() {
    List<PlantPlan> all = plan.plants();
    fact("plants", StyleRole.PLAIN, "plants", pots(all), all.size());
    List<PlantPlan> lost = plan.unprotected().toList();
    countAndNames(lost.isEmpty() ? "unprotected.none" : "unprotected", StyleRole.DANGER, lost);
    help(lost);
    List<PlantPlan> staying = all.stream().filter(p -> p.verdict() == Verdict.STAYS_HOME).toList();
    countAndNames("staying", StyleRole.STAYS, staying);
    int threatened = pots(all.stream().filter(p -> p.withoutMoves().isPresent()).toList());
    fact("threatened", StyleRole.PLAIN, "of", threatened, pots(all));
  }

  /** What would help, right below those who need it. */
  private void help(List<PlantPlan> lost) {
    Help help = plan.help();
    RemedyWords remedies = new RemedyWords(m);
    help.remedies().forEach(r -> fact("help", StyleRole.CAUTION, "plain", remedies.line(r)));
    if (!help.beyondHelp().isEmpty()) {
      fact("help", StyleRole.DANGER, "help.none-for", remedies.named(help.beyondHelp()));
    } else if (help.remedies().isEmpty() && displaced().findAny().isPresent() && lost.isEmpty()) {
      fact("help", StyleRole.PLAIN, "help.none");
    }
  }

  private Stream<PlantPlan> displaced() {
    return plan.plants().stream().filter(p -> p.displaced().isPresent());
  }

  private void countAndNames(String label, StyleRole role, List<PlantPlan> plants) {
    if (plants.isEmpty()) {
      fact(label, StyleRole.PLAIN, "none");
    } else {
      fact(label, role, "plants-named", pots(plants), named(plants));
    }
  }

  /** {@code P31 Chinese elm, P44 Banyan and 4 more}. */
  private String named(List<PlantPlan> plants) {
    List<String> names =
        plants.stream().map(p -> p.plant().id() + " " + p.plant().name()).sorted().toList();
    return m.list(names, NAMES_IN_A_LINE);
  }

  private void work() {
    List<PlantMove> moves = plan.movesByDate().stream().filter(pm -> !pm.move().made()).toList();
    Map<LocalDate, List<PlantPlan>> days = new TreeMap<>();
    moves.forEach(
        pm -> days.computeIfAbsent(pm.move().date(), d -> new ArrayList<>()).add(pm.plan()));
    if (days.isEmpty()) {
      return;
    }
    LocalDate last = moves.get(moves.size() - 1).move().date();
    fact("moves", StyleRole.PLAIN, "moves", moves.size(), days.size(), m.display().longDay(last));
    Map.Entry<LocalDate, List<PlantPlan>> fullest =
        Collections.max(days.entrySet(), Comparator.comparingInt(day -> pots(day.getValue())));
    fact(
        "fullest-day",
        StyleRole.PLAIN,
        "fullest-day",
        m.display().longDay(fullest.getKey()),
        pots(fullest.getValue()));
    long heavyDays =
        moves.stream().filter(MoveTable::heavy).map(pm -> pm.move().date()).distinct().count();
    String onePerson = m.measures().mass(MoveTable.ONE_PERSON_KG);
    fact("heavy-days", StyleRole.PLAIN, "heavy-days", heavyDays, onePerson);
  }

  /** Pots that do not get what would suit them best. */
  private void gaveWay() {
    int room = pots(displaced(Displaced.Kind.ROOM));
    int hands = pots(displaced(Displaced.Kind.HANDS));
    if (room + hands > 0) {
      fact("gave-way", StyleRole.CAUTION, "gave-way", room, hands);
    }
  }

  private List<PlantPlan> displaced(Displaced.Kind kind) {
    return plan.plants().stream()
        .filter(p -> p.displaced().filter(d -> d.kind() == kind).isPresent())
        .toList();
  }

  private void dangers() {
    gaveWay();
    worstWinter();
    List<String> overfull =
        plan.places().stream().filter(PlaceForecast::overfull).map(this::overfull).toList();
    if (overfull.isEmpty()) {
      fact("overfull", StyleRole.PLAIN, "none");
    } else {
      fact("overfull", StyleRole.DANGER, "plain", m.words().listedApart(overfull));
    }
    plan.plants().stream()
        .min(
            Comparator.comparingDouble((PlantPlan p) -> p.tightest().marginK())
                .thenComparing(p -> p.plant().id()))
        .ifPresent(
            p ->
                fact(
                    "tightest",
                    p.tightest().marginK() < 0 ? StyleRole.DANGER : StyleRole.PLAIN,
                    p.tightest().marginK() < 0 ? "tightest-below" : "tightest",
                    p.plant().id(),
                    p.plant().name(),
                    m.measures().difference(Math.abs(p.tightest().marginK())),
                    m.display().pastDay(p.tightest().day())));
  }

  /** The most that any plant misses in a winter, K. */
  private double missedK(Season winter) {
    return plan.plants().stream()
        .flatMap(p -> p.broken().stream())
        .filter(v -> v.winter().equals(winter))
        .mapToDouble(Violation::deficitK)
        .max()
        .orElse(0);
  }

  /** Plants fail together, in the same winter: how many, and what they are worth. */
  private void worstWinter() {
    Map<Season, List<PlantPlan>> failing = new TreeMap<>();
    for (PlantPlan p : plan.plants()) {
      p.broken().stream()
          .filter(v -> plan.inSeason().isEmpty() || !plan.season().contains(v.day()))
          .map(Violation::winter)
          .distinct()
          .forEach(w -> failing.computeIfAbsent(w, season -> new ArrayList<>()).add(p));
    }
    Optional<Map.Entry<Season, List<PlantPlan>>> worst =
        failing.entrySet().stream()
            .max(
                Comparator.comparingInt(
                        (Map.Entry<Season, List<PlantPlan>> e) -> pots(e.getValue()))
                    .thenComparing(e -> missedK(e.getKey()))
                    .thenComparing(Map.Entry.comparingByKey()));
    worst.ifPresent(
        w -> {
          double value = w.getValue().stream().mapToDouble(p -> p.plant().value().orElse(0)).sum();
          fact(
              "worst-winter",
              StyleRole.CAUTION,
              value > 0 ? "winter-value" : "winter",
              w.getKey().toString(),
              pots(w.getValue()),
              m.display().number(value, 0));
        });
  }

  private static int pots(List<PlantPlan> plants) {
    return plants.stream().mapToInt(p -> p.plant().count()).sum();
  }

  private String overfull(PlaceForecast forecast) {
    return m.words()
        .text(
            "overview.text.overfull",
            forecast.place().name(),
            m.measures().area(forecast.peakM2()),
            m.measures().area(forecast.place().floorM2().orElse(0)));
  }

  private void weather() {
    List<WinterSummary> winters = plan.winters();
    WinterSummary coldest =
        winters.stream()
            .min(Comparator.comparingDouble(WinterSummary::coldestNightC))
            .orElseThrow();
    fact(
        "coldest",
        StyleRole.PLAIN,
        "coldest",
        m.measures().temperature(coldest.coldestNightC()),
        m.display().pastDay(coldest.coldestNight()));
    facts.add(
        new SeasonReport.Fact(m.words().text("overview.winters"), wintersUsed(m), StyleRole.PLAIN));
    Settings settings = plan.inventory().settings();
    int accepted =
        plan.plants().stream()
            .filter(p -> p.verdict() != Verdict.UNPROTECTED)
            .mapToInt(m::wintersBroken)
            .max()
            .orElse(0);
    fact(
        "caution",
        StyleRole.PLAIN,
        "caution",
        m.measures().difference(plan.caution().marginK()),
        accepted,
        m.measures().temperature(0));
    fact("moving-days", StyleRole.PLAIN, "plain", weekdays(settings));
  }

  /** {@code 10 winters on file, 2015/16 to 2024/25}. */
  static String wintersUsed(Material m) {
    List<WinterSummary> winters = m.plan().winters();
    return m.words()
        .text(
            "winters.used",
            winters.size(),
            winters.get(0).season().toString(),
            winters.get(winters.size() - 1).season().toString());
  }

  private String weekdays(Settings settings) {
    return java.util.stream.IntStream.range(0, 7)
        .mapToObj(settings.firstDayOfWeek()::plus)
        .filter(settings.movingDays()::contains)
        .map(d -> d.getDisplayName(java.time.format.TextStyle.FULL, m.words().locale()))
        .collect(m.words().listing());
  }

  private void fact(String label, StyleRole role, String pattern, Object... arguments) {
    facts.add(
        new SeasonReport.Fact(
            m.words().text("overview." + label),
            m.words().text("overview.text." + pattern, arguments),
            role));
  }
}
