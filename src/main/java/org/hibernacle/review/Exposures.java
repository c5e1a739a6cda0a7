package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.physiology.ChillingInjury;
import org.hibernacle.planning.Life;
import org.hibernacle.planning.OneWinter;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;

/** Reads off a life what the plant was exposed to. */
final class Exposures {
  /** Days after root work in which cut roots must not freeze, as for plans. */
  private static final int FRESH_ROOT_DAYS = 42;

  private final OneWinter one;
  private final Winter winter;
  private final Plant plant;
  private final Life life;
  private final Life atHome;
  private final Warmth warmth;
  private final int from;
  private final int until;

  /**
   * One plant's life.
   *
   * @param noticed when harm was seen: what came later did not cause it
   */
  private Exposures(
      OneWinter one, Plant plant, Life life, Life atHome, Optional<LocalDate> noticed) {
    this.one = one;
    this.winter = one.winter();
    this.plant = plant;
    this.life = life;
    this.atHome = atHome;
    this.warmth = Warmth.of(one, plant, life, atHome);
    this.from = one.firstJudged();
    int end = one.endJudged();
    this.until =
        noticed.map(winter::index).filter(n -> n > from).map(n -> Math.min(n, end)).orElse(end);
  }

  static Exposure of(
      OneWinter one, Plant plant, Life life, Life atHome, Optional<LocalDate> noticed) {
    return new Exposures(one, plant, life, atHome, noticed).read();
  }

  static Causes causes(
      OneWinter one, Plant plant, Life life, Life atHome, Optional<LocalDate> noticed) {
    return new Exposures(one, plant, life, atHome, noticed).weigh();
  }

  private Exposure read() {
    Tissue roots = Tissue.roots(plant, winter.season(), life, until);
    Tissue shoots = Tissue.shoots(plant, life, until);
    Optional<Cold> earlyRoots = closest(roots, n -> !roots.isHardened(n));
    Optional<Cold> earlyShoots = closest(shoots, n -> !shoots.isHardened(n));
    return new Exposure(
        day(until),
        closest(roots, n -> true).orElseThrow(),
        closest(roots, roots::isHardened),
        closest(shoots, n -> true),
        closest(shoots, shoots::isHardened),
        Stream.of(earlyRoots, earlyShoots)
            .flatMap(Optional::stream)
            .min(Comparator.comparingDouble(Cold::marginK)),
        frozen(),
        store(),
        growth(),
        chill(),
        cutRoots(),
        broken());
  }

  /** What may have harmed it. */
  private Causes weigh() {
    Optional<LocalDate> cut = plant.plannedRootWork();
    return Causes.of(
        Hazards.of(
            plant,
            life,
            Tissue.roots(plant, winter.season(), life, until),
            Tissue.shoots(plant, life, until),
            warmth,
            cut.map(winter::index).orElse(0),
            cut.map(day -> winter.index(day.plusDays(FRESH_ROOT_DAYS))).orElse(0)),
        from,
        until);
  }

  private LocalDate day(int night) {
    return winter.first().plusDays(night);
  }

  private Place place(int night) {
    return one.simulator().places().get(life.placeByNight()[night]);
  }

  /** The night of that sort on which the tissue came closest to its limit. */
  private Optional<Cold> closest(Tissue tissue, IntPredicate which) {
    int night = -1;
    int hoursBelow = 0;
    for (int n = from; n < tissue.end(); n++) {
      if (!which.test(n)) {
        continue;
      }
      night = night < 0 || tissue.marginK(n) < tissue.marginK(night) ? n : night;
      for (int hour = 24 * n + 12; hour < 24 * n + 36; hour++) {
        hoursBelow += tissue.hoursC()[hour] < tissue.limitC()[n] ? 1 : 0;
      }
    }
    if (night < 0) {
      return Optional.empty();
    }
    int hour = tissue.minHour()[night];
    double highestC = tissue.minC()[night];
    for (int h = Math.max(12, hour - 24); h < hour; h++) {
      highestC = Math.max(highestC, tissue.hoursC()[h]);
    }
    return Optional.of(
        new Cold(
            day(hour / 24),
            place(night).name(),
            tissue.minC()[night],
            tissue.limitC()[night],
            tissue.hardestC(),
            tissue.hardness(night),
            hoursBelow,
            highestC - tissue.minC()[night]));
  }

