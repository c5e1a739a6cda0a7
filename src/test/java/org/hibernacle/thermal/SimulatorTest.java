package org.hibernacle.thermal;

import static org.hibernacle.SomeWinter.LATITUDE_DEG;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

class SimulatorTest {
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);
  private static final LocalDate FIRST = LocalDate.of(2020, 10, 1);
  private static final LocalDate COLD = LocalDate.of(2021, 1, 10);
  private static final Winter WINTER =
      SomeWinter.from(
          FIRST,
          day -> day.equals(COLD) ? new DailyExtremes(-12, -1) : SomeWinter.wave(day, 10, 9, 6));
  private static final int BENCH = 0;
  private static final int SAME_BENCH = 1;
  private static final int ROOM = 2;
  private static final List<Place> PLACES =
      List.of(
          SomePlace.of(PlaceKind.BENCH).open().place(),
          SomePlace.of(PlaceKind.BENCH).open().named("the same bench").place(),
          SomePlace.of(PlaceKind.WARM_ROOM).lowestHeld(16).place());
  private static final Simulator SIMULATOR = new Simulator(WINTER, PLACES, LATITUDE_DEG);

  /** The cold morning of the 10th belongs to the night that began at noon of the 9th. */
  @Test
  void nightsRunFromNoonToNoon() {
    BallTrace trace = SIMULATOR.simulate(POT, standing(BENCH));
    assertEquals(WINTER.days() - 1, trace.nights());
    int night = WINTER.index(COLD) - 1;
    int coldest = 0;
    for (int n = 0; n < trace.nights(); n++) {
      coldest = trace.airMinC()[n] < trace.airMinC()[coldest] ? n : coldest;
      int hour = trace.airMinHour()[n];
      assertTrue(hour >= 24 * n + 12 && hour < 24 * n + 36, "night " + n);
      assertEquals(WINTER.airC()[hour], trace.airMinC()[n]);
      assertTrue(trace.ballMinHour()[n] >= 24 * n + 12 && trace.ballMinHour()[n] < 24 * n + 36);
    }
    assertEquals(night, coldest);
    assertEquals(COLD, WINTER.first().plusDays(trace.airMinHour()[night] / 24));
    double sum = 0;
    for (int hour = 24 * night + 12; hour < 24 * night + 36; hour++) {
      sum += WINTER.airC()[hour];
    }
    assertEquals(sum / 24, trace.airMeanC()[night], 1e-12);
  }

  /** In summer a ball swings about the mean of the air less what the sky takes. */
  @Test
  void theMeanOfTheBallIsThatOfEdgeAndCoreAllNight() {
    Winter summer = SomeWinter.wholeYear(day -> SomeWinter.wave(day, 15, 0, 12));
    Simulator simulator = new Simulator(summer, PLACES, LATITUDE_DEG);
    BallTrace trace = simulator.simulate(POT, new int[summer.nights()]);
    Exchange exchange = Exchange.of(POT, PLACES.get(0), false);
    double felt = exchange.skyWPerK() / exchange.airWPerK();
    double[] skyK = simulator.climate(0).skyK();
    for (int n = 10; n < trace.nights(); n++) {
      double sky = Arrays.stream(skyK, 24 * n + 12, 24 * n + 36).average().orElseThrow();
      double around = trace.airMeanC()[n] - felt * sky;
      assertEquals(around, trace.ballMeanC()[n], 0.1, "night " + n);
      assertTrue(trace.ballMinC()[n] < trace.ballMeanC()[n] - 2, "night " + n);
      double most = Arrays.stream(skyK, 24 * n + 12, 24 * n + 36).max().orElseThrow();
      assertTrue(trace.ballMinC()[n] > trace.airMinC()[n] - felt * most, "night " + n);
    }
  }

  @Test
  void aPotCarriedOnADaySpendsThatNightInItsNewPlace() {
    int night = WINTER.index(COLD) - 1;
    BallTrace carried = SIMULATOR.simulate(POT, path(BENCH, night, ROOM));
    assertEquals(16, carried.airMinC()[night], 3);
    assertTrue(carried.ballMinC()[night] >= 0, "carried in on the 9th, safe on the 10th");
    BallTrace dayLate = SIMULATOR.simulate(POT, path(BENCH, night + 1, ROOM));
    BallTrace stayed = SIMULATOR.simulate(POT, standing(BENCH));
    assertEquals(stayed.ballMinC()[night], dayLate.ballMinC()[night]);
    assertTrue(dayLate.ballMinC()[night] < -5, dayLate.ballMinC()[night] + " °C");
  }

  /** The ball keeps its heat when it is carried: it is colder at first than one kept warm. */
  @Test
  void theBallIsCarriedWithItsIce() {
    int night = WINTER.index(COLD);
    BallTrace carried = SIMULATOR.simulate(POT, path(BENCH, night, ROOM));
    BallTrace kept = SIMULATOR.simulate(POT, standing(ROOM));
    assertTrue(carried.edgeIceMax()[night] > 0.5, carried.edgeIceMax()[night] + "");
    assertEquals(0, kept.edgeIceMax()[night]);
    assertEquals(kept.ballMinC()[night + 10], carried.ballMinC()[night + 10], 0.01);
  }

  @Test
  void oneStayIsTheSameAsManyInEqualPlaces() {
    int[] pieces = standing(BENCH);
    for (int n = 0; n < pieces.length; n++) {
      pieces[n] = n / 17 % 2 == 0 ? BENCH : SAME_BENCH;
    }
    assertSame(SIMULATOR.simulate(POT, standing(BENCH)), SIMULATOR.simulate(POT, pieces));
  }

  /** What is known of pots that stand still shortens the way to the same result, to the bit. */
  @Test
  void whatIsKnownOfOthersChangesNothing() {
    Random random = new Random(5);
    List<Standing> standing = new ArrayList<>();
    for (int p = 0; p < PLACES.size(); p++) {
      standing.add(SIMULATOR.standing(POT, p));
      assertSame(SIMULATOR.simulate(POT, standing(p)), standing.get(p).trace());
    }
    for (int i = 0; i < 20; i++) {
      int[] path = standing(BENCH);
      for (int n = random.nextInt(60); n < path.length; n += 1 + random.nextInt(90)) {
        Arrays.fill(path, n, path.length, random.nextInt(PLACES.size()));
      }
      assertSame(SIMULATOR.simulate(POT, path), SIMULATOR.simulate(POT, path, standing::get));
    }
  }

  @Test
  void whatComesLaterDoesNotChangeWhatWas() {
    int night = 60;
    BallTrace stayed = SIMULATOR.simulate(POT, standing(BENCH));
    BallTrace moved = SIMULATOR.simulate(POT, path(BENCH, night, ROOM));
    assertArrayEquals(
        Arrays.copyOf(stayed.ballMinC(), night), Arrays.copyOf(moved.ballMinC(), night));
    assertArrayEquals(
        Arrays.copyOf(stayed.ballMeanC(), night), Arrays.copyOf(moved.ballMeanC(), night));
  }

  @Test
  void airAndBaseAreThoseOfThePlace() {
    PlaceClimate bench = SIMULATOR.climate(BENCH);
    assertArrayEquals(WINTER.airC(), bench.airC());
    assertArrayEquals(bench.airC(), bench.baseC());
    assertArrayEquals(bench.airC(), bench.wrapC());
    Place bed = SomePlace.of(PlaceKind.GROUND).mulch(25).place();
    PlaceClimate mulched = new Simulator(WINTER, List.of(bed), LATITUDE_DEG).climate(0);
    int cold = 24 * WINTER.index(COLD);
    double lowestAir = min(mulched.airC(), cold, cold + 24);
    assertTrue(min(mulched.wrapC(), cold, cold + 24) > lowestAir + 5, "mulch levels one night");
    int october = 24 * 3;
    assertEquals(mulched.airC()[october], mulched.wrapC()[october], "no cover in October");
    assertTrue(min(mulched.baseC(), cold, cold + 24) > 0);
  }

  private static double min(double[] hours, int from, int to) {
    return Arrays.stream(hours, from, to).min().orElseThrow();
  }

  private static void assertSame(BallTrace a, BallTrace b) {
    assertArrayEquals(a.ballMinC(), b.ballMinC());
    assertArrayEquals(a.ballMinHour(), b.ballMinHour());
    assertArrayEquals(a.ballMeanC(), b.ballMeanC());
    assertArrayEquals(a.edgeIceMax(), b.edgeIceMax());
    assertArrayEquals(a.coreIceMin(), b.coreIceMin());
    assertArrayEquals(a.airMinC(), b.airMinC());
    assertArrayEquals(a.airMinHour(), b.airMinHour());
    assertArrayEquals(a.airMeanC(), b.airMeanC());
  }

  private static int[] standing(int place) {
    return path(place, WINTER.nights(), place);
  }

  private static int[] path(int first, int from, int then) {
    int[] path = new int[WINTER.nights()];
    Arrays.fill(path, 0, from, first);
    Arrays.fill(path, from, path.length, then);
    return path;
  }
}
