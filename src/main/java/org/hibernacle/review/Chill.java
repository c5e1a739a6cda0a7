package org.hibernacle.review;

import java.time.LocalDate;

/**
 * The worst week of a plant that does not harden.
 *
 * @param day last of the week
 * @param place where it stood then
 * @param doseK kelvin times nights below the lowest storage temperature, of {@link
 *     org.hibernacle.physiology.ChillingInjury}
 * @param lowestC lowest air of that week, °C
 * @param lowestStoreC what the species is stored at, at least, °C
 */
public record Chill(
    LocalDate day, String place, double doseK, double lowestC, double lowestStoreC) {}