  private Optional<FrozenSpell> frozen() {
    int worst = -1;
    int longest = 0;
    int run = 0;
    int worstRun = 0;
    for (int n = from; n < until; n++) {
      run = life.dryness()[n] > 0 ? run + 1 : 0;
      longest = Math.max(longest, run);
      if (run > 0 && (worst < 0 || life.dryness()[n] > life.dryness()[worst])) {
        worst = n;
        worstRun = run;
      }
    }
    return worst < 0
        ? Optional.empty()
        : Optional.of(
            new FrozenSpell(
                day(worst - worstRun + 1),
                worstRun,
                place(worst).name(),
                life.dryness()[worst],
                longest));
  }

  /** Weeks under a roof before rest was complete, and what came of them. */
  private Optional<StoreWarmth> store() {
    int warmest = -1;
    for (int n = Math.max(from, winter.index(winter.season().coreStart())); n < until; n++) {
      boolean resting = n < life.state().restEnd();
      boolean warmer = warmest < 0 || life.weekMeanC()[n] > life.weekMeanC()[warmest];
      if (place(n).roofed() && resting && warmer) {
        warmest = n;
      }
    }
    int woke = life.state().budBreak();
    boolean underRoof = woke > from && woke < until && place(woke - 1).roofed();
    int dark = (int) violations(Rule.WAKES_IN_THE_DARK).count();
    if (warmest < 0 && !underRoof && dark == 0) {
      return Optional.empty();
    }
    int shown = warmest >= 0 ? warmest : Math.min(woke, until - 1);
    int wokeAtHome = atHome.state().budBreak();
    return Optional.of(
        new StoreWarmth(
            warmth.nights(until),
            warmth.sumK(until),
            life.weekMeanC()[shown],
            day(shown),
            place(shown).name(),
            dark,
            underRoof ? Optional.of(day(woke)) : Optional.empty(),
            underRoof && wokeAtHome < atHome.nights()
                ? OptionalInt.of(wokeAtHome - woke)
                : OptionalInt.empty()));
  }

  private Stream<Life.OnNight> violations(Rule rule) {
    return life.limitsBroken().stream()
        .filter(b -> b.violation().rule() == rule && b.night() < until);
  }

  private Optional<NewGrowth> growth() {
    int woke = life.state().budBreak();
    if (woke >= until) {
      return Optional.empty();
    }
    double limitC = plant.species().newGrowthLimitC();
    int coldest = woke;
    int below = 0;
    for (int n = woke; n < until; n++) {
      double airC = life.trace().airMinC()[n];
      coldest = airC < life.trace().airMinC()[coldest] ? n : coldest;
      below += airC < limitC ? 1 : 0;
    }
    return Optional.of(
        new NewGrowth(
            day(woke),
            woke > 0 && place(woke - 1).roofed(),
            day(life.trace().airMinHour()[coldest] / 24),
            place(coldest).name(),
            life.trace().airMinC()[coldest],
            limitC,
            below));
  }

  private Optional<Chill> chill() {
    double lowestStoreC = plant.species().minStoreC();
    if (plant.species().group().hardens()) {
      return Optional.empty();
    }
    double[] airC = life.trace().airMinC();
    int worst = -1;
    double most = 0;
    for (int n = from; n < until; n++) {
      double dose = ChillingInjury.doseK(airC, n, lowestStoreC);
      if (dose > most) {
        most = dose;
        worst = n;
      }
    }
    if (worst < 0) {
      return Optional.empty();
    }
    double lowestC = airC[worst];
    for (int n = Math.max(0, worst - ChillingInjury.WINDOW_NIGHTS + 1); n < worst; n++) {
      lowestC = Math.min(lowestC, airC[n]);
    }
    return Optional.of(new Chill(day(worst), place(worst).name(), most, lowestC, lowestStoreC));
  }

  private Optional<LocalDate> cutRoots() {
    return plant
        .plannedRootWork()
        .flatMap(
            work ->
                violations(Rule.BALL_FROZEN)
                    .map(b -> day(b.night()))
                    .filter(d -> !d.isBefore(work) && d.isBefore(work.plusDays(FRESH_ROOT_DAYS)))
                    .findFirst());
  }

  private List<Violation> broken() {
    Set<Rule> seen = EnumSet.noneOf(Rule.class);
    List<Violation> first = new ArrayList<>();
    for (Life.OnNight b : life.limitsBroken()) {
      if (b.night() < until && b.ofLimit() && seen.add(b.violation().rule())) {
        first.add(b.violation());
      }
    }
    return first;
  }
}
