package org.hibernacle.physiology;

import static org.hibernacle.physiology.SomeYear.NIGHTS;
import static org.hibernacle.physiology.SomeYear.SEASON;
import static org.hibernacle.physiology.SomeYear.night;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.hibernacle.SomePlant;
import org.hibernacle.climate.ChillingHours;
import org.hibernacle.climate.DynamicModel;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.ChillNeed;
import org.junit.jupiter.api.Test;

/**
 * Needs of chill in use against published ones, and which of the three measures ends rest where.
 */
class RestNeedsTest {
  /**
   * Man, Lu, Dang 2017, Front. Plant Sci. 8:1354: white and black spruce 300 to 500 hours,
   * lodgepole pine over 1100.
   */
  @Test
  void hoursOfBorealConifersAreThoseOfTheirClass() {
    for (String spruce : new String[] {"Picea glauca", "Picea mariana"}) {
      double hours = Rest.of(SomePlant.species(spruce)).hours();
      assertTrue(hours >= 300 && hours <= 500, spruce + " " + hours);
    }
    assertTrue(Rest.of(SomePlant.species("Pinus contorta")).hours() > 1100);
  }

  /**
   * Zhuang et al. 2016, Eur. J. Agron.: Japanese apricot needs 24 to 82 portions, little is under
   * 50, much over 70. UC Davis, table of chill requirements: peach 8 to 75, apricot 34 to 69, sweet
   * cherry 30 to 70, one apple 50.
   */
  @Test
  void portionsLieWithinWhatIsPublishedForFruitTrees() {
    assertEquals(24, Rest.of(SomePlant.species("Prunus mume")).portions());
    assertEquals(50, Rest.of(SomePlant.species("Malus domestica")).portions());
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (!Rest.rests(species) || species.chillPortionsLow().isPresent()) {
        continue;
      }
      double portions = Rest.of(species).portions();
      assertTrue(portions >= 8 && portions <= 82, species.taxon());
      assertEquals(species.chillNeed() == ChillNeed.LOW, portions < 50, species.taxon());
      assertEquals(species.chillNeed() == ChillNeed.HIGH, portions > 70, species.taxon());
    }
  }

  /** Six to eight weeks below 4.4 °C (Rutgers NJAES FS528): a store at 3 °C from 1 November. */
  @Test
  void aMapleInACoolStoreHasRestedAfterSixToEightWeeks() {
    long days = restedInStoreAt(3).toEpochDay() - LocalDate.of(2020, 11, 1).toEpochDay();
    assertTrue(days >= 6 * 7 - 1 && days <= 8 * 7, days + " days");
  }

  /**
   * The Dynamic Model gives next to nothing below 0 °C and chilling hours nothing above 7.2: each
   * covers for the other, and the calendar for both.
   */
  @Test
  void eachMeasureCoversForTheOthers() {
    assertTrue(portionsOfAMonthAt(-4) < 0.1);
    assertTrue(portionsOfAMonthAt(8) > 20);
    LocalDate frozen = restedInStoreAt(-4);
    assertEquals(LocalDate.of(2020, 11, 1).plusDays(42), frozen, "1000 hours");
    LocalDate cool = restedInStoreAt(8);
    assertTrue(
        cool.isAfter(LocalDate.of(2020, 12, 1)) && cool.isBefore(LocalDate.of(2021, 1, 31)),
        "50 portions by " + cool);
    assertEquals(LocalDate.of(2021, 2, 2), restedInStoreAt(18), "the calendar alone");
  }

  private static LocalDate restedInStoreAt(double storeC) {
    return SEASON.day(live("Acer palmatum", n -> n < night(11, 1) ? 15 : storeC).restEnd());
  }

  private static double portionsOfAMonthAt(double airC) {
    DynamicModel chill = new DynamicModel();
    double portions = 0;
    for (int hour = 0; hour < 30 * 24; hour++) {
      portions += chill.add(airC);
    }
    return portions;
  }

  /** Leaf by day length and cold: at 45° N by 12 h days at the earliest, 15 °C holds it on. */
  @Test
  void leavesWaitForCoolAndShortDays() {
    assertEquals(NIGHTS, firstBare(n -> 15));
    int cool = firstBare(n -> 6);
    LocalDate bare = SEASON.day(cool);
    assertTrue(
        bare.isAfter(LocalDate.of(2020, 9, 25)) && bare.isBefore(LocalDate.of(2020, 10, 15)),
        bare.toString());
  }

  private static int firstBare(IntToDoubleFunction airC) {
    boolean[] bare = SomeYear.live(SomePlant.of("Acer palmatum").plant(), airC).bare();
    int n = 0;
    while (n < bare.length && !bare[n]) {
      n++;
    }
    return n;
  }

  private static PlantState live(String taxon, IntToDoubleFunction airC) {
    double[] air = new double[NIGHTS];
    double[] portions = new double[NIGHTS];
    double[] hours = new double[NIGHTS];
    double[] dayLengthH = new double[NIGHTS];
    Arrays.fill(dayLengthH, 10);
    DynamicModel chill = new DynamicModel();
    for (int n = 0; n < NIGHTS; n++) {
      air[n] = airC.applyAsDouble(n);
      for (int hour = 0; hour < 24; hour++) {
        portions[n] += chill.add(air[n]);
        hours[n] += ChillingHours.belowOfHour(air[n]);
      }
    }
    return PlantState.live(
        SomePlant.of(taxon).plant(),
        SEASON,
        new Surroundings(
            air,
            air,
            air,
            dayLengthH,
            portions,
            hours,
            new double[NIGHTS],
            night(10, 1),
            night(1, 15),
            night(2, 1)));
  }
}
