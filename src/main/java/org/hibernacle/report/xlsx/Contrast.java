package org.hibernacle.report.xlsx;

/**
 * How well letters stand out: the contrast ratio of the Web Content Accessibility Guidelines 2.1
 * (success criterion 1.4.3 and its definitions of contrast ratio and relative luminance), from 1 to
 * 21. Letters of running text want {@value #LEAST}.
 */
final class Contrast {
  static final double LEAST = 4.5;

  private static final double LINEAR_BELOW = 0.03928;

  private Contrast() {}

  /** Of two colours, 0xRRGGBB each; their order plays no part. */
  static double of(int one, int other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double share = (channel & 0xFF) / 255.0;
    return share <= LINEAR_BELOW ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
