package org.hibernacle.planning.proof;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;

/**
 * A garden and its winters, drawn by chance; realistic in each part, awkward in the whole.
 *
 * @param seed that draws it again
 * @param inventory one to six plants, two to six places
 * @param file two to four whole winters
 */
public record SomeGarden(long seed, Inventory inventory, TemperatureSeries file) {
  private static final int FIRST_YEAR = 2010;

  /** The garden of a seed. */
  public static SomeGarden of(long seed) {
    Draw draw = new Draw(seed);
    double latitudeDeg = draw.between(32.0, 60.0) * (draw.chance(0.35) ? -1 : 1);
    boolean southern = latitudeDeg < 0;
    int winters = draw.between(2, 4);
    Season first = new Season(FIRST_YEAR + draw.between(0, 3), southern);
    Season planned = new Season(first.year() + winters, southern);
    List<Place> places = new SomePlaces(draw).places();
    List<Plant> plants = new SomePlants(draw, places, planned).plants(draw.between(1, 6));
    Settings settings = settings(draw, latitudeDeg, planned);
    TemperatureSeries file = new SomeWeather(draw).winters(first, winters);
    return new SomeGarden(seed, new Inventory(plants, places, settings, List.of()), file);
  }

  private static Settings settings(Draw draw, double latitudeDeg, Season planned) {
    boolean american = draw.chance(0.4);
    return new Settings(
        "Garden of chance",
        draw.chance(0.5) ? 1.5 : draw.between(0.0, 3.0),
        latitudeDeg,
        0,
        ZoneOffset.UTC,
        american ? Settings.Units.US : Settings.Units.METRIC,
        draw.chance(0.6) ? 2 : draw.between(0.0, 4.0),
        draw.between(0, 3),
        movingDays(draw),
        away(draw, planned),
        draw.chance(0.3) ? OptionalInt.of(draw.between(1, 3)) : OptionalInt.empty(),
        draw.chance(0.2) ? OptionalInt.of(draw.between(5, 40)) : OptionalInt.empty(),
        american ? Settings.Paper.LETTER : Settings.Paper.A4,
        american ? DayOfWeek.SUNDAY : DayOfWeek.MONDAY,
        american ? Locale.US : Locale.UK);
  }

  private static Set<DayOfWeek> movingDays(Draw draw) {
    Set<DayOfWeek> days = EnumSet.of(draw.oneOf(DayOfWeek.values()));
    int more = draw.oneOf(0, 1, 6);
    for (int i = 0; i < more; i++) {
      days.add(draw.oneOf(DayOfWeek.values()));
    }
    return days;
  }

  /** Up to two journeys, in autumn, over midwinter or in spring. */
  private static List<DateSpan> away(Draw draw, Season planned) {
    List<DateSpan> spans = new ArrayList<>();
    int count = draw.oneOf(0, 0, 1, 2);
    for (int i = 0; i < count; i++) {
      LocalDate from = planned.start().plusDays(draw.between(80, 310));
      spans.add(new DateSpan(from, from.plusDays(draw.between(3, 24))));
    }
    return spans;
  }
}
