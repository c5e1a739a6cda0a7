package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.thermal.Simulator;
import org.hibernacle.thermal.ThermalClass;

/**
 * One winter that has been, in which any plant can be lived along any stays: for looking back. Uses
 * the very simulation that plans are made with. Safe for several threads.
 */
public final class OneWinter {
  private static final Set<Rule> FROST = Set.of(Rule.ROOT_BALL, Rule.SHOOTS);

  private final Inventory inventory;
  private final WintersOnFile winters;

  /**
   * Works out the air of every place.
   *
   * @param inventory places and settings
   * @param winter that has been
   * @param loggers readings in places, by name of the place
   */
  public OneWinter(Inventory inventory, Winter winter, Map<String, HourlyAir> loggers) {
    this.inventory = inventory;
    winters =
        new WintersOnFile(
            winter.season(),
            List.of(winter),
            inventory.places(),
            inventory.settings().latitudeDeg(),
            loggers);
  }

  /**
   * Nights in spring on which a pot that is home is carried back as frost asks for it.
   *
   * @param refuge where it spends such nights
   * @param from first day
   * @param to last day on whose evening it is carried
   */
  public record NightsBack(Place refuge, LocalDate from, LocalDate to) {}

  /** The winter. */
  public Winter winter() {
    return winters.winter(0);
  }

  /** Places and what their air was. */
  public Simulator simulator() {
    return winters.simulator(0);
  }

  /** First night that is judged. */
  public int firstJudged() {
    return Rules.firstJudged(winter());
  }

  /** Night after the last that is judged. */
  public int endJudged() {
    return Rules.endJudged(winter());
  }

  /** The plant standing in one place all the time. */
  public Life standing(Plant plant, Place place) {
    int[] path = new int[winter().nights()];
    Arrays.fill(path, winters.places().indexOf(place));
    return live(plant, path);
  }

  /**
   * The plant along stays that cover the season.
   *
   * @param back nights in spring on which it is carried back
   */
  public Life live(Plant plant, List<Stay> stays, Optional<NightsBack> back) {
    int[] path = new int[winter().nights()];
    for (int night = 0; night < path.length; night++) {
      path[night] = placeOn(stays, winter().first().plusDays(night));
    }
    return back.isEmpty() ? live(plant, path) : withNightsBack(plant, path, back.get());
  }

  private int placeOn(List<Stay> stays, LocalDate day) {
    for (Stay stay : stays) {
      if (!day.isBefore(stay.fromInclusive()) && day.isBefore(stay.toExclusive())) {
        return winters.places().indexOf(stay.place());
      }
    }
    throw new IllegalArgumentException("no stay on " + day);
  }

  /** A night away changes what the next ones meet, so that frosts are looked for again. */
  private Life withNightsBack(Plant plant, int[] path, NightsBack back) {
    int refuge = winters.places().indexOf(back.refuge());
    int from = winter().index(back.from());
    int to = Math.min(winter().index(back.to()), path.length - 1);
    TreeSet<Integer> nights = new TreeSet<>();
    Life life = live(plant, path);
    boolean more = true;
    while (more) {
      Life now = life;
      more =
          nights.addAll(
              now.marginsBroken().stream()
                  .filter(b -> FROST.contains(b.violation().rule()))
                  .map(Life.OnNight::night)
                  .filter(n -> n >= from && n <= to && now.placeByNight()[n] != refuge)
                  .toList());
      if (more) {
        int[] carried = path.clone();
        nights.forEach(n -> carried[n] = refuge);
        life = live(plant, carried);
      }
    }
    return life;
  }

  private Life live(Plant plant, int[] path) {
    double safetyMarginK = inventory.settings().safetyMarginK();
    double[] edgeC = new double[24 * winter().days()];
    ThermalClass pot = ThermalClass.of(plant.container());
    Trial trial = new Trial(plant, winters, 0);
    Lived lived = trial.judge(0, path, simulator().simulate(pot, path, edgeC));
    List<Lived.Broken> margins = new Rules(plant, winters, safetyMarginK).judge(lived);
    double[] airC = new double[24 * winter().days()];
    double[] weekMeanC = new double[path.length];
    for (int n = 0; n < path.length; n++) {
      System.arraycopy(simulator().climate(path[n]).airC(), 24 * n + 12, airC, 24 * n + 12, 24);
      weekMeanC[n] = winters.nights(0, path[n]).weekMeanC()[n];
    }
    return new Life(
        path,
        lived.trace(),
        lived.state(),
        edgeC,
        airC,
        weekMeanC,
        Dryness.byNight(plant, winters, lived),
        onNights(lived.violations()),
        onNights(margins));
  }

  private static List<Life.OnNight> onNights(List<Lived.Broken> broken) {
    return broken.stream().map(b -> new Life.OnNight(b.night(), b.violation())).toList();
  }
}
