package org.hibernacle.model;

import java.time.LocalDate;

/**
 * A move as an earlier plan had it.
 *
 * @param plantId of the plant
 * @param kind name of its constant, such as {@code MOVE_IN}; what was found where it is unknown
 * @param date on which it was to be carried
 * @param to name of the place it was to be carried to
 */
public record MovePlanned(String plantId, String kind, LocalDate date, String to) {}
