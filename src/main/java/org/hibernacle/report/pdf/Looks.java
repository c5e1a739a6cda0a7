package org.hibernacle.report.pdf;

import java.awt.Color;
import org.hibernacle.report.StyleRole;

/** The one place that turns roles into colours. Words carry the meaning; colour only repeats it. */
final class Looks {
  /** Ordinary words. */
  static final Color INK = new Color(0x1B2420);

  /** Lines that carry a shape: under headings, round the calendar. */
  static final Color RULE = new Color(0x7C8883);

  /** Lines that only guide the eye. */
  static final Color HAIRLINE = new Color(0xC9D0CC);

  private Looks() {}

  /** The look of that role. */
  static Look of(StyleRole role) {
    return switch (role) {
      case PLAIN -> look(0xFFFFFF, 0x1B2420);
      case TITLE, HEADING -> look(0xFFFFFF, 0x1F3D36);
      case SUBTLE -> look(0xFFFFFF, 0x4A554F);
      case MOVE_DOWN -> look(0xF6E7D2, 0x6B3E0A);
      case MOVE_IN -> look(0xDFE7F1, 0x263F66);
      case STEP_OUT -> look(0xECEED6, 0x4B5316);
      case RETURN -> look(0xDCEFDD, 0x1D5A2A);
      case STAYS -> look(0xEDF2EC, 0x475648);
      case TASK -> look(0xEEEEEE, 0x3F3F3F);
      case DANGER -> look(0xF7DEDC, 0x7F1616);
      case CAUTION -> look(0xFAF0CC, 0x6A5200);
    };
  }

  private static Look look(int fill, int text) {
    return new Look(new Color(fill), new Color(text));
  }
}
