package org.hibernacle.climate;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.junit.jupiter.api.Test;

/**
 * All four measures of chill and warmth against runs of an independent implementation; see
 * checks/SOURCES.md. There the portions of n hours leave out the last hour.
 */
class ChillTest {
  @Test
  void constantTemperatures() {
    List<CSVRecord> rows = CheckTable.rows("chill_constant_1000h");
    assertEquals(21, rows.size());
    for (CSVRecord row : rows) {
      double[] airC = constant(number(row, "temp_C"), 1000);
      assertEquals(number(row, "chilling_hours"), sum(airC, ChillingHours::ofHour), row.toString());
      assertEquals(number(row, "utah_units"), sum(airC, UtahUnits::ofHour), row.toString());
      assertEquals(number(row, "chill_portions"), portions(airC), 1e-6, row.toString());
      assertEquals(
          number(row, "gdh_asymcur"), sum(airC, GrowingDegreeHours::ofHour), 1e-4, row.toString());
      assertEquals(number(row, "hour_of_first_portion_0based"), firstPortionHour(airC));
      assertEquals(number(row, "portion_events"), portionEvents(airC), row.toString());
    }
  }

  @Test
  void breakPoints() {
    List<CSVRecord> rows = CheckTable.rows("chill_edge_temperatures");
    assertEquals(25, rows.size());
    for (CSVRecord row : rows) {
      double airC = number(row, "temp_C");
      assertEquals(number(row, "chilling_hour"), ChillingHours.ofHour(airC), row.toString());
      assertEquals(number(row, "utah_unit"), UtahUnits.ofHour(airC), row.toString());
      assertEquals(number(row, "gdh_asymcur"), GrowingDegreeHours.ofHour(airC), 1e-6);
      assertEquals(
          number(row, "chill_portions_1000h"), portions(constant(airC, 1000)), 1e-6, "" + airC);
    }
  }

  @Test
  void daysOfTwoTemperatures() {
    List<CSVRecord> rows = CheckTable.rows("chill_daily_cycles_42d");
    assertEquals(7, rows.size());
    for (CSVRecord row : rows) {
      int firstHours = (int) number(row, "hours1");
      double[] airC =
          IntStream.range(0, 24 * (int) number(row, "days"))
              .mapToDouble(h -> number(row, h % 24 < firstHours ? "t1_C" : "t2_C"))
              .toArray();
      assertEquals(number(row, "chilling_hours"), sum(airC, ChillingHours::ofHour), row.toString());
      assertEquals(number(row, "utah_units"), sum(airC, UtahUnits::ofHour), row.toString());
      assertEquals(number(row, "chill_portions"), portions(airC), 1e-6, row.toString());
      assertEquals(number(row, "gdh_asymcur"), sum(airC, GrowingDegreeHours::ofHour), 1e-4);
    }
  }

  @Test
  void anAutumnAndWinter() {
    List<CSVRecord> rows = CheckTable.rows("chill_synthetic_autumn_winter");
    assertEquals(13, rows.size());
    for (CSVRecord row : rows) {
      double[] airC =
          IntStream.range(0, (int) number(row, "hours_summed"))
              .mapToDouble(ChillTest::syntheticC)
              .toArray();
      assertEquals(number(row, "temp_of_last_hour_C"), airC[airC.length - 1], 1e-8);
      assertEquals(number(row, "chilling_hours"), sum(airC, ChillingHours::ofHour), row.toString());
      assertEquals(number(row, "utah_units"), sum(airC, UtahUnits::ofHour), row.toString());
      assertEquals(number(row, "chill_portions"), portions(airC), 1e-6, row.toString());
      assertEquals(number(row, "gdh_asymcur"), sum(airC, GrowingDegreeHours::ofHour), 1e-5);
    }
  }

  /** Same source, printed to seven digits: the product at 6 °C crosses 1 in hour 29. */
  @Test
  void theFirstPortionAtSixDegreesComesInHourTwentyNine() {
    DynamicModel model = new DynamicModel();
    for (int hour = 1; hour < 29; hour++) {
      assertEquals(0, model.add(6), "hour " + hour);
    }
    assertEquals(1.021407 * 0.9599619, model.add(6), 1e-6);
    assertEquals(1.021407 * 0.9599619, model.portions(), 1e-6);
  }

  /** Parts of the model, printed to seven digits by the same independent run. */
  @Test
  void thePartsOfTheDynamicModelAreThoseOfTheIndependentRun() {
    assertEquals(2.150863, DynamicModel.balance(6), 1e-6);
    assertEquals(0.02221148, DynamicModel.lossPerH(6), 1e-8);
    assertEquals(0.9599619, DynamicModel.bankedFraction(6), 1e-7);
    assertEquals(0.03829926, DynamicModel.bankedFraction(2), 1e-8);
    assertEquals(0.999917, DynamicModel.bankedFraction(10), 1e-6);
    Map<Integer, Double> products =
        Map.of(1, 0.04724719, 5, 0.2260828, 10, 0.4284015, 20, 0.7714755, 28, 0.9960393);
    DynamicModel model = new DynamicModel();
    for (int hour = 1; hour <= 28; hour++) {
      model.add(6);
      if (products.containsKey(hour)) {
        assertEquals(products.get(hour), model.product(), 1e-7, "hour " + hour);
      }
    }
    model.add(6);
    assertEquals(1.021407 * (1 - 0.9599619), model.product(), 1e-6);
  }

  /** Anderson, Richardson, Kesner 1986: half of the best, the best, and nothing at both ends. */
  @Test
  void warmthIsHalfwayAtTheMiddleAndBestAtTwentyFive() {
    assertEquals(0, GrowingDegreeHours.ofHour(4));
    assertEquals(10.5, GrowingDegreeHours.ofHour(14.5), 1e-12);
    assertEquals(21, GrowingDegreeHours.ofHour(25), 1e-12);
    assertEquals(0, GrowingDegreeHours.ofHour(36), 1e-12);
    assertEquals(GrowingDegreeHours.ofHour(25), GrowingDegreeHours.ofHour(25 + 1e-9), 1e-7);
  }

  @Test
  void theOlderCountHasNoLowerEnd() {
    assertEquals(1, ChillingHours.belowOfHour(-30));
    assertEquals(1, ChillingHours.belowOfHour(7.2));
    assertEquals(0, ChillingHours.belowOfHour(7.21));
  }

  static double syntheticC(int h) {
    return 8
        + 9 * Math.cos(2 * Math.PI * (h / 24.0 + 73) / 365)
        + 4 * Math.cos(2 * Math.PI * (h - 15) / 24)
        + 3 * Math.sin(2 * Math.PI * h / (24 * 9.7));
  }

  private static double[] constant(double airC, int hours) {
    return DoubleStream.generate(() -> airC).limit(hours).toArray();
  }

  private static double sum(double[] airC, DoubleUnaryOperator measure) {
    return DoubleStream.of(airC).map(measure).sum();
  }

  private static double portions(double[] airC) {
    DynamicModel model = new DynamicModel();
    DoubleStream.of(airC).limit(airC.length - 1).forEach(model::add);
    return model.portions();
  }

  private static int firstPortionHour(double[] airC) {
    DynamicModel model = new DynamicModel();
    for (int i = 1; i < airC.length; i++) {
      if (model.add(airC[i - 1]) > 0) {
        return i;
      }
    }
    return -1;
  }

  private static int portionEvents(double[] airC) {
    DynamicModel model = new DynamicModel();
    int events = 0;
    for (int i = 1; i < airC.length; i++) {
      events += model.add(airC[i - 1]) > 0 ? 1 : 0;
    }
    return events;
  }
}
