package org.hibernacle.planning;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * Winters that may hold a plant's dates where they are: the one that is first to break a rule at
 * home, the one that is last to, the worst there, and those that the path itself breaks a rule in.
 */
final class BindingWinters {
  private BindingWinters() {}

  /** Indices of winters that are not excused yet, without order of weight. */
  static Set<Integer> of(PlantPlanner.Found found, WintersOnFile winters) {
    Set<Integer> binding = new LinkedHashSet<>();
    List<Lived> threatened =
        found.atHome().stream()
            .filter(lived -> !found.excused().contains(lived.winter()))
            .filter(lived -> !lived.violations().isEmpty())
            .toList();
    BiFunction<Lived, Comparator<Integer>, Integer> night =
        (lived, order) ->
            lived.violations().stream()
                .map(b -> winters.planNight(lived.winter(), b.night()))
                .max(order)
                .orElseThrow();
    threatened.stream()
        .min(Comparator.comparing(lived -> night.apply(lived, Comparator.reverseOrder())))
        .ifPresent(lived -> binding.add(lived.winter()));
    threatened.stream()
        .max(Comparator.comparing(lived -> night.apply(lived, Comparator.naturalOrder())))
        .ifPresent(lived -> binding.add(lived.winter()));
    threatened.stream()
        .max(Comparator.comparingLong(lived -> KnownBreaks.ticks(List.of(lived), Set.of())))
        .ifPresent(lived -> binding.add(lived.winter()));
    found.lived().stream()
        .filter(lived -> !lived.violations().isEmpty())
        .map(Lived::winter)
        .filter(w -> !found.excused().contains(w))
        .forEach(binding::add);
    return binding;
  }
}
