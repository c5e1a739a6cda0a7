package org.hibernacle.planning.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import org.hibernacle.oracle.Complaints;
import org.hibernacle.oracle.JudgedPlan;
import org.hibernacle.planning.Explanation;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Question;
import org.hibernacle.planning.SeasonPlanner;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Plans for gardens of chance: the oracle sees no rule broken that the plan does not tell of, and
 * no limit at all; each plant given up is given up for a reason that holds; the plan can be carried
 * out; its costs are those of its moves.
 */
class EveryPlanTest {
  static LongStream seeds() {
    return Draw.seeds(7_000, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void holdsWhatItPromises(long seed) {
    SomeGarden chance = SomeGarden.of(seed);
    Question question =
        new Question(chance.inventory(), chance.file(), Map.of(), OptionalInt.empty());
    String oneOfThem = new Draw(seed).oneOf(chance.inventory().plants()).id();
    Explanation explained = SeasonPlanner.explain(question, oneOfThem).orElseThrow();
    JudgedPlan garden = JudgedPlan.judged(explained.season(), chance.file());
    List<String> complaints = new ArrayList<>(CanBeDone.complaints(garden.plan()));
    complaints.addAll(CostsFromMoves.complaints(garden, explained));
    for (PlantPlan plant : garden.plan().plants()) {
      complaints.addAll(Complaints.about(garden, plant));
    }
    assertEquals(List.of(), complaints, () -> "-Dproof.seed=" + seed + " -Dproof.cases=1");
  }
}
