package org.hibernacle.review;

/** What the plan was worth to one plant in the weather that came. */
public enum PlanVerdict {
  /** Along the planned stays no limit is crossed. */
  HELD,
  /** Along the planned stays a limit is crossed: the plan itself failed. */
  FAILED
}
