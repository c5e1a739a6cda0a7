package org.hibernacle.review;

import java.time.LocalDate;

/**
 * The run of days with the root ball frozen through that dried the plant most.
 *
 * @param from first day
 * @param days how many
 * @param place where it stood at the end
 * @param dryingIndex of {@link org.hibernacle.physiology.Drying} at the end; 1 asks for water
 * @param longestDays longest run of such days in the season, this one or another
 */
public record FrozenSpell(
    LocalDate from, int days, String place, double dryingIndex, int longestDays) {}
