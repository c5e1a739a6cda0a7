package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.NightTrigger;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Shuttle;
import org.hibernacle.report.HandOut.Item;
import org.hibernacle.report.HandOut.Kind;

/**
 * What to do at which forecast. Plants of a place whose figures differ little are told as one, by
 * the warmest of them, rounded up: no night is taken for safe that is not known to be.
 */
final class HandOutNights {
  /** Degrees of the keeper's unit by which plants told as one differ at most, if there is room. */
  private static final double ALIKE = 3;

  private final Material m;
  private final DateSpan days;
  private final Brevity brevity;

  HandOutNights(Material material, DateSpan days, Brevity brevity) {
    this.m = material;
    this.days = days;
    this.brevity = brevity;
  }

  /** Where help is of the same kind. */
  private enum Shelter {
    OUTSIDE,
    ROOFED,
    HEATED;

    static Shelter of(Place place) {
      if (!place.roofed()) {
        return OUTSIDE;
      }
      return place.lowestHeldC().isPresent() ? HEATED : ROOFED;
    }
  }

  /** A plant that must not be left at that forecast, in whole degrees of the keeper's unit. */
  private record Tender(Plant plant, Place place, double degrees) {}

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    Map<Shelter, List<Item>> byShelter = new TreeMap<>();
    byPlace()
        .forEach(
            (place, plants) -> {
              plants.sort(
                  Comparator.comparingDouble((Tender t) -> -t.degrees())
                      .thenComparing(t -> t.plant().id()));
              byShelter
                  .computeIfAbsent(Shelter.of(plants.get(0).place()), s -> new ArrayList<>())
                  .addAll(groups(plants));
            });
    byShelter.forEach(
        (shelter, groups) -> {
          items.add(
              new Item(
                  Kind.LEAD,
                  m.words().of("handout.shelter", shelter),
                  m.words().of("handout.act", shelter)));
          items.addAll(groups);
        });
    items.addAll(
        0,
        List.of(
            point("", m.words().text(items.isEmpty() ? "handout.cold.none" : "handout.cold.how"))));
    items.addAll(shuttles());
    return items;
  }

  private static Item point(String label, String text) {
    return new Item(Kind.POINT, label, text);
  }

  /** The warmest figure of each plant in each place in which it stands on these days. */
  private Map<String, List<Tender>> byPlace() {
    Map<String, List<Tender>> byPlace = new LinkedHashMap<>();
    m.plan().places().forEach(p -> byPlace.put(p.place().name(), new ArrayList<>()));
    for (PlantPlan p : m.plan().plants()) {
      Map<String, Tender> warmest = new LinkedHashMap<>();
      for (NightTrigger t : p.nightTriggers()) {
        if (t.fromInclusive().isBefore(days.toExclusive())
            && t.toExclusive().isAfter(days.fromInclusive())) {
          double up = Math.ceil(m.measures().shown(t.stationC()));
          warmest.merge(
              t.place().name(),
              new Tender(p.plant(), t.place(), up),
              (a, b) -> a.degrees() >= b.degrees() ? a : b);
        }
      }
      warmest.forEach((place, t) -> byPlace.computeIfAbsent(place, n -> new ArrayList<>()).add(t));
    }
    byPlace.values().removeIf(List::isEmpty);
    return byPlace;
  }

  /** Groups of plants from the tenderest on; the last one takes all that are left. */
  private List<Item> groups(List<Tender> plants) {
    List<Item> items = new ArrayList<>();
    int from = 0;
    while (from < plants.size()) {
      double warmest = plants.get(from).degrees();
      int to = from;
      while (to < plants.size()
          && (items.size() + 1 == brevity.groups()
              || warmest - plants.get(to).degrees() <= ALIKE)) {
        to++;
      }
      items.add(group(plants.subList(from, to), to - from == plants.size()));
      from = to;
    }
    return items;
  }

  private Item group(List<Tender> group, boolean all) {
    Tender first = group.get(0);
    List<Plant> plants = group.stream().map(Tender::plant).toList();
    int pots = plants.stream().mapToInt(Plant::count).sum();
    String which =
        all && pots > 1
            ? m.words().text("handout.cold.all", m.words().place(first.place().name()), pots)
            : m.words()
                .text(
                    "handout.place",
                    m.words().place(first.place().name()),
                    brevity.names(m.words(), plants));
    return point(atOrBelow(first.degrees()), which);
  }

  private String atOrBelow(double degrees) {
    return m.words()
        .text("handout.cold.at", m.display().number(degrees, 0) + " " + m.measures().degrees());
  }

  /** Small pots that go back for a cold night in spring. */
  private List<Item> shuttles() {
    Map<String, List<Tender>> byRefuge = new TreeMap<>();
    for (PlantPlan p : m.plan().plants()) {
      p.shuttle()
          .filter(s -> s.from().isBefore(days.toExclusive()))
          .filter(s -> !s.to().isBefore(days.fromInclusive()))
          .ifPresent(
              s ->
                  byRefuge
                      .computeIfAbsent(s.refuge().name(), r -> new ArrayList<>())
                      .add(new Tender(p.plant(), s.refuge(), degrees(s))));
    }
    List<Item> items = new ArrayList<>();
    byRefuge.forEach(
        (refuge, plants) -> {
          double warmest = plants.stream().mapToDouble(Tender::degrees).max().orElseThrow();
          items.add(
              point(
                  atOrBelow(warmest),
                  m.words()
                      .text(
                          "handout.cold.back",
                          brevity.names(m.words(), plants.stream().map(Tender::plant).toList()),
                          refuge)));
        });
    return items;
  }

  /** The figure is of the air at home, which may be colder than the station's on clear nights. */
  private double degrees(Shuttle s) {
    double siteC = s.triggerC() + m.plan().inventory().settings().siteColderByK();
    return Math.ceil(m.measures().shown(siteC));
  }
}
