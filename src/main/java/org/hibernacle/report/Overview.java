package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Violation;

/** The plan in a dozen lines. */
final class Overview {
  private final Material m;
  private final SeasonPlan plan;
  private final List<SeasonReport.Fact> facts = new ArrayList<>();

  private Overview(Material material) {
    this.m = material;
    this.plan = material.plan();
  }

  static List<SeasonReport.Fact> write(Material m) {
    Overview overview = new Overview(m);
    overview.collection();
    overview.moves();
    overview.dangers();
    overview.weather();
    return overview.facts;
  }

  private void collection() {
    int pots = plan.plants().stream().mapToInt(p -> p.plant().count()).sum();
    fact("plants", StyleRole.PLAIN, "plants", pots, plan.plants().size());
    fact("staying", StyleRole.STAYS, "plain", pots(Verdict.STAYS_HOME));
    long threatened = plan.plants().stream().filter(p -> p.withoutMoves().isPresent()).count();
    fact("threatened", StyleRole.PLAIN, "rows", threatened);
  }

  private int pots(Verdict verdict) {
    return plan.plants().stream()
        .filter(p -> p.verdict() == verdict)
        .mapToInt(p -> p.plant().count())
        .sum();
  }

  private void moves() {
    List<PlantMove> moves = plan.movesByDate();
    List<LocalDate> days = moves.stream().map(pm -> pm.move().date()).distinct().toList();
    fact("moves", StyleRole.PLAIN, "moves", moves.size(), days.size());
    if (!days.isEmpty()) {
      day("first-move", days.get(0));
      day("last-move", days.get(days.size() - 1));
    }
  }

  private void day(String key, LocalDate day) {
    facts.add(
        new SeasonReport.Fact(
            m.words().text("overview." + key), m.display().longDay(day), StyleRole.PLAIN));
  }

  private void dangers() {
    List<Plant> lost = plan.unprotected().map(PlantPlan::plant).toList();
    int lostPots = lost.stream().mapToInt(Plant::count).sum();
    String ids = m.ids(lost.stream().map(Plant::id).sorted().toList(), 12);
    StyleRole role = lost.isEmpty() ? StyleRole.PLAIN : StyleRole.DANGER;
    fact("unprotected", role, lost.isEmpty() ? "none" : "plants-named", lostPots, ids);
    worstWinter();
    List<String> overfull =
        plan.places().stream().filter(PlaceForecast::overfull).map(this::overfull).toList();
    if (overfull.isEmpty()) {
      fact("overfull", StyleRole.PLAIN, "none");
    } else {
      fact("overfull", StyleRole.DANGER, "plain", String.join("; ", overfull));
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

  /** Plants fail together, in the same winter: how many, and what they are worth. */
  private void worstWinter() {
    Map<Season, List<PlantPlan>> failing = new TreeMap<>();
    for (PlantPlan p : plan.plants()) {
      p.broken().stream()
          .map(Violation::winter)
          .distinct()
          .forEach(w -> failing.computeIfAbsent(w, season -> new ArrayList<>()).add(p));
    }
    Optional<Map.Entry<Season, List<PlantPlan>>> worst =
        failing.entrySet().stream()
            .max(
                Comparator.comparingInt(
                        (Map.Entry<Season, List<PlantPlan>> e) -> pots(e.getValue()))
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
    fact("caution", StyleRole.PLAIN, "caution", m.measures().difference(settings.safetyMarginK()));
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
        .collect(Collectors.joining(", "));
  }

  private void fact(String label, StyleRole role, String pattern, Object... arguments) {
    facts.add(
        new SeasonReport.Fact(
            m.words().text("overview." + label),
            m.words().text("overview.text." + pattern, arguments),
            role));
  }
}
