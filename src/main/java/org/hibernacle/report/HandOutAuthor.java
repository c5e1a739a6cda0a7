package org.hibernacle.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Species;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Task;
import org.hibernacle.report.HandOut.Item;
import org.hibernacle.report.HandOut.Kind;

/** Writes the hand-out: decides every word, and what is left out of a shorter one. */
public final class HandOutAuthor {
  private static final List<String> NEVER =
      List.of("warm", "knock", "water", "snow", "trunk", "work");
  private static final List<String> CARE =
      List.of("heaters", "power", "ice", "poison", "pesticides", "vents");
  private static final List<String> TELEPHONES =
      List.of("keeper", "neighbour", "lifting", "heating", "emergency");

  private final Material m;
  private final DateSpan days;
  private final Brevity brevity;

  private HandOutAuthor(Material material, DateSpan days, Brevity brevity) {
    this.m = material;
    this.days = days;
    this.brevity = brevity;
  }

  /**
   * The hand-out for some days, the fullest first, each further one shorter; the first that fits
   * {@link HandOut#MOST_PAGES} is the one to print.
   *
   * @param plan to take it from
   * @param facts of the run
   * @param words in the language of the report
   * @param days within the season, {@link HandOut#MOST_DAYS} at most
   */
  public static List<HandOut> editions(
      SeasonPlan plan, RunFacts facts, Words words, DateSpan days) {
    Material m = Material.of(plan, facts, words);
    return Stream.of(Brevity.values())
        .map(brevity -> new HandOutAuthor(m, days, brevity).write())
        .toList();
  }

  private HandOut write() {
    Settings settings = m.plan().inventory().settings();
    String span =
        m.words()
            .text(
                "span",
                m.display().longDay(days.fromInclusive()),
                m.display().longDay(days.toExclusive().minusDays(1)));
    String subtitle =
        settings.site().isBlank()
            ? span
            : m.words().text("handout.subtitle", settings.site(), span);
    List<HandOut.Part> parts = new ArrayList<>();
    parts.add(part("first", StyleRole.HEADING, first()));
    parts.add(part("telephone", StyleRole.HEADING, telephones()));
    parts.add(part("days", StyleRole.HEADING, new HandOutDays(m, days, brevity).items()));
    List<Item> water = water();
    if (!water.isEmpty()) {
      parts.add(part("water", StyleRole.HEADING, water));
    }
    parts.add(part("cold", StyleRole.HEADING, new HandOutNights(m, days, brevity).items()));
    List<Item> power = power();
    if (!power.isEmpty()) {
      parts.add(part("power", StyleRole.HEADING, power));
    }
    parts.add(part("never", StyleRole.DANGER, points("handout.never.", NEVER)));
    String morning = m.display().longDay(days.fromInclusive());
    parts.add(
        new HandOut.Part(m.words().text("handout.where", morning), StyleRole.HEADING, where()));
    parts.add(part("care", StyleRole.CAUTION, care()));
    return new HandOut(
        m.words().text("handout.title"),
        subtitle,
        parts,
        m.words().text("handout.footer", m.facts().programVersion()),
        m.facts().digest() + " " + days,
        settings.paper() == Settings.Paper.LETTER,
        m.words().locale(),
        days.fromInclusive());
  }

  private HandOut.Part part(String key, StyleRole role, List<Item> items) {
    return new HandOut.Part(m.words().text("handout." + key), role, items);
  }

  private List<Item> points(String prefix, List<String> keys) {
    return keys.stream().map(key -> point("", m.words().text(prefix + key))).toList();
  }

  private static Item point(String label, String text) {
    return new Item(Kind.POINT, label, text);
  }

  private List<Item> first() {
    String mark = m.plan().plants().stream().map(p -> p.plant().id()).findFirst().orElse("1");
    return Stream.of("evening", "labels", "carry", "unsure")
        .map(key -> point("", m.words().text("handout.first." + key, mark)))
        .toList();
  }

  private List<Item> telephones() {
    return TELEPHONES.stream()
        .map(key -> new Item(Kind.BLANK, m.words().text("handout.telephone." + key), ""))
        .toList();
  }

  /** The places in which pots stand in these days, those that are watered alike together. */
  private List<Item> water() {
    Sojourns sojourns = new Sojourns(m);
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (PlaceForecast forecast : m.plan().places()) {
      if (sojourns.in(forecast.place()).stream().anyMatch(s -> s.overlaps(days))) {
        places
            .computeIfAbsent(
                PlacePages.water(m.words(), forecast.place()), rule -> new ArrayList<>())
            .add(m.words().place(forecast.place().name()));
      }
    }
    List<Item> items = new ArrayList<>();
    places.forEach(
        (rule, names) ->
            items.add(point(m.words().text("handout.task.at", String.join(", ", names)), rule)));
    if (!items.isEmpty()) {
      items.add(point("", m.words().text("handout.water.single")));
    }
    return items;
  }

  /** Places whose heat keeps plants alive, and which ones. */
  private List<Item> power() {
    List<Item> items = new ArrayList<>();
    for (Task task : m.plan().tasks()) {
      if (task.kind() == Task.Kind.POWER_FAILURE && HandOutDays.overlaps(task, days)) {
        List<Plant> plants = task.plantIds().stream().map(id -> m.plant(id).plant()).toList();
        items.add(
            point(
                m.words().text("handout.task.at", m.words().place(task.place())),
                m.words()
                    .text(
                        "handout.power.place",
                        m.measures().temperature(task.amount().orElseThrow()),
                        brevity.names(m.words(), plants))));
      }
    }
    if (!items.isEmpty()) {
      items.add(point("", m.words().text("handout.power.do")));
    }
    return items;
  }

  private List<Item> where() {
    Sojourns sojourns = new Sojourns(m);
    List<Item> items = new ArrayList<>();
    for (PlaceForecast forecast : m.plan().places()) {
      List<Plant> there =
          sojourns.in(forecast.place()).stream()
              .filter(s -> s.before(days.fromInclusive()))
              .map(s -> s.plan().plant())
              .toList();
      if (!there.isEmpty()) {
        String label =
            m.words()
                .text(
                    "handout.where.place",
                    m.words().place(forecast.place().name()),
                    there.stream().mapToInt(Plant::count).sum());
        items.add(point(label, brevity.names(m.words(), there)));
      }
    }
    return items;
  }

  private List<Item> care() {
    List<Item> items = new ArrayList<>();
    items.add(
        point("", m.words().text("caution.lifting", m.measures().mass(MoveTable.ONE_PERSON_KG))));
    items.addAll(points("caution.", CARE));
    Map<Species.Toxicity, List<Plant>> poison =
        m.plan().plants().stream()
            .map(PlantPlan::plant)
            .collect(
                Collectors.groupingBy(p -> p.species().toxic(), TreeMap::new, Collectors.toList()));
    poison.forEach(
        (toxic, plants) -> {
          if (toxic != Species.Toxicity.NO) {
            String label = m.words().text("handout.poison", m.words().of("poison", toxic));
            items.add(point(label, brevity.names(m.words(), plants)));
          }
        });
    items.add(point("", m.words().text("handout.care.local")));
    return items;
  }
}
