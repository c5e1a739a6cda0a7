package org.hibernacle.planning;

import static org.hibernacle.SomeWinter.SEASON;
import static org.hibernacle.SomeWinter.steady;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Season;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/** Mulch goes on when the ball has cooled, not by the calendar: common practice, no source. */
class CoversTest {
  private static final Season PLANNED = new Season(2026, false);

  /** Ten degrees, and from that day on a degree below zero. */
  private static Winter coldFrom(LocalDate day) {
    return SomeWinter.wholeYear(d -> steady(d.isBefore(day) ? 10 : -1));
  }

  private static LocalDate mulchedOn(Winter... winters) {
    Inventory garden = CityGarden.inventory(City.NEW_YORK);
    return Covers.laid(garden, List.of(winters), PLANNED)
        .place("Mulched bed")
        .coverFrom()
        .orElseThrow();
  }

  /** A wet ball of 5 L falls by 10 K in a day or two. */
  @Test
  void mulchGoesOnADayOrTwoAfterTheCold() {
    LocalDate on = mulchedOn(coldFrom(LocalDate.of(2020, 11, 20)));
    assertTrue(
        on.isAfter(LocalDate.of(2026, 11, 19)) && on.isBefore(LocalDate.of(2026, 11, 23)),
        on.toString());
  }

  @Test
  void theEarliestWinterSetsTheDay() {
    Winter early = coldFrom(LocalDate.of(2020, 11, 5));
    Winter late = coldFrom(LocalDate.of(2020, 12, 24));
    assertEquals(mulchedOn(early), mulchedOn(late, early));
    assertTrue(mulchedOn(early).isBefore(mulchedOn(late)));
  }

  @Test
  void whereTheBallNeverCoolsMidwinterDoes() {
    assertEquals(LocalDate.of(2027, 1, 15), mulchedOn(SomeWinter.wholeYear(day -> steady(8))));
  }

  /** Cold in high summer is no winter. */
  @Test
  void nothingIsMulchedBeforeTheCoreMonths() {
    Winter odd =
        SomeWinter.wholeYear(d -> steady(d.getMonthValue() == 8 ? 0 : d.getYear() == 2020 ? 9 : 1));
    assertTrue(mulchedOn(odd).isAfter(SEASON.sameDay(LocalDate.of(2026, 10, 1)).plusYears(6)));
  }

  @Test
  void onlyMulchOnTheGroundFollowsTheBall() {
    Inventory garden = CityGarden.inventory(City.NEW_YORK);
    Inventory laid = Covers.laid(garden, List.of(coldFrom(LocalDate.of(2020, 11, 20))), PLANNED);
    for (Place place : laid.places()) {
      assertEquals(place.cover() == Place.Cover.MULCH, place.coverFrom().isPresent());
    }
    assertEquals(garden.places().size(), laid.places().size(), "nothing to wrap");
  }

  @Test
  void homesOfWhatIsNotCarriedHaveAWrappedDouble() {
    Inventory laid =
        Covers.laid(
            CityGarden.yardInventory(City.NEW_YORK),
            List.of(coldFrom(LocalDate.of(2020, 11, 20))),
            PLANNED);
    List<Place> wraps = new ArrayList<>(laid.places());
    wraps.removeIf(place -> place.wrapOf().isEmpty());
    assertEquals(
        List.of(Optional.of("Bench"), Optional.of("Yard")),
        wraps.stream().map(Place::wrapOf).sorted((a, b) -> a.get().compareTo(b.get())).toList());
    for (Place wrap : wraps) {
      boolean bench = wrap.kind() == PlaceKind.BENCH;
      assertEquals(bench ? Place.Cover.FLEECE : Place.Cover.MULCH, wrap.cover());
    }
  }
}
