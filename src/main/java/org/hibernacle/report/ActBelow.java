package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.planning.NightTrigger;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Stay;

/**
 * Tells below which forecast a plant must not be left as it stands: place by place, and half month
 * by half month, those that differ little as one, by the warmest of them. Rounded up, so that no
 * night is taken for safe that is not known to be.
 */
final class ActBelow {
  /** Degrees of the keeper's unit by which half months told as one differ at most. */
  private static final double ALIKE = 3;

  private final Material m;
  private final List<String> places = new ArrayList<>();
  private final List<String> spans = new ArrayList<>();
  private String place = "";
  private LocalDate from = LocalDate.MIN;
  private LocalDate to = LocalDate.MIN;
  private double warmest;
  private double coldest;

  private ActBelow(Material m) {
    this.m = m;
  }

  /** The phrase; empty without triggers. */
  static String of(Material m, PlantPlan p) {
    ActBelow told = new ActBelow(m);
    p.nightTriggers().forEach(told::add);
    told.endPlace();
    return told.places.isEmpty()
        ? ""
        : m.words()
            .text("plant.act-below", m.measures().degrees(), m.words().listedApart(told.places));
  }

  /** The same for one stay: its temperatures with their last days, in order. */
  static List<String> during(Material m, PlantPlan p, Stay stay) {
    ActBelow told = new ActBelow(m);
    p.nightTriggers().stream()
        .filter(t -> t.place().name().equals(stay.place().name()))
        .filter(t -> !t.fromInclusive().isBefore(stay.fromInclusive()))
        .filter(t -> t.fromInclusive().isBefore(stay.toExclusive()))
        .forEach(told::add);
    told.endSpan();
    return List.copyOf(told.spans);
  }

  private void add(NightTrigger t) {
    double up = Math.ceil(m.measures().shown(t.stationC()));
    if (!t.place().name().equals(place)) {
      endPlace();
      place = t.place().name();
    } else if (Math.max(up, warmest) - Math.min(up, coldest) > ALIKE) {
      endSpan();
    }
    warmest = spanIsOver() ? up : Math.max(up, warmest);
    coldest = spanIsOver() ? up : Math.min(up, coldest);
    from = spanIsOver() ? t.fromInclusive() : from;
    to = t.toExclusive();
  }

  private boolean spanIsOver() {
    return from.equals(LocalDate.MIN);
  }

  private void endSpan() {
    if (!spanIsOver()) {
      String last = m.display().dayAndMonth(to.minusDays(1));
      spans.add(m.words().text("act-below.until", m.display().number(warmest, 0), last));
      from = LocalDate.MIN;
    }
  }

  private void endPlace() {
    endSpan();
    if (!spans.isEmpty()) {
      places.add(
          m.words().text("act-below.place", m.words().place(place), m.words().listed(spans)));
      spans.clear();
    }
  }
}
