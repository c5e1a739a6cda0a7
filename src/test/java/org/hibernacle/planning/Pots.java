package org.hibernacle.planning;

import java.util.List;
import java.util.Map;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden.City;

/** A garden made ready for the parts of the planner. */
record Pots(Inventory inventory, Caution caution, WintersOnFile winters) {
  /** Under the measured weather of New York. */
  static Pots of(Inventory garden) {
    return of(garden, CityGarden.weather(City.NEW_YORK));
  }

  static Pots of(Inventory garden, TemperatureSeries weather) {
    boolean southern = garden.settings().southern();
    WinterSelection selection = WinterSelection.of(weather, southern);
    HourlyAir air = new HourlyAir(selection.series(), garden.settings().latitudeDeg());
    List<Winter> lived =
        selection.winters().stream()
            .map(UsableWinter::season)
            .map(season -> Winter.of(season, air, garden.settings().siteColderByK()))
            .toList();
    WintersOnFile winters =
        new WintersOnFile(
            lived.get(lived.size() - 1).season().next(),
            lived,
            garden.places(),
            garden.settings().latitudeDeg(),
            Map.of());
    return new Pots(garden, Caution.of(garden.settings(), winters.count()), winters);
  }

  Wishes wishes() {
    return Wishes.of(inventory, caution, winters);
  }
}
