package org.hibernacle.input;

/** Unit of a temperature column. */
public enum TemperatureUnit {
  /** Degrees Celsius. */
  C,
  /** Degrees Fahrenheit. */
  F;

  /** The temperature in °C, exactly: {@code (F - 32) * 5 / 9}. */
  public double toC(double value) {
    return this == C ? value : (value - 32) * 5 / 9;
  }

  /** {@code °C} or {@code °F}. */
  @Override
  public String toString() {
    return "°" + name();
  }
}
