package org.hibernacle.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.Group;
import org.hibernacle.model.Light;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.planning.Rule;

/** The hard rules of docs/planning.md, one method each. */
final class HardRules {
  private final Plant plant;
  private final Species species;
  private final Season winter;
  private final double marginK;
  private final List<Night> nights;
  private final List<Finding> findings = new ArrayList<>();

  private HardRules(Plant plant, Season winter, double marginK, List<Night> nights) {
    this.plant = plant;
    this.species = plant.species();
    this.winter = winter;
    this.marginK = marginK;
    this.nights = nights;
  }

  static List<Finding> broken(Plant plant, Season winter, double marginK, List<Night> nights) {
    HardRules rules = new HardRules(plant, winter, marginK, nights);
    rules.judge();
    return rules.findings;
  }

  /** High summer is left to the keeper. */
  static boolean judges(Season winter, LocalDate day) {
    LocalDate first = winter.start().plusMonths(1);
    LocalDate end = winter.endExclusive().minusDays(14);
    return !day.isBefore(first) && day.isBefore(end);
  }

  private void judge() {
    boolean wokenUnderRoof = false;
    for (int i = 0; i < nights.size(); i++) {
      Night night = nights.get(i);
      if (judges(winter, night.day())) {
        rootBall(night);
        shoots(night);
        outOfTheWarm(i);
        chilling(i);
        wokenGrowth(night, wokenUnderRoof);
        wakesInTheDark(night);
        tooWarmAtRest(night);
        tooDark(night);
        ballFrozen(night);
      }
      wokenUnderRoof |= night.budBreak() && night.place().roofed();
    }
  }

  private void rootBall(Night night) {
    double needed = night.rootLimitC() + marginK;
    if (night.rootLimitC() <= -0.5) {
      needed = Math.min(needed, 0);
    }
    atLeast(Rule.ROOT_BALL, night, night.lowestEdgeC(), needed);
  }

  private void shoots(Night night) {
    if (!night.budsOpen()) {
      atLeast(Rule.SHOOTS, night, night.lowestAirC(), night.shootLimitC() + marginK);
    }
  }

  private void outOfTheWarm(int index) {
    int out = index;
    while (out >= 0 && !nights.get(out).place().roofed()) {
      out--;
    }
    int weekOut = index - out;
    if (weekOut < 1 || weekOut > 7 || out < 6) {
      return;
    }
    boolean wholeWeekInside =
        nights.subList(out - 6, out + 1).stream().allMatch(n -> n.place().roofed());
    if (!wholeWeekInside || nights.get(out).weekMeanC() <= 5) {
      return;
    }
    Night night = nights.get(index);
    double rootsWant = night.rootLimitC() + 4;
    if (night.rootLimitC() <= -0.5) {
      rootsWant = Math.min(rootsWant, 0);
    }
    double roots = night.lowestEdgeC() - rootsWant;
    double shoots =
        night.budsOpen() ? Double.POSITIVE_INFINITY : night.lowestAirC() - night.shootLimitC() - 4;
    atLeast(Rule.OUT_OF_THE_WARM, night, Math.min(roots, shoots), 0);
  }

  private void chilling(int index) {
    if (species.group().hardens()) {
      return;
    }
    Night last = nights.get(index);
    if (last.lowestAirC() >= species.minStoreC()) {
      return;
    }
    double sum = 0;
    for (Night night : nights.subList(Math.max(0, index - 6), index + 1)) {
      sum += Math.max(0, species.minStoreC() - night.lowestAirC());
    }
    atMost(Rule.CHILLING, last, sum / 7, 2.0 / 7);
  }

  private void wokenGrowth(Night night, boolean wokenUnderRoof) {
    if (wokenUnderRoof) {
      atLeast(Rule.WOKEN_GROWTH, night, night.lowestAirC(), species.newGrowthLimitC());
    }
  }

  private void wakesInTheDark(Night night) {
    if (night.budsOpen() && dark(night)) {
      never(Rule.WAKES_IN_THE_DARK, night);
    }
  }

  private void tooDark(Night night) {
    if (!night.budsOpen() && night.inLeaf() && dark(night)) {
      never(Rule.TOO_DARK, night);
    }
  }

  private static boolean dark(Night night) {
    return night.place().roofed() && night.place().light() == Light.DARK;
  }

  private void tooWarmAtRest(Night night) {
    boolean hardy =
        species.group() == Group.HARDY_CONIFER
            || species.group() == Group.HARDY_DECIDUOUS
            || species.group() == Group.HARDY_EVERGREEN;
    if (hardy && night.dormant() && night.atRest() && night.place().roofed()) {
      atMost(Rule.TOO_WARM_AT_REST, night, night.weekMeanC(), 5);
    }
  }

  private void ballFrozen(Night night) {
    boolean freshlyCut =
        plant
            .plannedRootWork()
            .map(winter::sameDay)
            .filter(d -> !night.day().isBefore(d) && night.day().isBefore(d.plusDays(42)))
            .isPresent();
    if (freshlyCut || !plant.frostProofPot()) {
      atMost(Rule.BALL_FROZEN, night, night.iceShare(), 0.1);
    }
  }

  private void atLeast(Rule rule, Night night, double found, double needed) {
    if (found < needed) {
      add(rule, night, found, needed);
    }
  }

  private void atMost(Rule rule, Night night, double found, double needed) {
    if (found > needed) {
      add(rule, night, found, needed);
    }
  }

  private void never(Rule rule, Night night) {
    add(rule, night, Double.POSITIVE_INFINITY, 0);
  }

  private void add(Rule rule, Night night, double found, double needed) {
    findings.add(new Finding(rule, winter, night.day(), night.place().name(), found, needed));
  }
}
