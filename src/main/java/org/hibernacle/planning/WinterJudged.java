package org.hibernacle.planning;

import org.hibernacle.model.Season;

/**
 * How a plan made from all other winters on file would have fared in this one. Counts are pots.
 *
 * @param winter lived through
 * @param pots of the inventory
 * @param marginBroken pots that broke a rule, the safety margin included
 * @param limitBroken pots that broke a limit itself
 * @param nightsAway nights away from home, summed over pots
 * @param needlessNights nights away before the first, or after the last, on which home would have
 *     broken a rule in this winter, summed over pots
 */
public record WinterJudged(
    Season winter,
    int pots,
    int marginBroken,
    int limitBroken,
    int nightsAway,
    int needlessNights) {}
