package org.hibernacle.thermal;

import java.time.LocalDate;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.Season;

/**
 * What pots stand on: soil under a ground place, a slab under a roof.
 *
 * <p>Soil is a {@link SoilColumn} that starts from {@link PeriodicSoil}. Its deep temperature is
 * the mean of the place's air where nearly a whole year is on file, and then the column lives
 * through that year once before it counts; with less it is a rule of latitude, which the plan's
 * notes say. Cover and snow lie on it in series; under snow the surface is never warmer than 0 °C.
 * A slab is slow ground: it drifts within {@value #SLAB_DAYS} days towards the middle between the
 * store's air and the yearly mean, so a shed floor stays unfrozen through a hard week. The slab
 * rule is our own choice.
 */
public final class PlaceBase {
  static final double SLAB_DAYS = 20;

  /** Depth whose temperature a pot of ordinary size feels through its base, m. */
  static final double FELT_DEPTH_M = 0.10;

  private static final int WHOLE_YEAR_DAYS = 350;

  private PlaceBase() {}

  /** Whether the winter has enough of a year to spin the soil up with its own air. */
  public static boolean hasWholeYear(Winter winter) {
    return winter.days() >= WHOLE_YEAR_DAYS;
  }

  /** Yearly mean of the air, °C: of the file, or by latitude where the file is too short. */
  static double yearMeanC(Winter winter, double latitudeDeg) {
    return hasWholeYear(winter) ? winter.meanC() : 27.5 - 0.38 * Math.abs(latitudeDeg);
  }

  /**
   * Temperature below the pots of a place, °C, one value an hour of the winter.
   *
   * @param place any kind but a bench
   * @param winter outside
   * @param airC air of the place
   * @param latitudeDeg of the site
   */
  static double[] hours(Place place, Winter winter, double[] airC, double latitudeDeg) {
    double yearMeanC = yearMeanC(winter, latitudeDeg);
    return place.roofed()
        ? slab(airC, yearMeanC)
        : soil(place, winter, airC, yearMeanC + place.warmerByK(), hasWholeYear(winter) ? 1 : 0);
  }

  private static double[] slab(double[] airC, double yearMeanC) {
    double[] slabC = new double[airC.length];
    double rate = 1 - Math.exp(-1 / (24 * SLAB_DAYS));
    double state = (airC[0] + yearMeanC) / 2;
    for (int i = 0; i < airC.length; i++) {
      state += ((airC[i] + yearMeanC) / 2 - state) * rate;
      slabC[i] = state;
    }
    return slabC;
  }

  /**
   * Soil of a ground place.
   *
   * @param deepC its temperature far down, °C
   * @param spinUps how often the column lives the winter before it counts
   */
  static double[] soil(Place place, Winter winter, double[] airC, double deepC, int spinUps) {
    double startDay = winter.season().index(winter.first());
    double coldestDay = winter.season().index(winter.season().midwinter()) + 15;
    PeriodicSoil start = new PeriodicSoil(deepC, 10, coldestDay, 0.045);
    SoilColumn column = new SoilColumn(depth -> start.at(depth, startDay));
    double[] soilC = new double[airC.length];
    for (int year = 0; year < spinUps; year++) {
      live(column, place, winter, airC, soilC);
    }
    live(column, place, winter, airC, soilC);
    return soilC;
  }

  private static void live(
      SoilColumn column, Place place, Winter winter, double[] airC, double[] soilC) {
    double bare = 1 / Exchange.surfaceWPerM2K(place);
    double covered = bare + coverM2KPerW(place);
    for (int day = 0; day < winter.days(); day++) {
      boolean wrapsPotsOnly = place.wrapOf().isPresent();
      boolean on =
          !wrapsPotsOnly && coverIsOn(place, winter.season(), winter.first().plusDays(day));
      double snowM = winter.snowCm()[day] / 100;
      double surface = (on ? covered : bare) + Snow.settledM2KPerW(snowM);
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        column.pass(snowM > 0 ? Math.min(0, airC[hour]) : airC[hour], surface, 3600);
        soilC[hour] = column.at(FELT_DEPTH_M);
      }
    }
  }

  static double coverM2KPerW(Place place) {
    if (place.cover() == Cover.MULCH) {
      return place.coverDepthCm() / 100 / Exchange.MULCH_W_PER_MK;
    }
    return place.cover() == Cover.FLEECE ? Exchange.FLEECE_M2K_PER_W : 0;
  }

  /**
   * Whether the cover of a place lies on that day: from its own day, or else from a month after the
   * core months begin, to the middle of the month before they end; 1 November to 15 April in the
   * north. Common practice, no source. Wrapped pots are wrapped as long as they stand there.
   */
  public static boolean coverIsOn(Place place, Season season, LocalDate day) {
    return place.wrapOf().isPresent()
        || (!day.isBefore(coverOn(place, season)) && day.isBefore(coverOff(season)));
  }

  /** First day with the cover. */
  public static LocalDate coverOn(Place place, Season season) {
    return place.coverFrom().map(season::sameDay).orElse(season.coreStart().plusMonths(1));
  }

  /** First day without covers. */
  public static LocalDate coverOff(Season season) {
    return season.coreEndExclusive().minusMonths(1).plusDays(14);
  }
}
