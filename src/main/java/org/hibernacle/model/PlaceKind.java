package org.hibernacle.model;

/** Where a plant can stand, with the defaults that a bare kind stands for. */
public enum PlaceKind {
  BENCH(false, Light.BRIGHT, 0, 0),
  /** On the soil, sheltered from wind and from part of the night sky. */
  GROUND(false, Light.BRIGHT, 0, 0),
  /** Shed, garage or cellar without heating. */
  COLD_STORE(true, Light.DARK, 1, 18),
  GLASSHOUSE(true, Light.BRIGHT, 1, 1),
  FROST_FREE_ROOM(true, Light.LOW, 4, 24),
  WARM_ROOM(true, Light.BRIGHT, 6, 12);

  private final boolean roofed;
  private final Light light;
  private final double warmerByK;
  private final double lagHours;

  PlaceKind(boolean roofed, Light light, double warmerByK, double lagHours) {
    this.roofed = roofed;
    this.light = light;
    this.warmerByK = warmerByK;
    this.lagHours = lagHours;
  }

  /** Whether moving there is a move-in. */
  public boolean roofed() {
    return roofed;
  }

  /** Default light. */
  public Light defaultLight() {
    return light;
  }

  /** Default night warmth over the outside air, K. */
  public double defaultWarmerByK() {
    return warmerByK;
  }

  /** Default time constant with which the place follows outside air, h. */
  public double defaultLagHours() {
    return lagHours;
  }
}
