package org.hibernacle.model;

import java.time.LocalDate;

/**
 * A move that the keeper wrote into the log.
 *
 * @param plantId of the plant
 * @param date on which it was carried
 * @param place name of the place it was carried to, one of the inventory
 */
public record MoveMade(String plantId, LocalDate date, String place) {}
