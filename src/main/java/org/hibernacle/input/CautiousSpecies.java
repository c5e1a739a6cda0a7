package org.hibernacle.input;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hibernacle.model.Group;
import org.hibernacle.model.Light;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.Toxicity;

/** Makes one row that is safe for whichever of several species a plant may be. */
final class CautiousSpecies {
  /** Width of the storage range where the rows leave none, K (own choice). */
  private static final double NARROW_STORE_K = 5;

  private CautiousSpecies() {}

  /**
   * The warmest limits, the least hardy zone, the narrowest storage range, the brightest light, the
   * fastest drying and the earliest end of rest. The group is the one most rows belong to, the more
   * tender one of two that tie, because one warm-climate species must not keep a whole hardy genus
   * out of its cold rest.
   *
   * @param name for the row
   * @param rows at least one
   */
  static Species of(String name, List<Species> rows) {
    Group group = commonest(rows);
    double minStoreC = warmest(rows, Species::minStoreC);
    return new Species(
        name,
        List.of(),
        List.of(),
        group,
        Collections.min(each(rows, Species::foliage)),
        Collections.max(
            each(rows, Species::zone), Comparator.comparingDouble(zone -> zone.coldEndC())),
        Optional.empty(),
        warmest(rows, Species::rootLimitC),
        "rule:most-cautious",
        warmest(rows, Species::unhardenedLimitC),
        warmest(rows, Species::newGrowthLimitC),
        Collections.min(each(rows, Species::chillNeed)),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        minStoreC,
        highestStoreC(rows, group, minStoreC),
        light(rows),
        rows.stream().allMatch(Species::keepDry),
        Collections.max(each(rows, Species::dryingRisk)),
        toxicity(rows),
        "",
        "The most cautious figures of " + rows.size() + (rows.size() == 1 ? " row" : " rows") + ".",
        rows.stream().flatMap(s -> s.sources().stream()).distinct().toList(),
        rows.stream().allMatch(Species::builtIn));
  }

  private static Group commonest(List<Species> rows) {
    Map<Group, Integer> count = new EnumMap<>(Group.class);
    rows.forEach(s -> count.merge(s.group(), 1, Integer::sum));
    return Collections.max(
            count.entrySet(),
            Map.Entry.<Group, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .getKey();
  }

  /** The coolest upper end in the group that still leaves a range above the lower end. */
  private static double highestStoreC(List<Species> rows, Group group, double minStoreC) {
    return rows.stream()
        .filter(s -> s.group() == group)
        .mapToDouble(Species::maxStoreC)
        .filter(max -> max > minStoreC)
        .min()
        .orElse(minStoreC + NARROW_STORE_K);
  }

  private static Light light(List<Species> rows) {
    return Collections.max(each(rows, Species::lightInStore));
  }

  private static Toxicity toxicity(List<Species> rows) {
    List<Toxicity> all = each(rows, Species::toxic);
    if (all.contains(Toxicity.YES)) {
      return Toxicity.YES;
    }
    return all.contains(Toxicity.UNKNOWN) ? Toxicity.UNKNOWN : Toxicity.NO;
  }

  private static double warmest(List<Species> rows, ToDoubleFunction<Species> figure) {
    return rows.stream().mapToDouble(figure).max().orElseThrow();
  }

  private static <T> List<T> each(List<Species> rows, Function<Species, T> figure) {
    return rows.stream().map(figure).toList();
  }
}
