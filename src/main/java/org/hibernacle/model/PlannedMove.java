package org.hibernacle.model;

import java.time.LocalDate;

/**
 * A move of a plan, as its workbook has it.
 *
 * @param id of the plant
 * @param date on which the pot is carried
 * @param from name of the place where it stood
 * @param to name of the place where it goes
 */
public record PlannedMove(String id, LocalDate date, String from, String to) {}
