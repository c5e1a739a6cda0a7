package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.Task;

/** Writes a page for each place in which anything stands at any time of the season. */
final class PlacePages {
  /** Above this the air of a store is let out, °C; the tasks ask for the same. */
  private static final double VENT_ABOVE_C = 5;

  private final Material m;
  private final Sojourns sojourns;

  PlacePages(Material material) {
    this.m = material;
    this.sojourns = new Sojourns(material);
  }

  List<PlacePage> write() {
    return m.plan().places().stream()
        .filter(forecast -> !sojourns.in(forecast.place()).isEmpty())
        .map(this::page)
        .toList();
  }

  private PlacePage page(PlaceForecast forecast) {
    List<Section> tables = new ArrayList<>();
    List<Task> tasks = tasks(forecast.place());
    if (!tasks.isEmpty()) {
      tables.add(TaskTable.ofPlace(m, tasks));
    }
    tables.add(sojourns.table(forecast.place()));
    return new PlacePage(
        m.words().place(forecast.place().name()),
        m.words().of("place", forecast.place().kind()),
        facts(forecast, tasks),
        room(forecast),
        tables);
  }

  private List<Task> tasks(Place place) {
    return m.plan().tasks().stream().filter(t -> t.place().equals(place.name())).toList();
  }

  private List<SeasonReport.Fact> facts(PlaceForecast forecast, List<Task> tasks) {
    List<SeasonReport.Fact> facts = new ArrayList<>();
    facts.add(
        fact(
            "coldest",
            m.words()
                .text(
                    "place-page.extreme",
                    m.measures().temperature(forecast.coldestC()),
                    m.display().pastDay(forecast.coldestDay()))));
    facts.add(
        fact(
            "warmest",
            m.words()
                .text(
                    "place-page.extreme",
                    m.measures().temperature(forecast.warmestC()),
                    m.display().pastDay(forecast.warmestDay()))));
    facts.add(
        fact(
            "warm-days",
            m.words()
                .text(
                    "place-page.days",
                    forecast.medianDaysAbove5C(),
                    m.measures().threshold(VENT_ABOVE_C))));
    facts.add(fullest(forecast));
    if (forecast.place().roofed()) {
      facts.add(fact("vent", rule(vent(forecast.place()), tasks, Set.of(Task.Kind.VENT_STORE))));
    }
    facts.add(
        fact(
            "water",
            rule(
                water(m.words(), forecast.place()),
                tasks,
                Set.of(Task.Kind.WATER_STORE, Task.Kind.THAW_OUT))));
    return facts;
  }

  private SeasonReport.Fact fact(String key, String text) {
    return new SeasonReport.Fact(m.words().text("place-page." + key), text, StyleRole.PLAIN);
  }

  private SeasonReport.Fact fullest(PlaceForecast forecast) {
    PlaceForecast.Week week =
        forecast.weeks().stream()
            .max(Comparator.comparingDouble(PlaceForecast.Week::usedM2))
            .orElseThrow();
    String used = m.measures().area(week.usedM2());
    String from = m.display().day(week.start());
    String text =
        forecast.place().floorM2().isPresent()
            ? m.words()
                .text(
                    "place-page.used-of",
                    used,
                    m.measures().area(forecast.place().floorM2().getAsDouble()),
                    week.pots(),
                    from)
            : m.words().text("place-page.used", used, week.pots(), from);
    return new SeasonReport.Fact(
        m.words().text("place-page.fullest"),
        forecast.overfull() ? m.words().text("place-page.overfull", text) : text,
        forecast.overfull() ? StyleRole.DANGER : StyleRole.PLAIN);
  }

  private String vent(Place place) {
    if (place.kind() == PlaceKind.WARM_ROOM) {
      return m.words().text("rule.vent.warm");
    }
    String key = place.vents() ? "rule.vent.vents" : "rule.vent.door";
    return m.words().text(key, m.measures().threshold(VENT_ABOVE_C));
  }

  /** How plants there are watered. */
  static String water(Words words, Place place) {
    if (!place.roofed()) {
      return words.text("rule.water.outside");
    }
    return words.text(place.kind() == PlaceKind.WARM_ROOM ? "rule.water.warm" : "rule.water.store");
  }

  /** The rule, and when the plan expects it to matter. */
  private String rule(String rule, List<Task> tasks, Set<Task.Kind> kinds) {
    String spans =
        tasks.stream()
            .filter(t -> kinds.contains(t.kind()))
            .map(t -> span(t.from(), t.to()))
            .distinct()
            .collect(Collectors.joining(", "));
    return spans.isEmpty() ? rule : m.words().text("rule.when", rule, spans);
  }

  private String span(LocalDate from, LocalDate to) {
    String first = m.display().day(from);
    return from.equals(to) ? first : m.words().text("span", first, m.display().day(to));
  }

  private PlacePage.RoomChart room(PlaceForecast forecast) {
    double roomM2 = forecast.place().floorM2().orElse(Double.MAX_VALUE);
    List<PlacePage.Week> weeks =
        forecast.weeks().stream()
            .map(
                w ->
                    new PlacePage.Week(
                        w.start(), m.measures().areaShown(w.usedM2()), w.usedM2() > roomM2 + 1e-9))
            .toList();
    return new PlacePage.RoomChart(
        m.words().text("place-page.chart", m.measures().squareMetres()),
        weeks,
        forecast.place().floorM2().isPresent()
            ? OptionalDouble.of(m.measures().areaShown(roomM2))
            : OptionalDouble.empty(),
        m.words().text("place-page.room", m.measures().area(roomM2)));
  }
}
