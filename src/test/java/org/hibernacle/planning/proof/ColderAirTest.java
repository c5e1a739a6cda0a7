package org.hibernacle.planning.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.physiology.PlantState;
import org.hibernacle.physiology.Surroundings;
import org.hibernacle.thermal.BallTrace;
import org.hibernacle.thermal.Simulator;
import org.hibernacle.thermal.ThermalClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * With stays and hardening held, colder air never warms a ball and never puts off the first night
 * below its limit. Two places answer to more than the air: vents are shut when it is cold, and
 * clear days with cold nights are taken for sunny ones under glass. They are left out where that
 * matters.
 */
class ColderAirTest {
  /** An edge may be this much warmer for a quarter of an hour: docs/models/root-ball.md. */
  private static final double MOST_K = 0.4;

  static LongStream seeds() {
    return Draw.seeds(7_300, 8);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aColderWinterNeverWarmsABall(long seed) {
    double byK = new Draw(seed).between(0.2, 5.0);
    List<Place> places =
        SomeGarden.of(seed).inventory().places().stream().filter(p -> !p.vents()).toList();
    compare(seed, places, day -> new DailyExtremes(day.minC() - byK, day.maxC() - byK));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void colderNightsNeverWarmABall(long seed) {
    double byK = new Draw(seed).between(0.2, 5.0);
    List<Place> places =
        SomeGarden.of(seed).inventory().places().stream()
            .filter(p -> !p.vents() && p.kind() != PlaceKind.GLASSHOUSE)
            .toList();
    compare(seed, places, day -> new DailyExtremes(day.minC() - byK, day.maxC()));
  }

  private static void compare(long seed, List<Place> places, UnaryOperator<DailyExtremes> colder) {
    SomeGarden garden = SomeGarden.of(seed);
    Settings settings = garden.inventory().settings();
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>(garden.file().days());
    days.replaceAll((day, extremes) -> colder.apply(extremes));
    TemperatureSeries file = garden.file();
    Winter asDrawn = winter(file, settings);
    Winter made =
        winter(new TemperatureSeries(file.station(), days, file.hours(), file.snowCm()), settings);
    Simulator before = new Simulator(asDrawn, places, settings.latitudeDeg());
    Simulator after = new Simulator(made, places, settings.latitudeDeg());
    int[] path = path(new Draw(seed), asDrawn.nights(), places.size());
    List<String> complaints = new ArrayList<>();
    for (Plant plant : garden.inventory().plants()) {
      ThermalClass pot = ThermalClass.of(plant.container());
      BallTrace was = before.simulate(pot, path);
      BallTrace is = after.simulate(pot, path);
      for (int n = 0; n < path.length; n++) {
        if (is.ballMinC()[n] > was.ballMinC()[n] + MOST_K) {
          complaints.add(
              "%s in %s on %s: %.2f after %.2f °C"
                  .formatted(
                      plant.id(),
                      places.get(path[n]),
                      asDrawn.first().plusDays(n),
                      is.ballMinC()[n],
                      was.ballMinC()[n]));
        }
      }
      double[] limitC = limitC(plant, asDrawn, was);
      int first = firstBelow(was, limitC, -MOST_K);
      int now = firstBelow(is, limitC, 0);
      if (now > first) {
        complaints.add(plant.id() + " is first below in night " + now + " and not in " + first);
      }
    }
    assertEquals(List.of(), complaints, () -> "-Dproof.seed=" + seed + " -Dproof.cases=1");
  }

  private static Winter winter(TemperatureSeries file, Settings settings) {
    Season season = Season.containing(file.days().firstKey(), settings.southern());
    HourlyAir air = new HourlyAir(file, settings.latitudeDeg());
    return Winter.of(season, air, settings.siteColderByK());
  }

  /** Another place every few weeks. */
  private static int[] path(Draw draw, int nights, int places) {
    int[] path = new int[nights];
    int place = 0;
    int left = draw.between(60, 140);
    for (int n = 0; n < nights; n++) {
      if (left-- == 0) {
        place = draw.between(0, places - 1);
        left = draw.between(14, 60);
      }
      path[n] = place;
    }
    return path;
  }

  /** Limits of the winter as drawn; rest is left to the calendar. */
  private static double[] limitC(Plant plant, Winter winter, BallTrace trace) {
    double[] none = new double[trace.nights()];
    Season season = winter.season();
    Surroundings around =
        new Surroundings(
            trace.ballMeanC(),
            trace.airMeanC(),
            trace.airMinC(),
            winter.dayLengthH(),
            none,
            none,
            none,
            winter.index(season.coreStart()),
            winter.index(season.midwinter()),
            winter.index(season.start().plusMonths(7)));
    return PlantState.live(plant, season, around).rootLimitC();
  }

  private static int firstBelow(BallTrace trace, double[] limitC, double overK) {
    int n = 0;
    while (n < trace.nights() && trace.ballMinC()[n] >= limitC[n] + overK) {
      n++;
    }
    return n;
  }
}
