package org.hibernacle.thermal;

/**
 * Soil below one spot, as a column of layers that conduct, hold heat, and freeze.
 *
 * <p>Explicit finite volumes on enthalpy: each layer's heat is counted from unfrozen at 0 °C, with
 * a latent-heat plateau there, so that freezing needs no iteration and the heat balance closes to
 * rounding. Steps of {@value #STEP_S} s are well inside the stability limit of the thinnest layer.
 * No heat passes the bottom at 4 m, where the yearly swing is down to a sixth.
 *
 * <p>Material: damp garden loam, between the sandy and the clay rows of table 2.2 in Moene, van
 * Dam, Transport in the Atmosphere-Vegetation-Soil Continuum (2014). Compared with the Neumann
 * solution of a freezing half space and with Kusuda and Achenbach's periodic soil in the tests.
 */
final class SoilColumn {
  static final double STEP_S = 300;
  private static final double[] THICKNESS_M = {
    0.03, 0.03, 0.04, 0.05, 0.06, 0.08, 0.10, 0.13, 0.17, 0.22, 0.29, 0.38, 0.50, 0.60, 0.65, 0.67
  };

  /**
   * What the column is made of.
   *
   * @param unfrozenWPerMK conductivity, W/mK
   * @param frozenWPerMK the same frozen
   * @param unfrozenJPerM3K heat capacity, J/m3K
   * @param frozenJPerM3K the same frozen
   * @param latentJPerM3 latent heat of its water, J/m3
   */
  record Material(
      double unfrozenWPerMK,
      double frozenWPerMK,
      double unfrozenJPerM3K,
      double frozenJPerM3K,
      double latentJPerM3) {
    static final Material GARDEN_LOAM = new Material(1.2, 1.7, 2.5e6, 1.9e6, 0.25 * 334e6);
  }

  private final Material material;
  private final double[] thicknessM;
  private final double[] depthM;
  private final double[] heatJPerM3;
  private final double[] temperatureC;
  private final double[] fluxWPerM2;

  /** A column of loam in the layers used for gardens. */
  SoilColumn(java.util.function.DoubleUnaryOperator startCAtDepthM) {
    this(Material.GARDEN_LOAM, THICKNESS_M, startCAtDepthM);
  }

  /**
   * A column.
   *
   * @param material same at all depths
   * @param thicknessM of each layer from the top, m
   * @param startCAtDepthM starting temperature at a depth in m, °C
   */
  SoilColumn(
      Material material,
      double[] thicknessM,
      java.util.function.DoubleUnaryOperator startCAtDepthM) {
    this.material = material;
    this.thicknessM = thicknessM.clone();
    int n = thicknessM.length;
    depthM = new double[n];
    heatJPerM3 = new double[n];
    temperatureC = new double[n];
    fluxWPerM2 = new double[n + 1];
    double top = 0;
    for (int i = 0; i < n; i++) {
      depthM[i] = top + thicknessM[i] / 2;
      top += thicknessM[i];
      double startC = startCAtDepthM.applyAsDouble(depthM[i]);
      heatJPerM3[i] =
          startC > 0
              ? startC * material.unfrozenJPerM3K
              : startC * material.frozenJPerM3K - material.latentJPerM3;
      temperatureC[i] = startC;
    }
  }

  /**
   * Lets time pass.
   *
   * @param aboveC temperature above the surface, °C
   * @param surfaceM2KPerW resistance between there and the soil surface, m2K/W (> 0)
   * @param seconds a multiple of {@link #STEP_S}
   */
  void pass(double aboveC, double surfaceM2KPerW, double seconds) {
    int n = heatJPerM3.length;
    for (double done = 0; done < seconds; done += STEP_S) {
      double topHalf = thicknessM[0] / 2 / conductivity(0);
      fluxWPerM2[0] = (aboveC - temperatureC[0]) / (surfaceM2KPerW + topHalf);
      for (int i = 1; i < n; i++) {
        double resistance =
            thicknessM[i - 1] / 2 / conductivity(i - 1) + thicknessM[i] / 2 / conductivity(i);
        fluxWPerM2[i] = (temperatureC[i - 1] - temperatureC[i]) / resistance;
      }
      for (int i = 0; i < n; i++) {
        heatJPerM3[i] += (fluxWPerM2[i] - fluxWPerM2[i + 1]) * STEP_S / thicknessM[i];
        temperatureC[i] = temperature(heatJPerM3[i]);
      }
    }
  }

  private double conductivity(int layer) {
    return temperatureC[layer] < 0 ? material.frozenWPerMK : material.unfrozenWPerMK;
  }

  private double temperature(double heat) {
    if (heat > 0) {
      return heat / material.unfrozenJPerM3K;
    }
    double frozen = heat + material.latentJPerM3;
    return frozen < 0 ? frozen / material.frozenJPerM3K : 0;
  }

  /** Temperature at a depth, °C, linear between layer middles, constant beyond the ends. */
  double at(double depth) {
    int n = depthM.length;
    if (depth <= depthM[0]) {
      return temperatureC[0];
    }
    for (int i = 1; i < n; i++) {
      if (depth <= depthM[i]) {
        double share = (depth - depthM[i - 1]) / (depthM[i] - depthM[i - 1]);
        return temperatureC[i - 1] + share * (temperatureC[i] - temperatureC[i - 1]);
      }
    }
    return temperatureC[n - 1];
  }

  /** Depth of the freezing front, m: layers counted by the share of their water that is ice. */
  double frostDepthM() {
    double depth = 0;
    for (int i = 0; i < heatJPerM3.length; i++) {
      double ice = Math.min(1, Math.max(0, -heatJPerM3[i] / material.latentJPerM3));
      depth += ice * thicknessM[i];
    }
    return depth;
  }

  /** Heat in the column, J/m2, counted from unfrozen at 0 °C. */
  double heatJPerM2() {
    double sum = 0;
    for (int i = 0; i < heatJPerM3.length; i++) {
      sum += heatJPerM3[i] * thicknessM[i];
    }
    return sum;
  }
}
