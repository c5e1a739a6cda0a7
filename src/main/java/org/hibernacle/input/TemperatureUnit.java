package org.hibernacle.input;

import java.util.Arrays;
import java.util.List;

/** Unit of a temperature column. */
public enum TemperatureUnit {
  /** Degrees Celsius. */
  C("C", "°C"),
  /** Degrees Fahrenheit. */
  F("F", "°F"),
  /** Kelvin. */
  K("K", "K"),
  /** Tenths of a degree Celsius, as archives keep them. */
  TENTHS("tenths", "tenths of °C");

  private final String option;
  private final String shown;

  TemperatureUnit(String option, String shown) {
    this.option = option;
    this.shown = shown;
  }

  /** As given to {@code --unit}. */
  public String option() {
    return option;
  }

  /** Every {@link #option}. */
  public static List<String> options() {
    return Arrays.stream(values()).map(TemperatureUnit::option).toList();
  }

  /** The unit of that {@link #option}, in any case; throws if there is none. */
  public static TemperatureUnit named(String option) {
    return Arrays.stream(values())
        .filter(unit -> unit.option.equalsIgnoreCase(option))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(option));
  }

  /** The temperature in °C, exactly: {@code (F - 32) * 5 / 9}, {@code K - 273.15}. */
  public double toC(double value) {
    return switch (this) {
      case C -> value;
      case F -> (value - 32) * 5 / 9;
      case K -> value - 273.15;
      case TENTHS -> value / 10;
    };
  }

  /** {@code °C}, {@code °F}, {@code K} or {@code tenths of °C}. */
  @Override
  public String toString() {
    return shown;
  }
}
