package org.hibernacle.report;

/** What a piece of the report is, so that both writers dress it alike. */
public enum StyleRole {
  PLAIN,
  TITLE,
  HEADING,
  SUBTLE,
  /** Home to sheltered ground. */
  MOVE_DOWN,
  MOVE_IN,
  STEP_OUT,
  RETURN,
  /** On the bench all winter. */
  STAYS,
  TASK,
  /** A plant that can not be protected; an error. */
  DANGER,
  CAUTION,
  /** Waits for the keeper to fill it in. */
  ENTRY
}
