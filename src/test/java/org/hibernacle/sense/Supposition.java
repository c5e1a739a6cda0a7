package org.hibernacle.sense;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Species;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Supposed;
import org.hibernacle.thermal.BallGuess;

/** One thing supposed to be otherwise than the program takes it to be. */
final class Supposition {
  private static final double USUAL_MARGIN_K = 2;

  private final String heading;
  private final Supposed garden;
  private final double limitsHigherByK;
  private final double safetyMarginK;

  private Supposition(
      String heading, Supposed garden, double limitsHigherByK, double safetyMarginK) {
    this.heading = heading;
    this.garden = garden;
    this.limitsHigherByK = limitsHigherByK;
    this.safetyMarginK = safetyMarginK;
  }

  /** Nothing is otherwise. */
  static Supposition usual(Inventory inventory, TemperatureSeries file) {
    return new Supposition(
        "usual", new Supposed(inventory, file, BallGuess.USUAL), 0, USUAL_MARGIN_K);
  }

  /** All that is tried, in the order of the page's columns. */
  static List<Supposition> others(Inventory inventory, TemperatureSeries file) {
    Supposed usual = new Supposed(inventory, file, BallGuess.USUAL);
    return List.of(
        air("air -1 K", inventory, file, -1),
        air("air +1 K", inventory, file, 1),
        ball(
            "transfer +30 %", inventory, file, new BallGuess(BallGuess.USUAL.waterFraction(), 1.3)),
        ball(
            "transfer -30 %", inventory, file, new BallGuess(BallGuess.USUAL.waterFraction(), 0.7)),
        ball("dry ball", inventory, file, new BallGuess(SensitivityTable.DRY, 1)),
        ball("wet ball", inventory, file, new BallGuess(SensitivityTable.WET, 1)),
        new Supposition("limits +2 K", usual, 2, USUAL_MARGIN_K),
        new Supposition("limits -2 K", usual, -2, USUAL_MARGIN_K),
        new Supposition("margin 0 K", usual, 0, 0),
        new Supposition("margin 1 K", usual, 0, 1),
        new Supposition("margin 3 K", usual, 0, 3),
        new Supposition("margin 4 K", usual, 0, 4));
  }

  private static Supposition ball(
      String heading, Inventory inventory, TemperatureSeries file, BallGuess guess) {
    return new Supposition(heading, new Supposed(inventory, file, guess), 0, USUAL_MARGIN_K);
  }

  private static Supposition air(
      String heading, Inventory inventory, TemperatureSeries file, double byK) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>(file.days());
    days.replaceAll((day, of) -> new DailyExtremes(of.minC() + byK, of.maxC() + byK));
    TemperatureSeries other =
        new TemperatureSeries(file.station(), days, file.hours(), file.snowCm());
    return ball(heading, inventory, other, BallGuess.USUAL);
  }

  String heading() {
    return heading;
  }

  /** What would have been planned. */
  Supposed.Planned plan(Plant plant) {
    return garden.plan(asSupposed(plant), safetyMarginK);
  }

  /** How stays that are carried out as they are would go. */
  PlantPlan.Tightest tightest(Plant plant, List<Stay> stays) {
    return garden.tightest(asSupposed(plant), stays);
  }

  /** The whole curve of the roots is moved, unhardened and midwinter limit alike. */
  private Plant asSupposed(Plant p) {
    if (limitsHigherByK == 0) {
      return p;
    }
    Species s = p.species();
    Species other =
        new Species(
            s.taxon(),
            s.synonyms(),
            s.commonNames(),
            s.group(),
            s.foliage(),
            s.zone(),
            s.rootKill(),
            s.rootLimitC() + limitsHigherByK,
            s.rootLimitBasis(),
            s.unhardenedLimitC() + limitsHigherByK,
            s.newGrowthLimitC(),
            s.chillNeed(),
            s.chillPortionsLow(),
            s.chillPortionsHigh(),
            s.minStoreC(),
            s.maxStoreC(),
            s.lightInStore(),
            s.keepDry(),
            s.dryingRisk(),
            s.toxic(),
            s.toxicSource(),
            s.notes(),
            s.sources(),
            s.builtIn());
    return new Plant(
        p.id(),
        p.label(),
        other,
        p.speciesAsWritten(),
        p.cultivar(),
        p.home(),
        p.container(),
        p.lastRootWork(),
        p.vigour(),
        p.priority(),
        p.value(),
        p.ownRootLimitC(),
        p.stayIn(),
        p.notBefore(),
        p.notAfter(),
        p.count(),
        p.heightCm(),
        p.spreadCm(),
        p.frostProofPot(),
        p.plannedRootWork(),
        p.rootstock(),
        p.rootLimitTrust(),
        p.notes());
  }
}
