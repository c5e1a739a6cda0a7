package org.hibernacle.thermal;

/**
 * What one place was like through one winter, hour by hour.
 *
 * @param airC air in the place, °C: what tops feel
 * @param wrapC air as a pot's wall feels it, °C: cooled by the sky, delayed and levelled where
 *     mulch lies, otherwise equal to {@code airC}
 * @param skyK how far the night sky draws a level surface below the air, K (>= 0)
 * @param baseC what a pot stands on there: soil, or a shed's slab, °C; equal to {@code airC} on a
 *     bench, where air passes below the pot
 */
public record PlaceClimate(double[] airC, double[] wrapC, double[] skyK, double[] baseC) {}
