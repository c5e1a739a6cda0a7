package org.hibernacle.review;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PlantedLossesTest {
  @Test
  void x() {
    long t0 = System.nanoTime();
    PlantedSeason s = new PlantedSeason(2014);
    System.out.println("planted s " + (System.nanoTime() - t0) / 1e9);
    t0 = System.nanoTime();
    SeasonReview r = Reviewer.review(s.question()).orElseThrow();
    System.out.println("reviewed s " + (System.nanoTime() - t0) / 1e9);
    Map<Cause, Map<Cause, Integer>> c = new EnumMap<>(Cause.class);
    for (int i = 0; i < s.rows().size(); i++) {
      var row = s.rows().get(i);
      var p = r.plants().get(i);
      if (row.cause().isPresent()) {
        c.computeIfAbsent(row.cause().get(), k -> new EnumMap<>(Cause.class))
            .merge(p.likeliest().orElseThrow().cause(), 1, Integer::sum);
      }
      System.out.printf(
          "%-34s %-26s %-12s %s | hard %s early %s | plan %s %s%n",
          row.plant().id(),
          row.cause().map(Enum::name).orElse("-"),
          p.outcome(),
          p.causes().stream()
              .limit(3)
              .map(x -> x.cause() + " " + Math.round(100 * x.share()) + "% " + x.day().orElse(null))
              .collect(Collectors.joining(", ")),
          p.lived().hardRoots().map(Cold::marginK).map(d -> String.format("%.1f", d)).orElse("-"),
          p.lived()
              .unhardened()
              .map(x -> String.format("%.1f %s", x.marginK(), x.day()))
              .orElse("-"),
          p.verdict(),
          p.prevention().orElse(null));
    }
    c.forEach((k, v) -> System.out.println(k + " " + v));
    System.out.println(r.notes());
    r.corrections().forEach(System.out::println);
    r.punctuality().forEach(System.out::println);
  }
}
