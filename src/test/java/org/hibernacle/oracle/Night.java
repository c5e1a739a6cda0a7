package org.hibernacle.oracle;

import java.time.LocalDate;
import org.hibernacle.model.Place;

/**
 * What a plant met from noon to noon, and what it stood at the first of them.
 *
 * @param day in the winter on which the night begins
 * @param place where it stood
 * @param lowestAirC lowest air, °C
 * @param meanAirC mean air, °C
 * @param weekMeanC mean of that place's air over the seven nights up to this one, °C
 * @param lowestEdgeC lowest temperature along the wall of the pot, °C
 * @param iceShare most ice in the edge's water, 0..1
 * @param coreIceShare least ice in the core's water, 0..1
 * @param rootLimitC today's root limit, °C
 * @param shootLimitC today's shoot limit, °C
 * @param dormant whether growth has ended and buds are shut
 * @param atRest whether rest is not complete
 * @param inLeaf whether it carries leaves
 * @param budsOpen whether buds had broken before
 * @param budBreak whether buds broke in this night
 */
public record Night(
    LocalDate day,
    Place place,
    double lowestAirC,
    double meanAirC,
    double weekMeanC,
    double lowestEdgeC,
    double iceShare,
    double coreIceShare,
    double rootLimitC,
    double shootLimitC,
    boolean dormant,
    boolean atRest,
    boolean inLeaf,
    boolean budsOpen,
    boolean budBreak) {}
