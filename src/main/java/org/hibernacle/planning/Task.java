package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Work beside the moves.
 *
 * @param kind what to do
 * @param from first day
 * @param to last day, inclusive; equal to {@code from} for a single day
 * @param place name of the place; empty where it is about plants anywhere
 * @param plantIds which plants; empty for all of the place
 * @param amount in the unit of the kind, where there is one
 */
public record Task(
    Kind kind,
    LocalDate from,
    LocalDate to,
    String place,
    List<String> plantIds,
    OptionalDouble amount) {

  /** What to do. */
  public enum Kind {
    /** Take fallen leaves and moss off, look for pests, before the first move. */
    CLEAN_UP,
    /** Put mulch on; amount in litres. */
    MULCH_ON,
    MULCH_OFF,
    FLEECE_ON,
    FLEECE_OFF,
    /** Pots on open ground are set close together; not counted on in the computation. */
    HUDDLE,
    /** Pots are wrapped where they stand; amount in litres of mulch, if it is mulch. */
    WRAP,
    /** The wraps come off. */
    UNWRAP,
    RODENT_GUARD,
    /** Look every week whether stored balls are barely moist. */
    WATER_STORE,
    /** The store usually passes 5 °C in this time: vent it, early in the day. */
    VENT_STORE,
    /**
     * Balls have stood frozen for weeks, by {@code Drying}: thaw and water; amount in days frozen.
     */
    THAW_OUT,
    /** Rest is complete: warmth wakes what stands in store; amount in °C to be warned at. */
    WAKING_ALARM,
    /** What comes in from outdoors stands apart for a fortnight and is looked at for pests. */
    QUARANTINE,
    /** Look for pests on plants in leaf under a roof. */
    PEST_LOOK,
    /** Keep the ball barely moist to dry while cold. */
    KEEP_DRY,
    /** Buds have broken: have fleece ready for frost; amount in winters out of those on file. */
    FLEECE_READY,
    /** Plants that are lost if the heat fails in the coldest night; amount in °C after a night. */
    POWER_FAILURE,
    /** Small pots go back for frosty nights in spring; amount in nights of the worst winter. */
    IN_AND_OUT,
    /** Two people or a trolley, one task a day; amount in kg of the heaviest pot. */
    TWO_PERSON_LIFT
  }

  public Task {
    plantIds = List.copyOf(plantIds);
  }
}
