package org.hibernacle.model;

/** The grower's groups: plants of one group winter in much the same way. */
public enum Group {
  HARDY_CONIFER,
  HARDY_DECIDUOUS,
  HARDY_EVERGREEN,
  /** Hardy tops on roots that are not: trident maple, azalea, camellia. */
  TENDER_ROOTED_HARDY,
  MEDITERRANEAN,
  SUBTROPICAL,
  TROPICAL;

  /** Whether the plant needs a cold rest and must not be kept warm during it. */
  public boolean restsCold() {
    return switch (this) {
      case HARDY_CONIFER, HARDY_DECIDUOUS, HARDY_EVERGREEN, TENDER_ROOTED_HARDY -> true;
      case MEDITERRANEAN, SUBTROPICAL, TROPICAL -> false;
    };
  }

  /** Whether cold makes the plant hardier. Subtropical and tropical plants do not harden. */
  public boolean hardens() {
    return this != SUBTROPICAL && this != TROPICAL;
  }
}
