package org.hibernacle.review;

/** What may have harmed a plant. docs/review.md tells how each is scored. */
public enum Cause {
  /** The root ball fell below what roots stood, as hard as they were to become. */
  FROZEN_ROOTS,
  /**
   * The root ball or the air fell below a limit that hardening had yet to lower, or that had come
   * up again with spring; the hardened plant would have stood it.
   */
  CAUGHT_UNHARDENED,
  /** The air fell below what hardened shoots stand. */
  FROZEN_SHOOTS,
  /** Buds had broken, and frost came on the new growth. */
  FROST_ON_WOKEN_GROWTH,
  /** The root ball stayed frozen through for weeks while the top lost water. */
  DRIED_WHILE_FROZEN,
  /** The store was too warm for its rest, or it woke in the dark. */
  WOKE_IN_STORE,
  /** A plant that does not harden had too many nights too cold for it, frost or none. */
  CHILLED,
  /** Roots that had just been cut froze. */
  CUT_ROOTS_FROZEN,
  /** Nothing that temperature did was hard enough. */
  NOT_TEMPERATURE
}
