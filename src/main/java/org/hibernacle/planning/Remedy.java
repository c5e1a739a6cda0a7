package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;

/**
 * One change to the garden or to the keeper's habits that helps plants which are lost, or which
 * take a worse place or date than would suit them. It was found out by planning again with it.
 *
 * @param change what is changed
 * @param amount how far: seasons of ten for a risk, pots or minutes a day, cm of mulch, m2 of room
 *     more than there is; 1 for a day
 * @param place that is changed, as it is then, or that is new
 * @param day on which pots are carried that day only
 * @param protects plants that are lost without it and safe with it, by Id
 * @param eases plants that are safe without it and with it get what would suit them best, by Id
 */
public record Remedy(
    Change change,
    double amount,
    Optional<Place> place,
    Optional<LocalDate> day,
    List<Plant> protects,
    List<Plant> eases) {

  /** What is changed, cheapest first: what is free, then work, then material. */
  public enum Change {
    ACCEPT_RISK,
    EXTRA_MOVING_DAY,
    MORE_POTS_A_DAY,
    MORE_MINUTES_A_DAY,
    MULCH,
    /** Of a place that is there. */
    MORE_ROOM,
    NEW_PLACE
  }

  /** By kind of effort; room by the kind of place; then by how much; then who is helped most. */
  static final Comparator<Remedy> CHEAPEST_FIRST =
      Comparator.comparing(Remedy::effort)
          .thenComparing(Remedy::kindOfRoom)
          .thenComparingDouble(Remedy::material)
          .thenComparing(r -> -r.protects().size())
          .thenComparing(r -> -r.eases().size())
          .thenComparing(r -> r.place().map(Place::name).orElse(""))
          .thenComparing(r -> r.day().map(LocalDate::toString).orElse(""));

  public Remedy {
    protects = List.copyOf(protects);
    eases = List.copyOf(eases);
  }

  static Remedy of(Change change, double amount) {
    return new Remedy(change, amount, Optional.empty(), Optional.empty(), List.of(), List.of());
  }

  static Remedy onDay(LocalDate day) {
    return new Remedy(
        Change.EXTRA_MOVING_DAY, 1, Optional.empty(), Optional.of(day), List.of(), List.of());
  }

  static Remedy at(Change change, double amount, Place place) {
    return new Remedy(change, amount, Optional.of(place), Optional.empty(), List.of(), List.of());
  }

  Remedy helping(List<Plant> newlyProtected, List<Plant> newlyEased) {
    return new Remedy(change, amount, place, day, newlyProtected, newlyEased);
  }

  /** Whom it helps. */
  public List<Plant> helps() {
    List<Plant> all = new ArrayList<>(protects);
    all.addAll(eases);
    return all;
  }

  private Change effort() {
    return change == Change.NEW_PLACE ? Change.MORE_ROOM : change;
  }

  private NewPlace kindOfRoom() {
    return place
        .filter(p -> effort() == Change.MORE_ROOM)
        .flatMap(NewPlace::of)
        .orElse(NewPlace.SHELTERED_GROUND);
  }

  /** Depth of mulch counts for the floor it covers, if that is known. */
  private double material() {
    return change == Change.MULCH ? amount * place.orElseThrow().floorM2().orElse(1) : amount;
  }

  /** The inventory with the change made, as the keeper would write it down. */
  public Inventory applyTo(Inventory inventory) {
    Settings settings = inventory.settings();
    OptionalInt whole = OptionalInt.of((int) amount);
    return switch (change) {
      case ACCEPT_RISK -> with(inventory, settings.withAcceptedRisk((int) amount));
      case EXTRA_MOVING_DAY -> with(inventory, settings.withExtraMovingDay(day.orElseThrow()));
      case MORE_POTS_A_DAY ->
          with(inventory, settings.withHands(whole, settings.minutesPerMovingDay()));
      case MORE_MINUTES_A_DAY ->
          with(inventory, settings.withHands(settings.plantsPerMovingDay(), whole));
      case MULCH, MORE_ROOM -> {
        Place changed = place.orElseThrow();
        yield withPlaces(inventory, p -> p.name().equals(changed.name()) ? changed : p);
      }
      case NEW_PLACE -> {
        List<Place> places = new ArrayList<>(inventory.places());
        places.add(place.orElseThrow());
        yield new Inventory(inventory.plants(), places, settings, inventory.sheets());
      }
    };
  }

  private static Inventory with(Inventory inventory, Settings settings) {
    return new Inventory(inventory.plants(), inventory.places(), settings, inventory.sheets());
  }

  private static Inventory withPlaces(Inventory inventory, UnaryOperator<Place> change) {
    return new Inventory(
        inventory.plants(),
        inventory.places().stream().map(change).toList(),
        inventory.settings(),
        inventory.sheets());
  }
}
