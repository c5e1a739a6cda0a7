package org.hibernacle.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The colours of the reports, one look a role, shared by all writers. In the standard looks fills
 * are pale and letters dark: every pair has a contrast of 4.5 : 1 or more (WCAG 2.1, criterion
 * 1.4.3), and no colour stands without its word beside it.
 */
public final class Palette {
  /**
   * Colours of one role.
   *
   * @param fill behind the letters, 0xRRGGBB
   * @param ink of the letters, 0xRRGGBB
   * @param bold whether the letters are bold
   */
  public record Look(int fill, int ink, boolean bold) {}

  /** How a chart line is broken, so that lines are told apart without colour. */
  public enum Dash {
    SOLID,
    DASHED,
    DOTTED,
    DASH_DOT,
    LONG_DASHED,
    LONG_DASH_DOT
  }

  /**
   * A chart line.
   *
   * @param colour 0xRRGGBB
   * @param dash unlike that of the five lines before
   */
  public record Stroke(int colour, Dash dash) {}

  private static final int WHITE = 0xFFFFFF;
  private static final int PALE_GREY = 0xC3C9C6;
  private static final int GREY = 0x7C8883;

  private static final List<Integer> STROKES =
      List.of(0x5A5F5D, 0x9A5B13, 0x2F5F8F, 0x2E7A4B, 0x8A2E5C, 0x5E6B1B);

  /** Roles whose letters have much the same colours as the strokes. */
  private static final List<StyleRole> STROKE_ROLES =
      List.of(
          StyleRole.SUBTLE,
          StyleRole.MOVE_DOWN,
          StyleRole.MOVE_IN,
          StyleRole.RETURN,
          StyleRole.TITLE,
          StyleRole.STEP_OUT);

  private static final Palette STANDARD = new Palette(Map.of());

  private final Map<StyleRole, Look> looks = new EnumMap<>(StyleRole.class);

  /**
   * A palette of other looks.
   *
   * @param other looks; roles left out keep their standard look
   */
  public Palette(Map<StyleRole, Look> other) {
    for (StyleRole role : StyleRole.values()) {
      looks.put(role, standardLook(role));
    }
    looks.putAll(other);
  }

  /** The looks that the program brings along. */
  public static Palette standard() {
    return STANDARD;
  }

  /** Colours of the role. */
  public Look look(StyleRole role) {
    Look look = looks.get(role);
    if (look == null) {
      throw new IllegalArgumentException("no look for " + role);
    }
    return look;
  }

  /** Behind everything that has no fill of its own, 0xRRGGBB. */
  public int paper() {
    return WHITE;
  }

  /** Of thin lines between cells, 0xRRGGBB. */
  public int rule() {
    return PALE_GREY;
  }

  /** Of stronger lines: round days, between groups of rows, at zero degrees; 0xRRGGBB. */
  public int line() {
    return GREY;
  }

  /**
   * The stroke of the n-th chart line, from 0; strokes come round again after six. Each has the
   * colour of the letters of a role where that role has another look than the standard one.
   */
  public Stroke stroke(int line) {
    int n = line % STROKES.size();
    StyleRole role = STROKE_ROLES.get(n);
    boolean own = !look(role).equals(standardLook(role));
    return new Stroke(own ? look(role).ink() : STROKES.get(n), Dash.values()[n]);
  }

  private static Look standardLook(StyleRole role) {
    return switch (role) {
      case PLAIN -> new Look(WHITE, 0x222625, false);
      case TITLE -> new Look(WHITE, 0x27363A, true);
      case HEADING -> new Look(0xDDE4E3, 0x24332F, true);
      case SUBTLE -> new Look(WHITE, 0x5C6663, false);
      case MOVE_DOWN -> new Look(0xF5E6CF, 0x67400F, false);
      case MOVE_IN -> new Look(0xDBE5EF, 0x25466A, false);
      case STEP_OUT -> new Look(0xEAEDCF, 0x4C5114, false);
      case RETURN -> new Look(0xD8ECDC, 0x1E5936, false);
      case STAYS -> new Look(0xEDF1EB, 0x485A4B, false);
      case TASK -> new Look(0xEBEBEA, 0x434644, false);
      case DANGER -> new Look(0xF7DDD8, 0x861812, true);
      case CAUTION -> new Look(0xFAEFCB, 0x684C00, false);
      case ENTRY -> new Look(0xFFFBEC, 0x222625, false);
    };
  }
}
