package org.hibernacle.input;

/** What figures say of a year. */
final class Years {
  /** First year of any series of temperatures, give or take. */
  private static final int FIRST = 1700;

  private static final int LAST = 2299;

  private Years() {}

  /** Whether anybody can have measured then: keeps a wrong column from being taken for dates. */
  static boolean plausible(int year) {
    return year >= FIRST && year <= LAST;
  }

  /** The year of two digits, 1969 to 2068, as POSIX has it (strptime, conversion y). */
  static int ofTwoDigits(int digits) {
    return digits + (digits < 69 ? 2000 : 1900);
  }
}
