package org.hibernacle.review;

import java.util.Optional;
import org.hibernacle.planning.Move;

/**
 * How the real days of one kind of move lie beside the planned ones.
 *
 * @param kind in the keeper's words
 * @param planned how many were planned
 * @param told how many of these have a real day in the log
 * @param skipped planned, and told not to have happened
 * @param unplanned happened without a plan
 * @param meanDaysLate over those told; below zero is early; 0 where none is told
 * @param mostDaysLate of those told
 * @param latestId plant that was latest; empty if none is told
 */
public record Punctuality(
    Move.Kind kind,
    int planned,
    int told,
    int skipped,
    int unplanned,
    double meanDaysLate,
    int mostDaysLate,
    Optional<String> latestId) {}
