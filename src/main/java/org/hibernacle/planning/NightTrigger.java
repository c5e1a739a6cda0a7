package org.hibernacle.planning;

import java.time.LocalDate;
import org.hibernacle.model.Place;

/**
 * From when to when, where, and below which forecast a plant must not be left as it stands.
 *
 * @param fromInclusive first day on whose evening it holds
 * @param toExclusive day after the last
 * @param place where the plant stands
 * @param stationC lowest temperature of the night at the station, °C; colder than that is not known
 *     to be safe
 */
public record NightTrigger(
    LocalDate fromInclusive, LocalDate toExclusive, Place place, double stationC) {}
