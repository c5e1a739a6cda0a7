package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Season;
import org.hibernacle.planning.Explanation;
import org.hibernacle.planning.Explanation.Ease;
import org.hibernacle.planning.Explanation.PlaceTrial;
import org.hibernacle.planning.Explanation.WhatIf;
import org.hibernacle.planning.Explanation.WinterLived;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlaceFit;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Violation;

/** An invented explanation that has every kind of line in it. */
final class ExplanationFixture {
  private static final Season COLD = new Season(2020, false);
  private static final LocalDate DAY = LocalDate.of(2021, 2, 10);
  private static final Violation FROZEN =
      new Violation(Rule.ROOT_BALL, COLD, DAY, "Bench", -9.1, -6.2, 4.9);

  private ExplanationFixture() {}

  /** One plant that moves and one that stays. */
  static List<Explanation> all(SeasonPlan season) {
    return List.of(of(season, season.plants().get(1)), of(season, season.plants().get(0)));
  }

  static Explanation of(SeasonPlan season, PlantPlan plan) {
    return new Explanation(
        season,
        plan,
        List.of(
            new PlaceTrial(
                Fixtures.BENCH,
                PlaceFit.SUITS,
                3,
                Optional.of(FROZEN),
                Optional.of(LocalDate.of(2026, 11, 18)),
                Optional.of(LocalDate.of(2027, 3, 4))),
            new PlaceTrial(
                Fixtures.BED,
                PlaceFit.SUITS,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            new PlaceTrial(
                Fixtures.SHED,
                PlaceFit.TOO_DARK,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty())),
        new Ease(2, 61, 0, 57, 12),
        List.of(
            new WinterLived(
                COLD,
                new PlantPlan.Tightest(COLD, DAY, "North bed", -4.4, -6.2),
                Optional.of(FROZEN),
                true,
                Optional.of(LocalDate.of(2021, 1, 20)),
                Optional.of(LocalDate.of(2021, 4, 11))),
            new WinterLived(
                COLD.next(),
                new PlantPlan.Tightest(COLD.next(), DAY, "North bed", -5.4, -6.2),
                Optional.of(FROZEN),
                false,
                Optional.empty(),
                Optional.empty())),
        plan.moves().stream().flatMap(ExplanationFixture::whatIfs).toList());
  }

  private static java.util.stream.Stream<WhatIf> whatIfs(Move move) {
    return java.util.stream.Stream.of(
        new WhatIf(
            move, WhatIf.Kind.EARLIER, Optional.of(move.date().minusDays(14)), 0, Optional.empty()),
        new WhatIf(
            move, WhatIf.Kind.LATER, Optional.of(move.date().plusDays(14)), 2, Optional.of(FROZEN)),
        new WhatIf(move, WhatIf.Kind.NEVER, Optional.empty(), 3, Optional.of(FROZEN)));
  }
}
