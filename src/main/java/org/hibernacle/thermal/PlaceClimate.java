package org.hibernacle.thermal;

/**
 * What one place was like through one winter, hour by hour.
 *
 * @param airC air in the place, °C
 * @param baseC what a pot stands on there: soil, or a shed's slab, °C; equal to {@code airC} on a
 *     bench, where air passes below the pot
 */
public record PlaceClimate(double[] airC, double[] baseC) {}
