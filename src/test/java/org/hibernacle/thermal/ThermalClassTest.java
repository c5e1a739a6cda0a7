package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

class ThermalClassTest {
  private static final long SEED = 7_601;
  private static final LocalDate COLD = LocalDate.of(2021, 1, 10);

  @Test
  void roundingCostsLessThanAFifthOfAKelvinAndErrsOnTheColdSide() {
    Winter winter =
        SomeWinter.from(
            LocalDate.of(2020, 10, 1),
            day ->
                day.isBefore(COLD) || !day.isBefore(COLD.plusDays(7))
                    ? SomeWinter.wave(day, 10, 9, 6)
                    : new DailyExtremes(-14, -4));
    List<Place> places =
        List.of(
            SomePlace.of(PlaceKind.BENCH).open().place(),
            SomePlace.of(PlaceKind.GROUND).place(),
            SomePlace.of(PlaceKind.GROUND).mulch(20).place(),
            SomePlace.of(PlaceKind.COLD_STORE).place());
    Simulator simulator = new Simulator(winter, places, SomeWinter.LATITUDE_DEG);
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 30; i++) {
      Container pot = pot(random);
      ThermalClass exact =
          new ThermalClass(pot.volumeL(), pot.sideM2(), pot.footprintM2(), pot.material());
      for (int p = 0; p < places.size(); p++) {
        double[] exactC = lowestC(simulator, exact, p);
        double[] roundedC = lowestC(simulator, ThermalClass.of(pot), p);
        for (int night = 0; night < exactC.length; night++) {
          double warmerK = roundedC[night] - exactC[night];
          String where = "seed " + SEED + ", night " + night + " in place " + p + ": " + pot;
          assertTrue(warmerK > -0.2 && warmerK < 0.1, warmerK + " K, " + where);
        }
      }
    }
  }

  @Test
  void sizesAreRoundedToTheSideThatFreezesEarlier() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 500; i++) {
      Container pot = pot(random);
      ThermalClass rounded = ThermalClass.of(pot);
      assertRounded(rounded.volumeL(), pot.volumeL());
      assertRounded(1 / rounded.sideM2(), 1 / pot.sideM2());
      assertRounded(1 / rounded.footM2(), 1 / pot.footprintM2());
      assertEquals(pot.material(), rounded.material());
    }
  }

  private static void assertRounded(double rounded, double exact) {
    double share = rounded / exact;
    assertTrue(share <= 1 + 1e-9 && share > 1 / 1.0011, "seed " + SEED + ": " + share);
  }

  @Test
  void potsAsGoodAsEqualShareAClass() {
    Container inches = new Container(Shape.ROUND, 30.48, 30.48, 15.24, 10, Material.CERAMIC);
    Container again = new Container(Shape.ROUND, 30.4801, 30.4801, 15.24, 10, Material.CERAMIC);
    Container other = new Container(Shape.ROUND, 30.6, 30.6, 15.24, 10, Material.CERAMIC);
    assertEquals(ThermalClass.of(inches), ThermalClass.of(again));
    assertNotEquals(ThermalClass.of(inches), ThermalClass.of(other));
  }

  private static double[] lowestC(Simulator simulator, ThermalClass pot, int place) {
    int[] path = new int[simulator.winter().nights()];
    Arrays.fill(path, place);
    return simulator.simulate(pot, path).ballMinC();
  }

  private static Container pot(SplittableRandom random) {
    double lengthCm = random.nextDouble(8, 60);
    double widthCm = lengthCm * random.nextDouble(0.6, 1);
    double depthCm = lengthCm * random.nextDouble(0.25, 1);
    Shape shape = random.nextBoolean() ? Shape.ROUND : Shape.RECTANGULAR;
    double fullL = lengthCm * widthCm * depthCm / 1000;
    double volumeL = (shape == Shape.ROUND ? Math.PI / 4 : 1) * fullL * random.nextDouble(0.7, 0.9);
    Material material = Material.values()[random.nextInt(Material.values().length)];
    return new Container(shape, lengthCm, widthCm, depthCm, volumeL, material);
  }
}
