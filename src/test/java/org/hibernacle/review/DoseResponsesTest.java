package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.review.DoseResponse.Bounds;
import org.hibernacle.review.DoseResponse.Found;
import org.hibernacle.review.DoseResponse.Lt50;
import org.hibernacle.review.DoseResponse.Point;
import org.hibernacle.review.DoseResponse.Why;
import org.junit.jupiter.api.Test;

class DoseResponsesTest {
  /** Plants harmed at the first temperatures, and not at the others. */
  private static Found found(double[] harmedC, double... survivedC) {
    List<Point> points = new ArrayList<>();
    for (double c : harmedC) {
      points.add(new Point("D" + points.size(), c, true));
    }
    for (double c : survivedC) {
      points.add(new Point("S" + points.size(), c, false));
    }
    return DoseResponses.found(points);
  }

  private static double[] at(double... celsius) {
    return celsius;
  }

  private static Why why(Found found) {
    return assertInstanceOf(Bounds.class, found).why();
  }

  @Test
  void tellsBoundsWhereThereIsNoFigure() {
    assertEquals(Why.NONE_HARMED, why(found(at(), -6.2, -6.2, -6.2)));
    assertEquals(Why.ALL_HARMED, why(found(at(-6, -7, -8, -9, -9, -9))));
    assertEquals(Why.TOO_FEW, why(found(at(-9, -7), -8, -5)));
    Bounds three = (Bounds) found(at(), -6.2, -5, -6.1);
    assertEquals(3, three.survivors());
    assertEquals(-6.2, three.coldestSurvivedC());
  }

  /** Complete and quasi-complete separation: Albert and Anderson 1984, Biometrika 71:1-10. */
  @Test
  void separatedDataNeverGiveAFigure() {
    assertEquals(Why.SEPARATED, why(found(at(-9, -10, -11), -5, -6, -7)));
    assertEquals(Why.SEPARATED, why(found(at(-9, -10, -8), -5, -6, -8)));
    assertEquals(Why.FLAT, why(found(at(-5, -6, -7), -9, -10, -11)));
  }

  @Test
  void flatDataNeverGiveAFigure() {
    assertEquals(Why.FLAT, why(found(at(-5, -7, -9, -11), -5, -7, -9, -11)));
    assertEquals(Why.FLAT, why(found(at(-8, -8, -8), -8, -8, -8)));
    assertEquals(Why.FLAT, why(found(at(-5, -6, -7, -10.5), -5.5, -9, -10, -11)));
  }

  @Test
  void overlappingDataGiveAFigureBetweenTheTwo() {
    Lt50 lt50 =
        assertInstanceOf(
            Lt50.class,
            found(
                at(-10, -11, -12, -13, -9, -12.5, -11.5, -10.5, -13.5, -14, -9.5),
                -5,
                -6,
                -7,
                -8,
                -9.2,
                -10.2,
                -6.5,
                -7.5,
                -8.5,
                -5.5,
                -4));
    assertEquals(-9.4, lt50.coldC(), 0.5);
    assertEquals(true, lt50.lowC() < lt50.coldC() && lt50.coldC() < lt50.highC());
  }
}
