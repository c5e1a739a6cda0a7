package org.hibernacle.review;

/** What the plan was worth to one plant in the weather that came. */
public enum PlanVerdict {
  /** Along the planned stays every rule is kept, and the safety margin. */
  HELD,
  /** Every rule is kept, but some of the safety margin was needed. */
  MARGIN_USED,
  /** Along the planned stays a limit is crossed or another rule broken: the plan itself failed. */
  FAILED
}
