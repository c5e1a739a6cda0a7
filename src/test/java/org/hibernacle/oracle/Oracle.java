package org.hibernacle.oracle;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.Stay;

/** Carries plants through whole winters on file and says which rules break. */
public final class Oracle {
  private final Season planned;
  private final double marginK;
  private final Map<Season, Outside> winters = new LinkedHashMap<>();
  private final Map<Season, Map<Place, PlaceHours>> places = new ConcurrentHashMap<>();

  /**
   * Gets winters and places ready.
   *
   * @param planned season whose dates the stays bear
   * @param winters whole winters on file to be lived through
   */
  Oracle(Inventory inventory, TemperatureSeries file, Season planned, List<Season> winters) {
    this.planned = planned;
    double extraK = List.of(0.0, 2.0, 1.0, 0.5, 0.0).get(Math.min(4, winters.size()));
    this.marginK = inventory.settings().safetyMarginK() + extraK;
    for (Season winter : winters) {
      this.winters.put(winter, new Outside(winter, file, inventory.settings()));
    }
    this.winters.values().parallelStream().forEach(outside -> prepare(outside, inventory.places()));
  }

  private void prepare(Outside outside, List<Place> all) {
    Map<Place, PlaceHours> hours = new HashMap<>();
    all.forEach(place -> hours.put(place, PlaceHours.of(place, outside)));
    places.put(outside.season(), hours);
  }

  /** The plant's nights in that winter. */
  List<Night> nights(Plant plant, List<Stay> stays, Season winter) {
    Outside outside = winters.get(winter);
    Map<Place, PlaceHours> hours = places.get(winter);
    if (outside == null || hours == null) {
      throw new IllegalArgumentException(winter + " is not one of the winters judged");
    }
    return new Life(plant, planned, stays, outside, hours).nights();
  }

  /** The rules that these nights break, in order of time. */
  List<Finding> broken(Plant plant, Season winter, List<Night> nights) {
    return HardRules.broken(plant, winter, marginK, nights);
  }

  /** The same of the limits alone, without any safety margin. */
  List<Finding> brokenLimits(Plant plant, Season winter, List<Night> nights) {
    return HardRules.broken(plant, winter, 0, nights);
  }

  /** The same with so many kelvins more of safety margin. */
  List<Finding> brokenWithMore(double extraK, Plant plant, Season winter, List<Night> nights) {
    return HardRules.broken(plant, winter, marginK + extraK, nights);
  }
}
