package org.hibernacle.model;

import java.util.List;

/**
 * What a filled-in season plan says of its season: what was planned, and what the keeper logged.
 *
 * @param season it was made for
 * @param moves planned, by date
 * @param inAndOut nights in spring, as planned
 * @param winters that it was planned for, oldest first; empty if the workbook lacks them
 * @param entries of the log, one a plant of the inventory, in the inventory's order
 */
public record SeasonLog(
    Season season,
    List<PlannedMove> moves,
    List<InAndOut> inAndOut,
    List<KnownWinter> winters,
    List<LogEntry> entries) {
  public SeasonLog {
    moves = List.copyOf(moves);
    inAndOut = List.copyOf(inAndOut);
    winters = List.copyOf(winters);
    entries = List.copyOf(entries);
  }
}
