package org.hibernacle.model;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plant hardiness zone as used by the USDA map: 13 zones of 10 °F of mean yearly extreme minimum
 * from -60 °F, each in two halves, {@code a} the colder.
 *
 * @param zone 1..13
 * @param warmerHalf true for {@code b}
 */
public record HardinessZone(int zone, boolean warmerHalf) {
  private static final Pattern TEXT = Pattern.compile("(1[0-3]|[1-9])([ab])");

  public HardinessZone {
    if (zone < 1 || zone > 13) {
      throw new IllegalArgumentException("zone must be 1..13 but is " + zone);
    }
  }

  /** Reads {@code 5b}; throws {@link IllegalArgumentException} for anything else. */
  public static HardinessZone parse(String text) {
    Matcher m = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw new IllegalArgumentException(
          "hardiness zone must look like 5b (1a to 13b) but is \"" + text + "\"");
    }
    return new HardinessZone(Integer.parseInt(m.group(1)), m.group(2).equals("b"));
  }

  /** The cold end of the half zone, °C: {@code (-60 + 10 (zone - 1) + 5 if b - 32) * 5 / 9}. */
  public double coldEndC() {
    int fahrenheit = -60 + 10 * (zone - 1) + (warmerHalf ? 5 : 0);
    return (fahrenheit - 32) * 5 / 9.0;
  }

  @Override
  public String toString() {
    return zone + (warmerHalf ? "b" : "a");
  }
}
