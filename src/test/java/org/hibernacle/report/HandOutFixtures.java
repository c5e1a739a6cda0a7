package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.Group;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Species;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.NightTrigger;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Stay;

/** Gardens of any size, made of copies of the fixture's plants. */
public final class HandOutFixtures {
  private HandOutFixtures() {}

  /** The fixture with each plant that many times, Ids told apart by a number. */
  public static SeasonPlan garden(int times, Settings settings) {
    SeasonPlan plan = Fixtures.plan(settings);
    List<PlantPlan> plants = new ArrayList<>(plan.plants());
    IntStream.range(1, times)
        .forEach(n -> plan.plants().forEach(p -> plants.add(copy(p, p.plant().id() + "-" + n))));
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plants,
        plan.places(),
        plan.tasks(),
        plan.traces(),
        plan.notes());
  }

  private static PlantPlan copy(PlantPlan p, String id) {
    return with(p, plant(p, id, p.plant().species()));
  }

  private static Plant plant(PlantPlan p, String id, Species species) {
    Plant o = p.plant();
    return new Plant(
        id,
        o.label(),
        species,
        o.speciesAsWritten(),
        o.cultivar(),
        o.home(),
        o.container(),
        o.lastRootWork(),
        o.vigour(),
        o.priority(),
        o.value(),
        o.ownRootLimitC(),
        o.stayIn(),
        o.notBefore(),
        o.notAfter(),
        o.count(),
        o.heightCm(),
        o.spreadCm(),
        o.frostProofPot(),
        o.plannedRootWork(),
        o.rootstock(),
        o.rootLimitTrust(),
        o.notes());
  }

  private static PlantPlan with(PlantPlan p, Plant plant) {
    return new PlantPlan(
        plant,
        p.stays(),
        p.moves(),
        p.verdict(),
        p.tightest(),
        p.broken(),
        p.withoutMoves(),
        p.displaced(),
        p.shuttle(),
        p.nightTriggers(),
        p.estimatedMassKg());
  }

  /** A plant of that group with stays of its own, one figure for cold nights all the time, °C. */
  static PlantPlan in(
      PlantPlan p, Group group, List<Stay> stays, List<Move> moves, double stationC) {
    Species o = p.plant().species();
    Species species =
        new Species(
            o.taxon(),
            o.synonyms(),
            o.commonNames(),
            group,
            o.foliage(),
            o.zone(),
            o.rootKill(),
            o.rootLimitC(),
            o.rootLimitBasis(),
            o.unhardenedLimitC(),
            o.newGrowthLimitC(),
            o.chillNeed(),
            o.chillPortionsLow(),
            o.chillPortionsHigh(),
            o.minStoreC(),
            o.maxStoreC(),
            o.lightInStore(),
            o.keepDry(),
            o.dryingRisk(),
            o.toxic(),
            o.toxicSource(),
            o.notes(),
            o.sources(),
            o.builtIn());
    return new PlantPlan(
        plant(p, p.plant().id(), species),
        stays,
        moves,
        p.verdict(),
        p.tightest(),
        p.broken(),
        p.withoutMoves(),
        p.displaced(),
        p.shuttle(),
        stays.stream()
            .map(s -> new NightTrigger(s.fromInclusive(), s.toExclusive(), s.place(), stationC))
            .toList(),
        p.estimatedMassKg());
  }
}
