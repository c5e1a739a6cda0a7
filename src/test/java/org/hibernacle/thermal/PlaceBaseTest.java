package org.hibernacle.thermal;

import static org.hibernacle.SomeWinter.LATITUDE_DEG;
import static org.hibernacle.SomeWinter.steady;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;

class PlaceBaseTest {
  private static final LocalDate FIRST = LocalDate.of(2020, 10, 1);
  private static final Place SHED = SomePlace.of(PlaceKind.COLD_STORE).place();
  private static final Place GROUND = SomePlace.of(PlaceKind.GROUND).place();

  @Test
  void theSlabOfAShedStaysUnfrozenThroughAHardWeek() {
    LocalDate autumnEnds = LocalDate.of(2020, 12, 1);
    Winter winter =
        SomeWinter.wholeYear(
            day -> {
              boolean hard = !day.isBefore(autumnEnds) && day.isBefore(autumnEnds.plusDays(7));
              return hard ? steady(-12) : SomeWinter.wave(day, 10, 9, 6);
            });
    double[] airC = PlaceAir.hours(SHED, winter, LATITUDE_DEG);
    double[] slabC = PlaceBase.hours(SHED, winter, airC, LATITUDE_DEG);
    int start = 24 * winter.index(autumnEnds);
    double lowest = 99;
    for (int hour = start; hour < start + 14 * 24; hour++) {
      lowest = Math.min(lowest, slabC[hour]);
    }
    assertTrue(lowest > 0 && lowest < slabC[start] - 1, lowest + " °C, before " + slabC[start]);
  }

  /**
   * Two fifths of a month later it has come down the known share of the way: 1 - 1/e in 20 days.
   */
  @Test
  void theSlabDriftsToTheMiddleOfAirAndYear() {
    LocalDate step = LocalDate.of(2020, 12, 1);
    Winter winter = SomeWinter.from(FIRST, day -> steady(0));
    double[] airC = new double[winter.airC().length];
    Arrays.fill(airC, 24 * winter.index(step), airC.length, -12);
    double[] slabC = PlaceBase.hours(SHED, winter, airC, LATITUDE_DEG);
    double yearC = 27.5 - 0.38 * LATITUDE_DEG;
    assertEquals(yearC / 2, slabC[24 * winter.index(step) - 1], 1e-9);
    double twentyDays = (yearC - 12) / 2 + 6 / Math.E;
    assertEquals(twentyDays, slabC[24 * (winter.index(step) + 20) - 1], 0.01);
  }

  /** Kusuda and Achenbach's soil of the day the file starts on, by the rule for the latitude. */
  @Test
  void soilStartsFromTheRuleOfLatitudeWhereTheYearIsNotOnFile() {
    Winter winter = SomeWinter.from(FIRST, day -> steady(13));
    assertFalse(PlaceBase.hasWholeYear(winter));
    double yearC = 27.5 - 0.38 * LATITUDE_DEG;
    double coldest = winter.season().index(LocalDate.of(2021, 1, 30));
    double expected = new PeriodicSoil(yearC, 10, coldest, 0.045).at(0.10, 92);
    double soilC = PlaceBase.hours(GROUND, winter, winter.airC(), LATITUDE_DEG)[0];
    assertEquals(expected, soilC, 0.2);
    assertTrue(soilC > yearC + 3, "October soil is warmer than the year: " + soilC);
  }

  /** With a year on file its end is its beginning, whatever the rule of latitude would say. */
  @Test
  void soilIsSpunUpWithItsOwnYear() {
    Winter winter = SomeWinter.wholeYear(day -> SomeWinter.wave(day, 16, 6, 8));
    assertTrue(PlaceBase.hasWholeYear(winter));
    double[] soilC = PlaceBase.hours(GROUND, winter, winter.airC(), LATITUDE_DEG);
    assertEquals(soilC[soilC.length - 1], soilC[23], 0.3);
    assertEquals(16, Arrays.stream(soilC).average().orElseThrow(), 0.7);
  }

  /**
   * A second year of spinning up moves no hour from November on by 0.1 K. Starts 2 K apart leave a
   * winter's mean and its coldest hour within 0.25 K; only in the days in which frost leaves the
   * ground can they be a kelvin apart, since it leaves one of them first.
   */
  @Test
  void oneYearIsEnoughToForgetTheStart() {
    Winter winter = SomeWinter.wholeYear(day -> SomeWinter.wave(day, 8, 10, 8));
    Place mulched = SomePlace.of(PlaceKind.GROUND).mulch(25).place();
    for (Place place : new Place[] {GROUND, mulched}) {
      double[] once = fromNovember(place, winter, 8, 1);
      double[] twice = fromNovember(place, winter, 8, 2);
      for (int hour = 0; hour < once.length; hour++) {
        assertEquals(twice[hour], once[hour], 0.1, "hour " + hour);
      }
      double[] cold = fromNovember(place, winter, 7, 1);
      double[] warm = fromNovember(place, winter, 9, 1);
      assertEquals(lowest(warm), lowest(cold), 0.25);
      double meanC = Arrays.stream(warm).average().orElseThrow();
      assertEquals(meanC, Arrays.stream(cold).average().orElseThrow(), 0.25);
      assertTrue(lowest(warm) > lowest(cold), "what is started colder stays colder");
    }
  }

