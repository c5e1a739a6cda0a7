package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import org.hibernacle.SomePlant;
import org.hibernacle.climate.ChillingHours;
import org.hibernacle.climate.DayLength;
import org.hibernacle.climate.DynamicModel;
import org.hibernacle.climate.GrowingDegreeHours;
import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;

/**
 * A store should stay near 0 to 5 °C and wakes plants near 10 °C; common practice, no source. The
 * maple stands outside at 8 °C until December, then in a store of one temperature.
 */
class StoreTemperatureTest {
  private static final Season SEASON = new Season(2020, false);
  private static final LocalDate INTO_THE_STORE = LocalDate.of(2020, 12, 1);

  @Test
  void aMapleSleepsThroughAprilInAColdStore() {
    for (double storeC : new double[] {0, 2, 5}) {
      assertTrue(wakes(storeC).isAfter(LocalDate.of(2021, 4, 30)), storeC + " °C");
    }
  }

  @Test
  void itWakesBeforeSpringInAStoreAtTen() {
    assertTrue(wakes(10).isBefore(LocalDate.of(2021, 4, 1)), wakes(10).toString());
    assertTrue(wakes(15).isBefore(wakes(10)), "warmer wakes sooner");
  }

  private static LocalDate wakes(double storeC) {
    int nights = SEASON.days() - 1;
    double[] airC = new double[nights];
    Arrays.fill(airC, storeC);
    Arrays.fill(airC, 0, SEASON.index(INTO_THE_STORE), 8);
    double[] dayLengthH = new double[nights];
    double[] portions = new double[nights];
    double[] hours = new double[nights];
    double[] heat = new double[nights];
    DynamicModel chill = new DynamicModel();
    for (int n = 0; n < nights; n++) {
      dayLengthH[n] = DayLength.at(48, SEASON.day(n)).lengthH();
      for (int hour = 0; hour < 24; hour++) {
        portions[n] += chill.add(airC[n]);
        hours[n] += ChillingHours.belowOfHour(airC[n]);
        heat[n] += GrowingDegreeHours.ofHour(airC[n]);
      }
    }
    Surroundings store =
        new Surroundings(
            airC,
            airC,
            airC,
            dayLengthH,
            portions,
            hours,
            heat,
            SEASON.index(SEASON.coreStart()),
            SEASON.index(SEASON.midwinter()),
            SEASON.index(LocalDate.of(2021, 2, 1)));
    PlantState state = PlantState.live(SomePlant.of("Acer palmatum").plant(), SEASON, store);
    return SEASON.day(state.budBreak());
  }
}
