package org.hibernacle.planning;

/**
 * What a path costs, as one number that compares field by field, most important first: broken
 * rules, moves, nights away from home before midwinter, nights under a roof, nights away after
 * midwinter, degree-days outside the species' storage range. Each field has room for a whole
 * season, so that sums never carry into the next field.
 */
final class Cost {
  /** Most ticks that one night of broken rules can cost. */
  static final int MOST_BROKEN_PER_NIGHT = 5000;

  private static final int STORAGE_BITS = 12;
  private static final int SPRING_BITS = 8;
  private static final int ROOF_BITS = 9;
  private static final int AUTUMN_BITS = 8;
  private static final int MOVE_BITS = 5;

  static final long STORAGE_DEGREE_DAY = 1;
  static final long SPRING_NIGHT_AWAY = STORAGE_DEGREE_DAY << STORAGE_BITS;
  static final long ROOF_NIGHT = SPRING_NIGHT_AWAY << SPRING_BITS;
  static final long AUTUMN_NIGHT_AWAY = ROOF_NIGHT << ROOF_BITS;
  static final long MOVE = AUTUMN_NIGHT_AWAY << AUTUMN_BITS;

  /** A tenth of a kelvin missed for one night, times the rule's weight. */
  static final long BROKEN_TICK = MOVE << MOVE_BITS;

  private Cost() {}

  /** Unpacks what a path costs where no rule is broken. */
  static Explanation.Ease ease(long comfort) {
    return new Explanation.Ease(
        (int) (comfort / MOVE),
        (int) (comfort % MOVE / AUTUMN_NIGHT_AWAY),
        (int) (comfort % AUTUMN_NIGHT_AWAY / ROOF_NIGHT),
        (int) (comfort % ROOF_NIGHT / SPRING_NIGHT_AWAY),
        (int) (comfort % SPRING_NIGHT_AWAY));
  }

  /** Ticks for a rule broken by that much. */
  static int ticks(Violation violation) {
    return ticks(violation.rule(), violation.deficitK());
  }

  /** Ticks for the limit itself; none where only the safety margin was missed. */
  static int ticksOfLimit(Violation violation) {
    return ticks(violation.rule(), violation.belowLimitK());
  }

  private static int ticks(Rule rule, double missedK) {
    int weight = rule == Rule.TOO_WARM_AT_REST ? 3 : 1;
    return Math.min(MOST_BROKEN_PER_NIGHT, weight * (int) Math.ceil(missedK * 10 - 1e-6));
  }
}
