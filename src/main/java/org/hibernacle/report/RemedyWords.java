package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.NewPlace;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Remedy;

/** Tells what would help, and whom. */
final class RemedyWords {
  private static final int NAMES_IN_A_LINE = 8;

  private final Material m;

  RemedyWords(Material material) {
    this.m = material;
  }

  /** {@code 0.4 m2 of frost-free room}. */
  String text(Remedy remedy) {
    return m.words().text("remedy." + remedy.change(), amount(remedy), what(remedy));
  }

  private String amount(Remedy remedy) {
    return switch (remedy.change()) {
      case ACCEPT_RISK, EXTRA_MOVING_DAY, MORE_POTS_A_DAY, MORE_MINUTES_A_DAY ->
          m.display().number(remedy.amount(), 0);
      case MULCH -> m.measures().depth(remedy.amount());
      case MORE_ROOM, NEW_PLACE -> m.measures().areaAtLeast(remedy.amount());
    };
  }

  private String what(Remedy remedy) {
    return switch (remedy.change()) {
      case ACCEPT_RISK, MORE_POTS_A_DAY, MORE_MINUTES_A_DAY -> "";
      case EXTRA_MOVING_DAY -> m.display().longDay(remedy.day().orElseThrow());
      case MULCH, MORE_ROOM -> remedy.place().map(Place::name).orElseThrow();
      case NEW_PLACE -> m.words().of("remedy.place", kind(remedy.place().orElseThrow()));
    };
  }

  private static NewPlace kind(Place place) {
    return NewPlace.of(place).orElseThrow();
  }

  /** {@code 0.4 m2 of frost-free room: protects T03 Old olive}. */
  String line(Remedy remedy) {
    List<String> parts = new ArrayList<>();
    if (!remedy.protects().isEmpty()) {
      parts.add(m.words().text("remedy.protects", named(remedy.protects())));
    }
    if (!remedy.eases().isEmpty()) {
      parts.add(m.words().text("remedy.eases", named(remedy.eases())));
    }
    return m.words().text("remedy.line", text(remedy), m.words().listedApart(parts));
  }

  /** All that protects one plant; empty if nothing does. */
  String protecting(PlantPlan plan) {
    return m.plan().help().remedies().stream()
        .filter(r -> r.protects().stream().anyMatch(p -> p.id().equals(plan.plant().id())))
        .map(this::text)
        .collect(m.words().listingApart());
  }

  String named(List<Plant> plants) {
    return m.list(
        plants.stream().map(p -> p.id() + " " + p.name()).sorted().toList(), NAMES_IN_A_LINE);
  }
}
