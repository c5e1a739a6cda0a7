package org.hibernacle.planning;

/** What a plan may not do to a plant. Each rule has a sentence in the reports' words. */
public enum Rule {
  /** The root ball keeps the safety margin above today's root limit. */
  ROOT_BALL,
  /** The air keeps the safety margin above today's shoot limit. */
  SHOOTS,
  /** What comes out of the warm is not met by nights close to its limits at once. */
  OUT_OF_THE_WARM,
  /** A plant that does not harden is spared a harmful dose of nights below its storage range. */
  CHILLING,
  /** Fresh growth made under a roof is not brought out into frost. */
  WOKEN_GROWTH,
  /** No bud breaks in a place without enough light. */
  WAKES_IN_THE_DARK,
  /** No roof for a hardy plant at rest where a week would average above 5 °C. */
  TOO_WARM_AT_REST,
  /** No dark place for a plant in leaf. */
  TOO_DARK,
  /** Freshly cut roots, and a pot that frost cracks, do not freeze. */
  BALL_FROZEN;

  /** Whether the safety margin of the settings is kept above the rule's limit. */
  public boolean keepsMargin() {
    return this == ROOT_BALL || this == SHOOTS;
  }

  /** Whether a colder night breaks it. */
  public boolean isCold() {
    return asksForMore() || this == CHILLING || this == WOKEN_GROWTH || this == BALL_FROZEN;
  }

  /** Whether the rule asks for more than that a limit is not passed. */
  public boolean asksForMore() {
    return keepsMargin() || this == OUT_OF_THE_WARM;
  }

  /** What is kept above limits in the first week out of the warm, K; common practice, no source. */
  public static final double OUT_OF_THE_WARM_K = 4;

  /** With a root limit at or below this, a ball on its 0 °C plateau is safe, °C; own choice. */
  public static final double PLATEAU_SUFFICES_C = -0.5;
}
