package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.climate.Winter;
import org.hibernacle.planning.Explanation.PlaceTrial;
import org.hibernacle.planning.Explanation.WhatIf;
import org.hibernacle.planning.Explanation.WinterLived;

/** Gathers what there is to say about one plant. */
final class Explainer {
  /** How far other dates are tried, days. */
  private static final int SHIFT_DAYS = 14;

  private final PlantPlanner planner;
  private final PlantPlanner.Found found;
  private final WintersOnFile winters;

  Explainer(Together.Settled settled, WintersOnFile winters) {
    this.planner = settled.planner();
    this.found = settled.found();
    this.winters = winters;
  }

  Explanation explain(SeasonPlan season, PlantPlan plan) {
    List<PlaceTrial> places = new ArrayList<>();
    for (int p = 0; p < winters.places().size(); p++) {
      places.add(place(p));
    }
    List<WinterLived> lived = found.lived().stream().map(this::winter).toList();
    return new Explanation(
        season, plan, places, Cost.ease(found.cost().comfort()), lived, whatIfs(plan));
  }

  private PlaceTrial place(int p) {
    PlaceFit fit = PlaceFit.of(planner.plant(), winters.places().get(p));
    if (fit != PlaceFit.SUITS) {
      return new PlaceTrial(
          winters.places().get(p), fit, 0, Optional.empty(), Optional.empty(), Optional.empty());
    }
    List<Lived> lives = p == planner.home() ? found.atHome() : planner.guess(p);
    List<LocalDate> days =
        lives.stream()
            .flatMap(l -> l.violations().stream().map(b -> planDay(l, b.night())))
            .sorted()
            .toList();
    return new PlaceTrial(
        winters.places().get(p),
        fit,
        broken(lives),
        Margins.worst(lives),
        days.stream().findFirst(),
        days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() - 1)));
  }

  private WinterLived winter(Lived lived) {
    Winter winter = winters.winter(lived.winter());
    return new WinterLived(
        winter.season(),
        Margins.tightest(winters, List.of(lived)),
        Margins.worst(List.of(lived)),
        found.excused().contains(lived.winter()),
        day(lived, lived.state().restEnd()),
        day(lived, lived.state().budBreak()));
  }

  private Optional<LocalDate> day(Lived lived, int night) {
    return night < lived.path().length
        ? Optional.of(winters.measuredOn(lived.winter(), night))
        : Optional.empty();
  }

  private LocalDate planDay(Lived lived, int night) {
    return winters.season().day(winters.planNight(lived.winter(), night));
  }

  private List<WhatIf> whatIfs(PlantPlan plan) {
    List<WhatIf> whatIfs = new ArrayList<>();
    List<Integer> nights = found.path().moveNights();
    for (int i = 0; i < nights.size(); i++) {
      int night = nights.get(i);
      if (plan.moves().get(i).made()) {
        continue;
      }
      int after = i > 0 ? nights.get(i - 1) : 0;
      int before = i + 1 < nights.size() ? nights.get(i + 1) : winters.season().days();
      int from = found.path().placeByNight()[night - 1];
      int to = found.path().placeByNight()[night];
      Move move = plan.moves().get(i);
      int early = Math.max(Math.max(after + 1, winters.outlook().tonight()), night - SHIFT_DAYS);
      int late = Math.min(before - 1, night + SHIFT_DAYS);
      whatIfs.add(whatIf(move, WhatIf.Kind.EARLIER, early, found.path().with(early, night, to)));
      whatIfs.add(whatIf(move, WhatIf.Kind.LATER, late, found.path().with(night, late, from)));
      whatIfs.add(whatIf(move, WhatIf.Kind.NEVER, -1, found.path().with(night, before, from)));
    }
    return whatIfs;
  }

  private WhatIf whatIf(Move move, WhatIf.Kind kind, int night, Path path) {
    List<Lived> lives = told(planner.live(path, found.shuttle()));
    Optional<LocalDate> date =
        night < 0 ? Optional.empty() : Optional.of(winters.season().day(night));
    return new WhatIf(move, kind, date, broken(lives), Margins.worst(lives));
  }

  /** Without what the accepted risk allows. */
  private List<Lived> told(List<Lived> lives) {
    return lives.stream()
        .filter(lived -> KnownBreaks.ticks(List.of(lived), found.excused()) > 0)
        .toList();
  }

  private static int broken(List<Lived> lives) {
    return (int) lives.stream().filter(l -> !l.violations().isEmpty()).count();
  }
}