  private static double[] fromNovember(Place place, Winter winter, double deepC, int spinUps) {
    double[] soilC = PlaceBase.soil(place, winter, winter.airC(), deepC, spinUps);
    int november = 24 * winter.index(LocalDate.of(2020, 11, 1));
    return Arrays.copyOfRange(soilC, november, soilC.length);
  }

  private static double lowest(double[] soilC) {
    return Arrays.stream(soilC).min().orElseThrow();
  }

  /** A pocket that is always 2 K colder lies on soil that is 2 K colder, near enough. */
  @Test
  void aFrostPocketHasColderSoil() {
    Winter winter = SomeWinter.wholeYear(day -> SomeWinter.wave(day, 14, 6, 8));
    Place pocket = SomePlace.of(PlaceKind.GROUND).warmerBy(-2).place();
    double[] pocketAirC = PlaceAir.hours(pocket, winter, LATITUDE_DEG);
    double[] there = PlaceBase.hours(pocket, winter, pocketAirC, LATITUDE_DEG);
    double[] here = PlaceBase.hours(GROUND, winter, winter.airC(), LATITUDE_DEG);
    for (int hour = 0; hour < here.length; hour++) {
      assertEquals(here[hour] - 2, there[hour], 1e-6, "hour " + hour);
    }
  }

  /** Resistances of layers add: 4 cm and 6 cm of mulch are 10 cm, {@code d / k} each. */
  @Test
  void layersOfMulchAdd() {
    double thin = PlaceBase.coverM2KPerW(SomePlace.of(PlaceKind.GROUND).mulch(4).place());
    double thick = PlaceBase.coverM2KPerW(SomePlace.of(PlaceKind.GROUND).mulch(6).place());
    double both = PlaceBase.coverM2KPerW(SomePlace.of(PlaceKind.GROUND).mulch(10).place());
    assertEquals(0.04 / Exchange.MULCH_W_PER_MK, thin, 1e-12);
    assertEquals(both, thin + thick, 1e-12);
  }

  @Test
  void coversKeepTheSoilWarmerWhileTheyLie() {
    Winter winter = SomeWinter.wholeYear(day -> SomeWinter.wave(day, 7, 13, 6));
    double[] bareC = PlaceBase.hours(GROUND, winter, winter.airC(), LATITUDE_DEG);
    int january = 24 * winter.index(LocalDate.of(2021, 1, 20));
    double before = bareC[january];
    for (SomePlace place :
        new SomePlace[] {
          SomePlace.of(PlaceKind.GROUND).fleece(),
          SomePlace.of(PlaceKind.GROUND).mulch(10),
          SomePlace.of(PlaceKind.GROUND).mulch(25)
        }) {
      double soilC = PlaceBase.hours(place.place(), winter, winter.airC(), LATITUDE_DEG)[january];
      assertTrue(soilC > before + 0.2, soilC + " after " + before);
      before = soilC;
    }
    assertTrue(bareC[january] < 0 && before > 0, bareC[january] + " and " + before);
  }

  private static final Place BED = SomePlace.of(PlaceKind.GROUND).mulch(20).place();

  @Test
  void aPlaceHasItsOwnDayForTheCover() {
    Season winter = new Season(2020, false);
    Place late = BED.coveredFrom(LocalDate.of(2026, 11, 20));
    assertFalse(PlaceBase.coverIsOn(late, winter, LocalDate.of(2020, 11, 19)));
    assertTrue(PlaceBase.coverIsOn(late, winter, LocalDate.of(2020, 11, 20)));
    Place wrap = BED.uncovered().wrapped("wrapped", Place.Cover.MULCH, 15);
    assertTrue(PlaceBase.coverIsOn(wrap, winter, LocalDate.of(2020, 10, 1)));
  }

  /** 1 November to 15 April in the north, half a year later in the south. */
  @Test
  void coversLieFromNovemberToTheMiddleOfApril() {
    Season north = new Season(2020, false);
    assertFalse(PlaceBase.coverIsOn(BED, north, LocalDate.of(2020, 10, 31)));
    assertTrue(PlaceBase.coverIsOn(BED, north, LocalDate.of(2020, 11, 1)));
    assertTrue(PlaceBase.coverIsOn(BED, north, LocalDate.of(2021, 4, 14)));
    assertFalse(PlaceBase.coverIsOn(BED, north, LocalDate.of(2021, 4, 15)));
    Season south = new Season(2020, true);
    assertFalse(PlaceBase.coverIsOn(BED, south, LocalDate.of(2020, 4, 30)));
    assertTrue(PlaceBase.coverIsOn(BED, south, LocalDate.of(2020, 5, 1)));
    assertTrue(PlaceBase.coverIsOn(BED, south, LocalDate.of(2020, 10, 14)));
    assertFalse(PlaceBase.coverIsOn(BED, south, LocalDate.of(2020, 10, 15)));
  }
}
