package org.hibernacle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hibernacle.model.Species;

/** The species table as text, one line a taxon. */
final class SpeciesList {
  private SpeciesList() {}

  static List<String> lines(List<Species> species) {
    int taxonWidth = species.stream().mapToInt(s -> s.taxon().length()).max().orElse(5);
    String format = "%-" + Math.max(taxonWidth, 5) + "s  %-19s  %-4s  %11s  %-9s  %12s";
    List<String> lines = new ArrayList<>();
    lines.add(line(format, "taxon", "group", "zone", "root limit", "", "store"));
    for (Species s : species) {
      lines.add(
          line(
              format,
              s.taxon(),
              SpeciesSheet.word(s.group()),
              s.zone().toString(),
              SpeciesSheet.celsius(s.rootLimitC()),
              s.rootLimitIsEstimate() ? "estimate" : "published",
              SpeciesSheet.storage(s)));
    }
    long estimates = species.stream().filter(Species::rootLimitIsEstimate).count();
    lines.add("");
    lines.add(
        estimates
            + " of "
            + species.size()
            + " root limits are estimates. \"hibernacle species NAME\" shows the basis of each.");
    return lines;
  }

  private static String line(String format, Object... cells) {
    return String.format(Locale.ROOT, format, cells).stripTrailing();
  }
}
