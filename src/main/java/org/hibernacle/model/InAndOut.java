package org.hibernacle.model;

import java.time.LocalDate;

/**
 * A plan's nights in spring on which a pot that is home again is carried back if it is frosty.
 *
 * @param id of the plant
 * @param from first day at home
 * @param to last day on whose evening it may be carried back
 * @param refuge name of the place where it spends such nights
 */
public record InAndOut(String id, LocalDate from, LocalDate to, String refuge) {}
