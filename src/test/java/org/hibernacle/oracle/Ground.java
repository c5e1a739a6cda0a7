package org.hibernacle.oracle;

import java.util.Arrays;
import org.hibernacle.model.Place;

/**
 * What a pot stands on, hour by hour: soil 10 cm down (docs/models/soil.md) or the slab of a roofed
 * place (docs/models/places.md). The soil is cut finer than the program cuts it.
 */
final class Ground {
  private static final double DEPTH_M = 8;
  private static final double FELT_AT_M = 0.10;
  private static final double STEP_S = 180;
  private static final double SLAB_DAYS = 20;

  /** Top of each layer, and below the last one its bottom, m. */
  private final double[] edgesM = edges();

  private final int layers = edgesM.length - 1;

  /** Heat of each layer counted from unfrozen at 0 °C, J/m3. */
  private final double[] heat = new double[layers];

  private final double[] soilC = new double[layers];

  private Ground() {}

  /** Soil at the depth that a pot feels, °C at the start of each hour. */
  static double[] soilC(Place place, Outside outside, double[] airC) {
    Ground ground = new Ground();
    Arrays.fill(ground.heat, 2.5e6 * Arrays.stream(airC).average().orElseThrow());
    ground.liveThrough(place, outside, airC);
    return ground.liveThrough(place, outside, airC);
  }

  /** Floor under a roof, °C at the start of each hour. */
  static double[] slabC(Outside outside, double[] airC) {
    double yearC = outside.meanC();
    double[] slab = new double[airC.length];
    double nowC = (airC[0] + yearC) / 2;
    for (int hour = 0; hour < slab.length; hour++) {
      slab[hour] = nowC;
      nowC += ((airC[hour] + yearC) / 2 - nowC) / (SLAB_DAYS * 24);
    }
    return slab;
  }

  private double[] liveThrough(Place place, Outside outside, double[] airC) {
    double[] felt = new double[airC.length];
    for (int hour = 0; hour < airC.length; hour++) {
      boolean covered =
          place.wrapOf().isEmpty()
              && Covers.lie(place, outside.season(), outside.season().day(hour / 24));
      double snowM = outside.snowM(hour / 24);
      double surfaceM2KPerW =
          1 / Pot.surfaceWPerM2K(place) + coverM2KPerW(place, covered) + Blanket.m2KPerW(snowM);
      double aboveC = snowM > 0 ? Math.min(0, airC[hour]) : airC[hour];
      for (double s = 0; s < 3600; s += STEP_S) {
        step(surfaceM2KPerW, aboveC);
      }
      felt[hour] = at(FELT_AT_M);
    }
    return felt;
  }

  private static double coverM2KPerW(Place place, boolean covered) {
    if (!covered) {
      return 0;
    }
    return switch (place.cover()) {
      case NONE -> 0;
      case FLEECE -> Covers.FLEECE_M2K_PER_W;
      case MULCH -> place.coverDepthCm() / 100 / Covers.MULCH_W_PER_MK;
    };
  }

  private void step(double surfaceM2KPerW, double airC) {
    for (int i = 0; i < layers; i++) {
      soilC[i] = temperatureC(heat[i]);
    }
    double fromAboveWPerM2 = (airC - soilC[0]) / (surfaceM2KPerW + halfM2KPerW(0));
    for (int i = 0; i < layers; i++) {
      double belowWPerM2 =
          i == layers - 1 ? 0 : (soilC[i] - soilC[i + 1]) / (halfM2KPerW(i) + halfM2KPerW(i + 1));
      heat[i] += (fromAboveWPerM2 - belowWPerM2) * STEP_S / thicknessM(i);
      fromAboveWPerM2 = belowWPerM2;
    }
  }

  private static double temperatureC(double heatJPerM3) {
    double latent = 83.5e6;
    if (heatJPerM3 >= 0) {
      return heatJPerM3 / 2.5e6;
    }
    return heatJPerM3 > -latent ? 0 : (heatJPerM3 + latent) / 1.9e6;
  }

  private double halfM2KPerW(int layer) {
    double conductivity = heat[layer] < -83.5e6 / 2 ? 1.7 : 1.2;
    return thicknessM(layer) / 2 / conductivity;
  }

  private double thicknessM(int layer) {
    return edgesM[layer + 1] - edgesM[layer];
  }

  private double at(double depthM) {
    int below = 0;
    while (middleM(below) < depthM) {
      below++;
    }
    double share = (depthM - middleM(below - 1)) / (middleM(below) - middleM(below - 1));
    return temperatureC(heat[below - 1]) * (1 - share) + temperatureC(heat[below]) * share;
  }

  private double middleM(int layer) {
    return (edgesM[layer] + edgesM[layer + 1]) / 2;
  }

  /** Layers of 2 cm to a quarter of a metre, then each a quarter thicker than the one above. */
  private static double[] edges() {
    double[] edges = new double[64];
    int count = 1;
    double thickness = 0.02;
    while (edges[count - 1] < DEPTH_M) {
      edges[count] = Math.min(DEPTH_M, edges[count - 1] + thickness);
      if (edges[count] > 0.25) {
        thickness *= 1.25;
      }
      count++;
    }
    return Arrays.copyOf(edges, count);
  }
}
