package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/**
 * How cold a 5 L pot gets in a week of -9 ± 5 °C, by where it stands. The ranges are growers'
 * experience: common practice, no source.
 */
class OrdersOfSizeTest {
  private static final ThermalClass POT =
      ThermalClass.of(new Container(Container.Shape.ROUND, 22, 22, 13, 5, Material.CERAMIC));

  private static final Place BENCH = SomePlace.of(PlaceKind.BENCH).open().place();
  private static final Place OPEN_GROUND = SomePlace.of(PlaceKind.GROUND).open().place();
  private static final Place GROUND = SomePlace.of(PlaceKind.GROUND).place();
  private static final Place MULCHED = SomePlace.of(PlaceKind.GROUND).mulch(25).place();

  /** Soil that is at +0.5 °C on top and 3 K a metre warmer below. */
  @Test
  void eachPlaceIsAsColdAsGrowersKnowIt() {
    assertEquals(-14, lowestC(BENCH), 0.7);
    assertEquals(-11.5, lowestC(OPEN_GROUND), 1);
    assertBetween(-10.3, -9, lowestC(GROUND));
    assertBetween(-3.2, 0, lowestC(MULCHED));
  }

  /** The same through whole winters, over the soil that the winter itself has made. */
  @Test
  void aWinterWithSuchAWeekShowsTheSame() {
    LocalDate cold = LocalDate.of(2021, 1, 10);
    Winter winter =
        SomeWinter.wholeYear(
            day ->
                day.isBefore(cold) || !day.isBefore(cold.plusDays(7))
                    ? SomeWinter.wave(day, 9.5, 8.5, 4)
                    : new DailyExtremes(-14, -4));
    List<Place> places = List.of(BENCH, OPEN_GROUND, GROUND, MULCHED);
    Simulator simulator = new Simulator(winter, places, SomeWinter.LATITUDE_DEG);
    double[] lowestC = new double[places.size()];
    for (int p = 0; p < lowestC.length; p++) {
      int[] path = new int[winter.nights()];
      Arrays.fill(path, p);
      BallTrace trace = simulator.simulate(POT, path);
      lowestC[p] = Arrays.stream(trace.ballMinC()).min().orElseThrow();
    }
    assertEquals(-14, lowestC[0], 0.7);
    assertEquals(-11.5, lowestC[1], 1);
    assertBetween(-10.3, -8.5, lowestC[2]);
    assertBetween(-3.2, 0, lowestC[3]);
  }

  /** Bare ground gains 2 to 5 K over the bench in a long cold spell: common practice, no source. */
  @Test
  void groundGainsAFewKelvinOverTheBench() {
    Stream.of(OPEN_GROUND, GROUND)
        .forEach(place -> assertBetween(2, 5.2, lowestC(place) - lowestC(BENCH)));
  }

  private static double lowestC(Place place) {
    SoilColumn soil = new SoilColumn(depthM -> 0.5 + 3 * depthM);
    Exchange exchange = Exchange.of(POT, place, true);
    double lagHours = Exchange.mulchLagHours(place);
    double rate = lagHours == 0 ? 1 : 1 - Math.exp(-1 / lagHours);
    double coverM2KPerW = place.coverDepthCm() / 100 / Exchange.MULCH_W_PER_MK;
    double wattPerK = exchange.airWPerK() + exchange.baseWPerK();
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 0.5);
    double wrapC = 0.5;
    double lowestC = 0.5;
    for (int hour = 0; hour < 7 * 24; hour++) {
      double airC = -9 + 5 * Math.cos(2 * Math.PI * (hour - 3) / 24);
      wrapC += (airC - wrapC) * rate;
      soil.pass(airC, 1 / Exchange.surfaceWPerM2K(place) + coverM2KPerW, 3600);
      double aroundC =
          (exchange.airWPerK() * wrapC + exchange.baseWPerK() * soil.at(PlaceBase.FELT_DEPTH_M))
              / wattPerK;
      for (int step = 0; step < 4; step++) {
        ball.step(aroundC, wattPerK);
      }
      lowestC = Math.min(lowestC, ball.edgeC());
    }
    return lowestC;
  }

  private static void assertBetween(double low, double high, double found) {
    assertTrue(found >= low && found <= high, found + " is not in " + low + ".." + high);
  }
}
