package org.hibernacle.model;

import java.time.LocalDate;

/**
 * A winter that a plan was made for.
 *
 * @param season which
 * @param coldestNightC lowest minimum at the station, °C
 * @param coldestNight its date
 */
public record KnownWinter(Season season, double coldestNightC, LocalDate coldestNight) {}
