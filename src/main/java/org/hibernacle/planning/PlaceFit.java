package org.hibernacle.planning;

import org.hibernacle.model.Foliage;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Species;

/** Whether a place can be thought of for a plant at all, before any winter is looked at. */
public enum PlaceFit {
  /** It can; the winters decide. */
  SUITS,
  /** The keeper wants the plant elsewhere. */
  NOT_WISHED,
  /** Wrapping is for pots that are not carried, in their own place. */
  CARRIED,
  /** A bench that is not its own. */
  ANOTHER_BENCH,
  /** The plant is higher than the place. */
  TOO_LOW,
  /** A living room wakes what rests in the cold. */
  TOO_WARM,
  /** Less light than it wants while it is put away. */
  TOO_DARK;

  /** How the place fits the plant. Its home always suits. */
  static PlaceFit of(Plant plant, Place place) {
    if (place.name().equals(plant.home())) {
      return SUITS;
    }
    if (place.wrapOf().isPresent()) {
      boolean own = place.wrapOf().get().equals(plant.home());
      return own && Covers.isWrapped(plant) ? SUITS : CARRIED;
    }
    if (plant.stayIn().isPresent()) {
      return place.name().equals(plant.stayIn().get()) ? SUITS : NOT_WISHED;
    }
    if (place.kind() == PlaceKind.BENCH) {
      return ANOTHER_BENCH;
    }
    return place.roofed() ? underRoof(plant, place) : SUITS;
  }

  private static PlaceFit underRoof(Plant plant, Place place) {
    boolean tooLow =
        place.clearHeightCm().isPresent()
            && plant.heightCm().isPresent()
            && plant.heightCm().getAsDouble() > place.clearHeightCm().getAsDouble();
    if (tooLow) {
      return TOO_LOW;
    }
    if (plant.species().group().restsCold() && place.kind() == PlaceKind.WARM_ROOM) {
      return TOO_WARM;
    }
    return place.light().compareTo(lightWanted(plant.species())) < 0 ? TOO_DARK : SUITS;
  }

  private static Light lightWanted(Species species) {
    Light wanted = species.lightInStore();
    return species.foliage() != Foliage.DECIDUOUS && wanted == Light.DARK ? Light.LOW : wanted;
  }
}
