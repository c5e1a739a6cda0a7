package org.hibernacle.review;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What warmth did under a roof.
 *
 * @param warmNights nights at rest whose week averaged above 5 °C
 * @param warmthKNights by how much these weeks were above 5 °C, summed, kelvin times nights
 * @param warmestWeekC warmest such week's mean, °C; the warmest of all weeks at rest under a roof
 *     if none was above
 * @param warmestOn last day of that week
 * @param place where that was
 * @param darkNightsAwake nights after bud break in a dark store
 * @param woke day on which its buds broke, if they broke under a roof
 * @param daysEarlier by how much sooner than at home they broke; empty if they did not break here,
 *     or not at home on file
 */
public record StoreWarmth(
    int warmNights,
    double warmthKNights,
    double warmestWeekC,
    LocalDate warmestOn,
    String place,
    int darkNightsAwake,
    Optional<LocalDate> woke,
    OptionalInt daysEarlier) {}
