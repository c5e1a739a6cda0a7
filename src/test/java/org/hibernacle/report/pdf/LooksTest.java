package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import org.hibernacle.report.StyleRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast as defined by W3C, Web Content Accessibility Guidelines 2.1, 1.4.3 and its glossary. */
class LooksTest {
  private static final double LEAST_CONTRAST = 4.5;

  @ParameterizedTest
  @EnumSource(StyleRole.class)
  void wordsStandOutFromTheirField(StyleRole role) {
    Look look = Looks.of(role);
    assertTrue(contrast(look.fill(), look.text()) >= LEAST_CONTRAST, role + " on its fill");
    assertTrue(contrast(look.fill(), Looks.INK) >= LEAST_CONTRAST, "ink on the fill of " + role);
    assertTrue(
        contrast(look.fill(), Looks.of(StyleRole.SUBTLE).text()) >= LEAST_CONTRAST,
        "a reason on the fill of " + role);
    assertTrue(contrast(Color.WHITE, look.text()) >= LEAST_CONTRAST, role + " on paper");
  }

  /** A field prints as a light grey; 0.6 of the luminance of paper is our own choice. */
  @ParameterizedTest
  @EnumSource(StyleRole.class)
  void fieldsArePale(StyleRole role) {
    assertTrue(luminance(Looks.of(role).fill()) > 0.6, role.name());
  }

  /** The guidelines' glossary: white on black is 21 to 1. */
  @Test
  void theMeasureItselfAgreesWithTheGuidelines() {
    assertEquals(21, contrast(Color.WHITE, Color.BLACK), 1e-9);
  }

  private static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color color) {
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
