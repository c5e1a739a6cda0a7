package org.hibernacle.review;

/** What the plan would have done about harm that happened. */
public enum Prevention {
  /** The plant lived as planned, and was harmed by what the plan let through. */
  LIVED_AS_PLANNED,
  /** Along the planned stays the likely cause would hardly have been there. */
  WOULD_HAVE_PREVENTED,
  /** Along the planned stays the likely cause would have been there all the same. */
  WOULD_NOT_HAVE_PREVENTED,
  /** Temperature explains nothing, so no plan would have. */
  NOT_A_MATTER_OF_PLACE
}
