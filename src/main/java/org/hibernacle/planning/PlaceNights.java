package org.hibernacle.planning;

import org.hibernacle.climate.ChillingHours;
import org.hibernacle.climate.DynamicModel;
import org.hibernacle.climate.GrowingDegreeHours;
import org.hibernacle.thermal.Simulator;

/**
 * What one place gives a plant night by night, whatever stands there.
 *
 * @param weekMeanC mean air of the seven nights up to and with this one, °C
 * @param chillPortions gained each night
 * @param chillHours gained each night, at or below 7.2 °C
 * @param growingDegreeHours gained each night, K·h
 */
record PlaceNights(
    double[] weekMeanC, double[] chillPortions, double[] chillHours, double[] growingDegreeHours) {

  static PlaceNights of(Simulator simulator, int place) {
    double[] airC = simulator.climate(place).airC();
    int nights = simulator.winter().nights();
    double[] mean = new double[nights];
    double[] portions = new double[nights];
    double[] hours = new double[nights];
    double[] heat = new double[nights];
    DynamicModel chill = new DynamicModel();
    for (int n = 0; n < nights; n++) {
      for (int hour = 24 * n + 12; hour < 24 * n + 36; hour++) {
        mean[n] += airC[hour] / 24;
        portions[n] += chill.add(airC[hour]);
        hours[n] += ChillingHours.belowOfHour(airC[hour]);
        heat[n] += GrowingDegreeHours.ofHour(airC[hour]);
      }
    }
    double[] week = new double[nights];
    for (int n = 0; n < nights; n++) {
      int from = Math.max(0, n - 6);
      for (int i = from; i <= n; i++) {
        week[n] += mean[i] / (n - from + 1);
      }
    }
    return new PlaceNights(week, portions, hours, heat);
  }
}
