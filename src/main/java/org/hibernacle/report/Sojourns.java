package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Stay;

/** Which plants stand in a place, from when to when, wrapped or not. */
final class Sojourns {
  private final Material m;

  Sojourns(Material material) {
    this.m = material;
  }

  /**
   * One plant in one place.
   *
   * @param plan of the plant
   * @param in day on which it comes; empty if it stands there when the season begins
   * @param from where it comes from; empty likewise
   * @param out day on which it goes; empty if it is there when the season ends
   * @param to where it goes; empty likewise
   */
  record Sojourn(
      PlantPlan plan, Optional<LocalDate> in, String from, Optional<LocalDate> out, String to) {
    /** Whether it stands there on any of these days, be it that it is carried in or out. */
    boolean overlaps(DateSpan days) {
      return in.map(d -> d.isBefore(days.toExclusive())).orElse(true)
          && out.map(d -> !d.isBefore(days.fromInclusive())).orElse(true);
    }

    /** Whether it stands there in the morning, before what is to be carried on that day. */
    boolean before(LocalDate day) {
      return in.map(d -> d.isBefore(day) || (d.equals(day) && isMade(d))).orElse(true)
          && out.map(d -> day.isBefore(d) || (d.equals(day) && !isMade(d))).orElse(true);
    }

    private boolean isMade(LocalDate day) {
      return plan.moves().stream().anyMatch(move -> move.made() && move.date().equals(day));
    }
  }

  /** By the day of coming, then of going, then Id. */
  List<Sojourn> in(Place place) {
    List<Sojourn> found = new ArrayList<>();
    for (PlantPlan p : m.plan().plants()) {
      found.addAll(of(p, place.floorOf()));
    }
    found.sort(
        Comparator.comparing((Sojourn s) -> s.in().orElse(LocalDate.MIN))
            .thenComparing(s -> s.out().orElse(LocalDate.MAX))
            .thenComparing(s -> s.plan().plant().id()));
    return found;
  }

  /** Stays that follow each other in the same place, wrapped or not, are one. */
  private static List<Sojourn> of(PlantPlan p, String place) {
    List<Sojourn> found = new ArrayList<>();
    List<Stay> stays = p.stays();
    int i = 0;
    while (i < stays.size()) {
      int first = i;
      while (i + 1 < stays.size() && name(stays, i + 1).equals(name(stays, first))) {
        i++;
      }
      if (name(stays, first).equals(place)) {
        boolean begins = first > 0;
        boolean ends = i + 1 < stays.size();
        found.add(
            new Sojourn(
                p,
                begins ? Optional.of(stays.get(first).fromInclusive()) : Optional.empty(),
                begins ? name(stays, first - 1) : "",
                ends ? Optional.of(stays.get(i).toExclusive()) : Optional.empty(),
                ends ? name(stays, i + 1) : ""));
      }
      i++;
    }
    return found;
  }

  private static String name(List<Stay> stays, int i) {
    return stays.get(i).place().floorOf();
  }

  /** What plants that come and go together have in common. */
  private record Trip(Optional<LocalDate> in, String from, Optional<LocalDate> out, String to) {}

  /** What stands in the place, one row those that come and go together; for paper alone. */
  Section table(Place place) {
    Table table =
        new Table(m.words(), "place-stays", Table.EVERYWHERE)
            .intro(m.words().text("intro.place-stays"))
            .column("in-on", 15)
            .column("came-from", 14)
            .column("out-on", 15)
            .column("goes-to", 14)
            .column("pots-there", 8)
            .column("plants", 48);
    Map<Trip, List<Plant>> trips = new LinkedHashMap<>();
    for (Sojourn s : in(place)) {
      Trip trip = new Trip(s.in(), s.from(), s.out(), s.to());
      trips.computeIfAbsent(trip, t -> new ArrayList<>()).add(s.plan().plant());
    }
    trips.forEach(
        (trip, plants) ->
            table.row(
                StyleRole.PLAIN,
                List.of(
                    day(trip.in()),
                    words(trip.from()),
                    day(trip.out()),
                    words(trip.to()),
                    Measures.count(plants.stream().mapToInt(Plant::count).sum()),
                    new Cell.Text(
                        plants.stream()
                            .map(p -> p.id() + " " + p.name())
                            .collect(Collectors.joining(", "))))));
    return table.build();
  }

  private static Cell day(Optional<LocalDate> day) {
    return day.<Cell>map(Cell.Day::new).orElse(new Cell.Gap());
  }

  private static Cell words(String text) {
    return text.isEmpty() ? new Cell.Gap() : new Cell.Text(text);
  }
}
