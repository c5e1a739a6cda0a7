package org.hibernacle.planning.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.hibernacle.oracle.Complaints;
import org.hibernacle.oracle.JudgedPlan;
import org.hibernacle.planning.Explanation;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Question;
import org.hibernacle.planning.SeasonPlanner;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Plans for gardens of chance: the oracle sees no rule broken that the plan does not tell of, and
 * no limit at all; each plant given up is given up for a reason that holds; the plan can be carried
 * out; its costs are those of its moves.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPlanTest {
  private static final long FIRST = 7_000;
  private static final int CASES = 12;

  private final List<PlantPlan> all = new ArrayList<>();

  static LongStream seeds() {
    return Draw.seeds(FIRST, CASES);
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
    all.addAll(garden.plan().plants());
    assertEquals(List.of(), complaints, () -> "-Dproof.seed=" + seed + " -Dproof.cases=1");
  }

  /** A property of nothing would hold. */
  @AfterAll
  void somethingWasTried() {
    if (seeds().count() >= CASES) {
      assertTrue(count(p -> p.verdict() == Verdict.MOVES) >= CASES / 2, "plants that move");
      assertTrue(count(p -> p.verdict() == Verdict.STAYS_HOME) > 0, "plants that stay");
      assertTrue(count(p -> p.verdict() == Verdict.UNPROTECTED) > 0, "plants given up");
      assertTrue(count(p -> p.displaced().isPresent()) > 0, "plants that gave way");
      boolean daring =
          all.stream().anyMatch(p -> p.verdict() != Verdict.UNPROTECTED && !p.broken().isEmpty());
      assertTrue(daring, "plants that use the risk");
    }
  }

  private long count(Predicate<PlantPlan> which) {
    return all.stream().filter(which).count();
  }
}
