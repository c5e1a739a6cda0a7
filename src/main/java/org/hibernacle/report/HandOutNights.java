package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Group;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.NightTrigger;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Shuttle;
import org.hibernacle.planning.Stay;
import org.hibernacle.report.HandOut.Item;
import org.hibernacle.report.HandOut.Kind;
import org.hibernacle.report.Sojourns.Sojourn;

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
    /** In the open, and fit for no place without heat. */
    TENDER,
    BENCH,
    /** On the ground or wrapped: frozen down or built in, so that help comes to the pot. */
    STANDS,
    ROOFED,
    HEATED;

    static Shelter of(Tender t) {
      if (t.place().roofed()) {
        return isHeated(t.place()) ? HEATED : ROOFED;
      }
      if (t.wantsHeat()) {
        return TENDER;
      }
      boolean stands = t.place().kind() == PlaceKind.GROUND || t.place().wrapOf().isPresent();
      return stands ? STANDS : BENCH;
    }
  }

  private static boolean isHeated(Place place) {
    return place.lowestHeldC().isPresent();
  }

  /** A plant that must not be left at that forecast, in whole degrees of the keeper's unit. */
  private record Tender(PlantPlan plan, Place place, double degrees) {
    Plant plant() {
      return plan.plant();
    }

    /** The heated place in which the plan keeps it, if there is one. */
    Optional<String> refuge() {
      return plan.stays().stream()
          .map(Stay::place)
          .filter(HandOutNights::isHeated)
          .map(Place::name)
          .findFirst();
    }

    /** Mediterranean plants that the plan winters without heat go where hardy ones go. */
    boolean wantsHeat() {
      Group group = plant().species().group();
      return !group.hardens() || (!group.restsCold() && refuge().isPresent());
    }
  }

  /** Plants of one place that are helped alike. */
  private record Lot(Shelter shelter, Place place, Optional<String> refuge) {}

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    Map<Shelter, List<Item>> byShelter = new TreeMap<>();
    byPlace().values().forEach(tender -> tell(tender, byShelter));
    byShelter.forEach(
        (shelter, groups) -> {
          items.add(
              new Item(
                  Kind.LEAD,
                  m.words().of("handout.shelter", shelter),
                  m.words().of("handout.act", shelter)));
          items.addAll(groups);
        });
    boolean none = items.isEmpty();
    items.add(0, point("", m.words().text(none ? "handout.cold.none" : "handout.cold.how")));
    if (!none && isAnythingCarried()) {
      String morning = m.display().longDay(days.fromInclusive());
      items.add(1, point("", m.words().text("handout.cold.counted", morning)));
    }
    items.addAll(shuttles());
    return items;
  }

  /** What stands in one place, one lot after the other, the tenderest plants first. */
  private void tell(List<Tender> there, Map<Shelter, List<Item>> byShelter) {
    there.sort(
        Comparator.comparingDouble((Tender t) -> -t.degrees()).thenComparing(t -> t.plant().id()));
    Map<Lot, List<Tender>> lots = new LinkedHashMap<>();
    for (Tender t : there) {
      Shelter shelter = Shelter.of(t);
      Optional<String> refuge = shelter == Shelter.TENDER ? t.refuge() : Optional.empty();
      lots.computeIfAbsent(new Lot(shelter, t.place(), refuge), l -> new ArrayList<>()).add(t);
    }
    lots.forEach(
        (lot, plants) ->
            byShelter
                .computeIfAbsent(lot.shelter(), s -> new ArrayList<>())
                .addAll(groups(lot, plants, lots.size() == 1)));
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
              new Tender(p, t.place(), up),
              (a, b) -> a.degrees() >= b.degrees() ? a : b);
        }
      }
      warmest.forEach((place, t) -> byPlace.computeIfAbsent(place, n -> new ArrayList<>()).add(t));
    }
    byPlace.values().removeIf(List::isEmpty);
    return byPlace;
  }

  /** Groups of plants from the tenderest on; the last one takes all that are left. */
  private List<Item> groups(Lot lot, List<Tender> plants, boolean only) {
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
      items.add(group(lot, plants.subList(from, to), only && to - from == plants.size()));
      from = to;
    }
    return items;
  }

  private Item group(Lot lot, List<Tender> group, boolean all) {
    String place = m.words().place(lot.place().name());
    List<Plant> plants = group.stream().map(Tender::plant).toList();
    int pots = plants.stream().mapToInt(Plant::count).sum();
    String which;
    if (all && pots > 1 && haveTheFloor(lot.place())) {
      which =
          stayAll(lot.place(), plants)
              ? m.words().text("handout.cold.all", place, pots)
              : m.words().text("handout.cold.there", place);
    } else {
      which = m.words().text("handout.place", place, brevity.names(m.words(), plants));
    }
    String where =
        lot.refuge()
            .map(refuge -> m.words().text("handout.cold.to", which, m.words().place(refuge)))
            .orElse(which);
    return point(atOrBelow(group.get(0).degrees()), where);
  }

  /** Whether all that stands on that floor on any of these days is wrapped, or none of it. */
  private boolean haveTheFloor(Place place) {
    return m.plan().plants().stream()
        .flatMap(p -> p.stays().stream())
        .filter(s -> s.fromInclusive().isBefore(days.toExclusive()))
        .filter(s -> s.toExclusive().isAfter(days.fromInclusive()))
        .map(Stay::place)
        .filter(p -> p.floorOf().equals(place.floorOf()))
        .allMatch(p -> p.name().equals(place.name()));
  }

  /**
   * Whether these and no others stand there, from the morning of the first day, when nothing is
   * carried yet, to the end of the last.
   */
  private boolean stayAll(Place place, List<Plant> plants) {
    List<Sojourn> there = new Sojourns(m).in(place).stream().filter(s -> s.overlaps(days)).toList();
    return there.size() == plants.size()
        && there.stream()
            .allMatch(
                s ->
                    s.before(days.fromInclusive())
                        && s.out().map(out -> !out.isBefore(days.toExclusive())).orElse(true));
  }

  private boolean isAnythingCarried() {
    return m.plan().movesByDate().stream()
        .map(PlantMove::move)
        .anyMatch(move -> days.contains(move.date()) && move.kind().carries() && !move.made());
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
                      .add(new Tender(p, s.refuge(), degrees(s))));
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
