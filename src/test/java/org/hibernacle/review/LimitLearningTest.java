package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.review.DoseResponse.Point;
import org.junit.jupiter.api.Test;

class LimitLearningTest {
  private static List<Point> rows(int count, double coldC, boolean harmed) {
    return Collections.nCopies(count, new Point("A", coldC, harmed));
  }

  private static Optional<Correction.RootLimit> learned(double oldC, List<Point> points) {
    return LimitLearning.correction("Acer palmatum", oldC, points)
        .map(Correction.RootLimit.class::cast);
  }

  @Test
  void plantsThatWereNeverNearTheirLimitMoveNothing() {
    assertTrue(learned(-9, rows(50, -3, false)).isEmpty());
    assertTrue(learned(-9, rows(50, -8, false)).isEmpty());
  }

  @Test
  void harmThatWasExpectedMovesNothing() {
    assertTrue(learned(-9, rows(20, -9.5, true)).isEmpty());
    assertTrue(learned(-9, rows(20, -15, true)).isEmpty());
  }

  @Test
  void harmFarAboveTheLimitIsLaidToSomethingElse() {
    assertTrue(learned(-9, rows(3, -2, true)).isEmpty());
  }

  @Test
  void fewPlantsMoveItALittleAndManyByAKelvin() {
    double one = learned(-9, rows(1, -10, false)).orElseThrow().proposedC();
    double many = learned(-9, rows(12, -11, false)).orElseThrow().proposedC();
    assertTrue(one < -9.1 && one > -10, "" + one);
    assertEquals(-10, many);
    assertEquals(-8, learned(-9, rows(12, -7, true)).orElseThrow().proposedC());
  }

  @Test
  void neverFurtherThanWhatWasSeen() {
    assertEquals(-9.4, learned(-9, rows(12, -9.4, false)).orElseThrow().proposedC());
    assertEquals(-8.7, learned(-9, rows(12, -8.7, true)).orElseThrow().proposedC());
  }

  @Test
  void contradictionsWeighAgainstEachOther() {
    List<Point> both =
        Stream.concat(rows(4, -10.5, false).stream(), rows(4, -10, true).stream()).toList();
    double alone = learned(-9, rows(4, -10.5, false)).orElseThrow().wantedC();
    double opposed = LimitLearning.wantedC(-9, both);
    assertTrue(opposed > alone, opposed + " " + alone);
  }

  @Test
  void tellsItsNumbers() {
    Correction.RootLimit limit =
        learned(
                -9,
                Stream.concat(rows(3, -10.2, false).stream(), rows(1, -12, true).stream()).toList())
            .orElseThrow();
    assertEquals(4, limit.rows());
    assertEquals(3, limit.survivedBelow());
    assertEquals(0, limit.harmedAbove());
    assertEquals(-10.2, limit.coldestSurvivedC());
    assertEquals(-12, limit.warmestHarmedC());
  }
}
