package org.hibernacle.thermal;

import static org.hibernacle.SomeWinter.LATITUDE_DEG;
import static org.hibernacle.SomeWinter.steady;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.DailyCurve;
import org.hibernacle.climate.DayLength;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/** A logger in a place: its hours, both ends of them, and what it says of the model. */
class LoggerTest {
  private static final LocalDate FROM = LocalDate.of(2021, 1, 10);
  private static final int DAYS = 4;
  private static final Winter MILD = SomeWinter.wholeYear(day -> steady(5));
  private static final int FIRST = 24 * MILD.index(FROM);
  private static final int END = FIRST + 24 * DAYS;
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);

  private static final Place BENCH = SomePlace.of(PlaceKind.BENCH).named("bench").place();
  private static final Place SHED =
      SomePlace.of(PlaceKind.COLD_STORE).named("shed").warmerBy(0).lag(10).place();
  private static final Place BED = SomePlace.of(PlaceKind.GROUND).named("bed").mulch(10).place();
  private static final List<Place> PLACES = List.of(BENCH, SHED, BED);

  /** A lag of 10 h keeps {@code exp(-t / 10 h)} of what the logger left behind. */
  @Test
  void underARoofTheModelGoesOnFromTheLastReading() {
    double[] airC = simulator("shed", colder(-5)).climate(1).airC();
    for (int hour = 0; hour < airC.length; hour++) {
      double expected =
          hour < FIRST ? 5 : hour < END ? -5 : 5 - 10 * Math.exp(-(hour - END + 1) / 10.0);
      assertEquals(expected, airC[hour], 1e-9, "hour " + hour);
    }
  }

  @Test
  void inTheOpenTheModelStandsAgainAtOnce() {
    double[] airC = simulator("bench", colder(-5)).climate(0).airC();
    for (int hour = 0; hour < airC.length; hour++) {
      assertEquals(hour >= FIRST && hour < END ? -5 : 5, airC[hour], "hour " + hour);
    }
  }

  @Test
  void otherPlacesAreNotTouched() {
    Simulator without = new Simulator(MILD, PLACES, LATITUDE_DEG);
    Simulator with = simulator("bench", colder(-5));
    for (int place = 1; place < PLACES.size(); place++) {
      assertArrayEquals(without.climate(place).airC(), with.climate(place).airC());
      assertArrayEquals(without.climate(place).baseC(), with.climate(place).baseC());
      assertEquals(Optional.empty(), with.modelError(place));
    }
  }

  /** A slab drifts with 20 days towards the middle of its air and the year's mean of 5 °C. */
  @Test
  void theSlabBelowFollowsTheLogger() {
    double[] slabC = simulator("shed", colder(-5)).climate(1).baseC();
    assertEquals(5, slabC[FIRST - 1], 1e-9);
    assertEquals(5 * Math.exp(-DAYS / 20.0), slabC[END - 1], 1e-9);
  }

  @Test
  void soilAndMulchedWallsFollowTheLogger() {
    PlaceClimate without = new Simulator(MILD, PLACES, LATITUDE_DEG).climate(2);
    PlaceClimate with = simulator("bed", colder(-5)).climate(2);
    assertEquals(without.baseC()[FIRST - 1], with.baseC()[FIRST - 1], 0.02, "from the spin-up");
    assertTrue(with.baseC()[END - 1] < without.baseC()[END - 1] - 0.5);
    assertEquals(5, with.wrapC()[FIRST - 1], 0.1, "but for the sky");
    assertTrue(with.wrapC()[FIRST] > -4 && with.wrapC()[END - 1] < -4.9, "mulch delays");
  }

  /** What a pot lives through there is the logger's air. */
  @Test
  void aPotFreezesWhereTheLoggerFroze() {
    int[] inTheShed = new int[MILD.nights()];
    Arrays.fill(inTheShed, 1);
    BallTrace without = new Simulator(MILD, PLACES, LATITUDE_DEG).simulate(POT, inTheShed);
    BallTrace with = simulator("shed", colder(-5)).simulate(POT, inTheShed);
    int night = MILD.index(FROM) + 2;
    assertTrue(without.ballMinC()[night] > 4);
    assertTrue(with.ballMinC()[night] < -0.1, "ball at " + with.ballMinC()[night]);
    assertEquals(0, without.edgeIceMax()[night]);
    assertEquals(1, with.edgeIceMax()[night]);
    assertEquals(-5, with.airMeanC()[night], 1e-9);
    assertEquals(without.ballMinC()[night - 4], with.ballMinC()[night - 4]);
  }

  /** The place's own air bears neither the site's offset nor what warms the place. */
  @Test
  void theLoggerIsNotCorrected() {
    Place frostPocket = SomePlace.of(PlaceKind.BENCH).named("pocket").warmerBy(-3).place();
    Place heated =
        SomePlace.of(PlaceKind.WARM_ROOM).named("room").warmerBy(9).lowestHeld(16).place();
    for (Place place : List.of(frostPocket, heated)) {
      Simulator simulator =
          new Simulator(MILD, List.of(place), LATITUDE_DEG, Map.of(place.name(), colder(-5)));
      assertEquals(-5, simulator.climate(0).airC()[FIRST + 30]);
    }
  }

  @Test
  void dailyReadingsBecomeHoursByTheCurve() {
    DailyExtremes day = new DailyExtremes(-6, 2);
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (int i = 0; i < DAYS; i++) {
      days.put(FROM.plusDays(i), day);
    }
    HourlyAir logger =
        new HourlyAir(new TemperatureSeries("daily", days, new TreeMap<>()), LATITUDE_DEG);
    double[] airC = simulator("bench", logger).climate(0).airC();
    double[] expected = DailyCurve.hours(on(day, 10), on(day, 11), on(day, 12));
    assertArrayEquals(expected, Arrays.copyOfRange(airC, FIRST + 24, FIRST + 48));
  }

  private static DailyCurve.Day on(DailyExtremes air, int dayOfJanuary) {
    return new DailyCurve.Day(air, DayLength.at(LATITUDE_DEG, LocalDate.of(2024, 1, dayOfJanuary)));
  }

  /** By hand: the model says 5; the logger 4 for a day, then 8 with one hour of 12. */
  @Test
  void theErrorOfTheModelIsModelLessLogger() {
    List<Double> second = new ArrayList<>(Collections.nCopies(24, 8.0));
    second.set(13, 12.0);
    HourlyAir logger = logger(List.of(Collections.nCopies(24, 4.0), second), FROM);
    ModelError error = simulator("bench", logger).modelError(0).orElseThrow();
    assertEquals(1, error.winters());
    assertEquals(48, error.hours());
    assertEquals((24 * 1 - 23 * 3 - 7) / 48.0, error.meanK(), 1e-12);
    assertEquals(Math.sqrt((24 * 1 + 23 * 9 + 49) / 48.0), error.rmsK(), 1e-12);
    assertEquals(-7, error.largestK(), 1e-12);
    assertEquals(FROM.plusDays(1), error.largestOn());
  }

  /** The model is judged as if it had never seen the logger. */
  @Test
  void theErrorUnderARoofDoesNotLearnFromTheLogger() {
    ModelError error = simulator("shed", colder(-5)).modelError(1).orElseThrow();
    assertEquals(10, error.meanK(), 1e-9);
    assertEquals(10, error.rmsK(), 1e-9);
  }

  @Test
  void errorsOfSeveralWintersCountByTheHour() {
    ModelError small = new ModelError(1, 100, 1, 2, -4, FROM);
    ModelError large = new ModelError(1, 300, -1, 4, 3, FROM.plusDays(1));
    ModelError both = small.and(large);
    assertEquals(both, large.and(small));
    assertEquals(2, both.winters());
    assertEquals(400, both.hours());
    assertEquals(-0.5, both.meanK(), 1e-12);
    assertEquals(Math.sqrt((100 * 4 + 300 * 16) / 400.0), both.rmsK(), 1e-12);
    assertEquals(-4, both.largestK());
    assertEquals(FROM, both.largestOn());
  }

  @Test
  void aLoggerOfAnotherWinterChangesNothing() {
    HourlyAir logger = logger(List.of(Collections.nCopies(24, -9.0)), FROM.plusYears(3));
    Simulator with = simulator("shed", logger);
    assertEquals(Optional.empty(), with.modelError(1));
    Simulator without = new Simulator(MILD, PLACES, LATITUDE_DEG);
    assertArrayEquals(without.climate(1).airC(), with.climate(1).airC());
    assertNotEquals(without.climate(1).airC()[0], -9.0);
  }

  private static Simulator simulator(String place, HourlyAir logger) {
    return new Simulator(MILD, PLACES, LATITUDE_DEG, Map.of(place, logger));
  }

  /** Four days of one temperature. */
  private static HourlyAir colder(double airC) {
    return logger(Collections.nCopies(DAYS, Collections.nCopies(24, airC)), FROM);
  }

  private static HourlyAir logger(List<List<Double>> readings, LocalDate from) {
    TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (int i = 0; i < readings.size(); i++) {
      List<Double> ofDay = readings.get(i);
      hours.put(from.plusDays(i), ofDay);
      days.put(from.plusDays(i), new DailyExtremes(Collections.min(ofDay), Collections.max(ofDay)));
    }
    return new HourlyAir(new TemperatureSeries("logger", days, hours), LATITUDE_DEG);
  }
}
