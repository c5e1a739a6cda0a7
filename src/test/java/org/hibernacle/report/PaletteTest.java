package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaletteTest {
  private static final Palette PALETTE = Palette.standard();

  /** Relative luminance of WCAG 2.1. */
  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double s = (channel & 0xFF) / 255.0;
    return s <= 0.03928 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
  }

  private static double contrast(int a, int b) {
    double light = Math.max(luminance(a), luminance(b));
    double dark = Math.min(luminance(a), luminance(b));
    return (light + 0.05) / (dark + 0.05);
  }

  @Test
  void contrastIsThatOfTheGuideline() {
    // WCAG 2.1: black on white is 21 : 1; #777777 on white is 4.48 : 1 (G18, just too weak).
    assertEquals(21, contrast(0x000000, 0xFFFFFF), 1e-9);
    assertEquals(4.48, contrast(0x777777, 0xFFFFFF), 0.005);
  }

  @ParameterizedTest
  @EnumSource(StyleRole.class)
  void lettersStandOutFromTheirFill(StyleRole role) {
    Palette.Look look = PALETTE.look(role);
    int body = PALETTE.look(StyleRole.PLAIN).ink();
    int subtle = PALETTE.look(StyleRole.SUBTLE).ink();
    for (int ink : List.of(look.ink(), body, subtle)) {
      double contrast = contrast(look.fill(), ink);
      assertTrue(contrast >= 4.5, "%s, %06x has only %f".formatted(role, ink, contrast));
    }
    assertTrue(contrast(PALETTE.paper(), look.ink()) >= 4.5, role + " on paper");
  }

  @ParameterizedTest
  @EnumSource(StyleRole.class)
  void fillsArePaleEnoughForAMonochromePrinter(StyleRole role) {
    assertTrue(luminance(PALETTE.look(role).fill()) > 0.7, role.toString());
  }

  @Test
  void chartLinesStandOutFromPaper() {
    for (int line = 0; line < 6; line++) {
      double contrast = contrast(PALETTE.stroke(line).colour(), PALETTE.paper());
      assertTrue(contrast >= 4.5, line + " has only " + contrast);
    }
  }

  /** Whoever restyles the moves sees it in the charts, in the order of the strokes. */
  @Test
  void chartLinesFollowRolesOfAnotherLook() {
    Palette.Look look = new Palette.Look(0xFFFFFF, 0x102030, false);
    Palette other = new Palette(Map.of(StyleRole.MOVE_IN, look));
    for (int line = 0; line < 6; line++) {
      int expected = line == 2 ? 0x102030 : PALETTE.stroke(line).colour();
      assertEquals(expected, other.stroke(line).colour());
      assertEquals(PALETTE.stroke(line).dash(), other.stroke(line).dash());
    }
  }

  @Test
  void chartLinesAreToldApartWithoutColour() {
    assertEquals(
        6, IntStream.range(0, 6).mapToObj(n -> PALETTE.stroke(n).dash()).distinct().count());
  }

  @Test
  void otherLooksStandInForTheStandardOnes() {
    Palette.Look look = new Palette.Look(0xFFFFFF, 0x000000, true);
    Palette other = new Palette(Map.of(StyleRole.TASK, look));
    assertEquals(look, other.look(StyleRole.TASK));
    assertEquals(PALETTE.look(StyleRole.RETURN), other.look(StyleRole.RETURN));
    assertNotEquals(look, PALETTE.look(StyleRole.TASK));
  }
}
