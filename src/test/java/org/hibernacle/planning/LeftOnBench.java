package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.SomePlace;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.TemperatureSeries;

/**
 * Plants that stand on an open bench through every winter of a file, as the planner itself lives
 * them there.
 */
public final class LeftOnBench {
  private final WintersOnFile winters;

  /**
   * One night.
   *
   * @param day on which it begins
   * @param airMinC lowest air, °C
   * @param ballMinC lowest temperature of the root ball's edge, °C
   * @param rootLimitC what the roots can take that night, °C
   * @param shootLimitC what the shoots can take, °C
   */
  public record Night(
      LocalDate day, double airMinC, double ballMinC, double rootLimitC, double shootLimitC) {}

  /**
   * The bench of a site.
   *
   * @param file with at least one winter that counts
   * @param latitudeDeg of the site
   * @param siteColderByK than the station on clear nights, K
   */
  public LeftOnBench(TemperatureSeries file, double latitudeDeg, double siteColderByK) {
    WinterSelection selection = WinterSelection.of(file, latitudeDeg < 0);
    HourlyAir air = new HourlyAir(selection.series(), latitudeDeg);
    List<Winter> lived = new ArrayList<>();
    for (UsableWinter winter : selection.winters()) {
      lived.add(Winter.of(winter.season(), air, siteColderByK));
    }
    List<Place> places = List.of(SomePlace.of(PlaceKind.BENCH).open().place());
    winters =
        new WintersOnFile(lived.get(lived.size() - 1).season().next(), lived, places, latitudeDeg);
  }

  /** The nights of each winter, oldest winter first. */
  public List<List<Night>> nights(Plant plant) {
    Trial trial = new Trial(plant, winters, 0);
    return IntStream.range(0, winters.count())
        .mapToObj(w -> nights(winters.winter(w), trial.atHome(w, 0)))
        .toList();
  }

  private static List<Night> nights(Winter winter, Lived lived) {
    return IntStream.range(0, lived.path().length)
        .mapToObj(
            n ->
                new Night(
                    winter.first().plusDays(n),
                    lived.trace().airMinC()[n],
                    lived.trace().ballMinC()[n],
                    lived.state().rootLimitC()[n],
                    lived.state().shootLimitC()[n]))
        .toList();
  }
}
