package org.hibernacle.planning;

/** Finds the plan. */
public final class SeasonPlanner {
  private SeasonPlanner() {}
}
