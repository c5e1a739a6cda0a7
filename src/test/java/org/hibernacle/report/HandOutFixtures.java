package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;

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
    Plant o = p.plant();
    Plant plant =
        new Plant(
            id,
            o.label(),
            o.species(),
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
}
