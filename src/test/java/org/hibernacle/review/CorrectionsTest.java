package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.SomePlace;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.thermal.ModelError;
import org.junit.jupiter.api.Test;

class CorrectionsTest {
  private static final LocalDate DAY = LocalDate.of(2015, 1, 8);

  private static List<Correction> places(Place place, int hours, double meanK) {
    ModelError error = new ModelError(1, hours, meanK, Math.abs(meanK), meanK, DAY);
    return Corrections.places(List.of(new PlaceReview(place, -5, DAY, 3, 0, Optional.of(error))));
  }

  /** The model was 1.2 K too warm, so the place warms by that much less. */
  @Test
  void aPlaceIsMovedByWhatItsLoggerSays() {
    Place shed = SomePlace.of(PlaceKind.COLD_STORE).warmerBy(2).place();
    assertEquals(
        List.of(new Correction.PlaceWarmth(shed.name(), 2, 0.8, 1.2, 2000)),
        places(shed, 2000, 1.2));
    assertEquals(
        List.of(new Correction.PlaceWarmth(shed.name(), 2, 5, -7, 2000)), places(shed, 2000, -7));
  }

  @Test
  void aPlaceStaysWhereTheLoggerIsShortOrTheModelClose() {
    Place shed = SomePlace.of(PlaceKind.COLD_STORE).place();
    assertEquals(List.of(), places(shed, 671, 1.2));
    assertEquals(1, places(shed, 672, 1.2).size());
    assertEquals(List.of(), places(shed, 2000, 0.49));
    assertEquals(1, places(shed, 2000, -0.5).size());
  }

  @Test
  void aThermostatOrTheSunIsNotMendedByNightWarmth() {
    assertEquals(
        List.of(), places(SomePlace.of(PlaceKind.COLD_STORE).lowestHeld(3).place(), 2000, 2));
    assertEquals(List.of(), places(SomePlace.of(PlaceKind.GLASSHOUSE).place(), 2000, 2));
  }
}
