package org.hibernacle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.RootKill;
import org.hibernacle.physiology.Hardening;
import org.hibernacle.physiology.Rest;

/** One species with every figure, its basis and its source. */
final class SpeciesSheet {
  private static final int LABEL_WIDTH = 22;
  private static final String MEMORY = "memory";

  private final List<String> lines = new ArrayList<>();
  private final Species species;

  private SpeciesSheet(Species species) {
    this.species = species;
  }

  static List<String> lines(Species species) {
    return new SpeciesSheet(species).write();
  }

  private List<String> write() {
    lines.add(species.taxon());
    optional("common names", String.join(", ", species.commonNames()));
    optional("other names", String.join(", ", species.synonyms()));
    line("group", word(species.group()) + ", " + foliage());
    line("hardiness zone", species.zone() + ", top, roots in open ground" + starred());
    line("root limit", celsius(species.rootLimitC()) + ", " + basis());
    line("root death on record", rootKill());
    line("limit unhardened", celsius(species.unhardenedLimitC()) + ", root ball" + starred());
    line("limit of new growth", celsius(species.newGrowthLimitC()) + ", air" + starred());
    line(
        "shoots in midwinter",
        celsius(Hardening.shootLimitC(species)) + ", air; ESTIMATE from the zone");
    line("chill need", chill());
    Rest.heatToBudBreakKh(species)
        .ifPresent(
            heat -> line("heat to bud break", plain(heat) + " K·h after rest; ESTIMATE by group"));
    line("air in store", storage(species) + ", " + light() + starred());
    line(
        "water while cold",
        species.keepDry() ? "keep the ball dry" + starred() : "barely moist" + starred());
    line("drying over ice", word(species.dryingRisk()) + " risk" + starred());
    line("poisonous", poisonous());
    optional("notes", species.notes());
    optional("sources", String.join(", ", species.sources()) + " (keys of docs/sources.md)");
    if (fromMemory()) {
      lines.add("");
      lines.add("* common practice or memory: no text was read for it.");
    }
    return lines;
  }

  private void line(String label, String text) {
    lines.add("  " + label + " ".repeat(LABEL_WIDTH - label.length()) + text);
  }

  private void optional(String label, String text) {
    if (!text.isBlank()) {
      line(label, text);
    }
  }

  private boolean fromMemory() {
    return species.sources().contains(MEMORY);
  }

  private String starred() {
    return fromMemory() ? " *" : "";
  }

  private String basis() {
    String basis = species.rootLimitBasis();
    if (basis.equals("published")) {
      return "midwinter; rests on the figure on record below";
    }
    String how =
        basis.startsWith("rule:") ? "by the rule " + basis.substring(5) : basis.replace('-', ' ');
    return "midwinter; ESTIMATE, " + how;
  }

  private String rootKill() {
    if (species.rootKill().isEmpty()) {
      return "none";
    }
    RootKill kill = species.rootKill().get();
    String roots =
        switch (kill.kind()) {
          case "young" -> "young roots";
          case "mature" -> "mature roots";
          case "whole" -> "roots of whole plants";
          default -> "roots";
        };
    String seen =
        switch (kill.relation()) {
          case KILLS -> "kills " + roots;
          case LT50 -> "half of " + roots + " die";
          case SURVIVES -> roots + " survive: a bound, harm begins colder";
        };
    return celsius(kill.killC())
        + " "
        + seen
        + " ("
        + kill.source().replace(";", ", ")
        + (kill.verified() ? "; read in a text)" : "; FROM MEMORY, not read)");
  }

  private String chill() {
    String need = word(species.chillNeed());
    if (species.chillPortionsLow().isEmpty()) {
      return need + starred();
    }
    String low = plain(species.chillPortionsLow().getAsDouble());
    String high =
        plain(species.chillPortionsHigh().orElse(species.chillPortionsLow().getAsDouble()));
    return need
        + ", "
        + (low.equals(high) ? low : low + " to " + high)
        + " chill portions published";
  }

  private String foliage() {
    return switch (species.foliage()) {
      case EVERGREEN -> "evergreen";
      case SEMI_EVERGREEN -> "half evergreen";
      case DECIDUOUS -> "leafless in winter";
    };
  }

  private String light() {
    return switch (species.lightInStore()) {
      case DARK ->
          species.foliage() == Foliage.DECIDUOUS ? "dark is enough while leafless" : "dark";
      case LOW -> "some light";
      case BRIGHT -> "bright";
    };
  }

  private String poisonous() {
    String source =
        species.toxicSource().isBlank()
            ? ""
            : " (" + species.toxicSource().replace(";", ", ") + ")";
    return switch (species.toxic()) {
      case YES -> "yes" + source;
      case NO -> "no" + source;
      case UNKNOWN -> "unknown: nobody has looked, so not safe";
    };
  }

  /** {@code -5 to 5 °C}. */
  static String storage(Species species) {
    return plain(species.minStoreC()) + " to " + celsius(species.maxStoreC());
  }

  static String celsius(double temperatureC) {
    return plain(temperatureC) + " °C";
  }

  static String plain(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
