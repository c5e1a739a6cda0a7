package org.hibernacle.input;

import java.util.List;

/** The columns of the Places sheet as the blank form shows them. */
final class PlaceFields {
  private PlaceFields() {}

  static List<FormField> all() {
    return List.of(
        FormField.of(Column.PLACE, 20, "Needed. A name that no other place has.")
            .example("Example bench"),
        FormField.of(
                Column.KIND,
                16,
                "Needed. Bench: in the open. Ground: on the soil, sheltered. Cold store: shed,"
                    + " garage or cellar without heating. Glasshouse. Frost-free room: kept just"
                    + " above freezing. Warm room: a heated room of the house.")
            .from("place_kinds")
            .example("bench"),
        FormField.of(Column.FLOOR, 10, "Room for plants. Empty: as much as you like.")
            .between(0.01, 10_000)
            .example(2, 22),
        FormField.of(
                Column.SUN,
                9,
                "How much sun reaches it. Empty: full on a bench and under glass, part on the ground, none elsewhere.")
            .from("suns")
            .example("full"),
        FormField.of(
                Column.WIND, 11, "Open or sheltered. Empty: open on a bench, sheltered elsewhere.")
            .from("winds")
            .example("open"),
        FormField.of(Column.COVER, 10, "What lies over soil and pots in winter. Empty: none.")
            .from("covers")
            .example("none"),
        FormField.of(
                Column.COVER_DEPTH,
                12,
                "Depth of the mulch. Empty: 10 cm (4 inches) where there is mulch.")
            .between(0, 100),
        FormField.of(
                Column.PLACE_LIGHT,
                9,
                "Light for plants in leaf. Empty: dark in a cold store, low in a frost-free room, bright elsewhere.")
            .from("lights")
            .example("bright"),
        FormField.of(
                Column.LOWEST_HELD,
                13,
                "What a heater with thermostat keeps. Empty: 4 °C (39 °F) in a frost-free room, 16 °C (61 °F) in a warm room, no heater elsewhere.")
            .between(-10, 40),
        FormField.of(
                Column.HIGHEST_HELD,
                13,
                "At what temperature it is vented or cooled. Empty: 24 °C (75 °F) in a warm room.")
            .between(-10, 50),
        FormField.of(
                Column.WARMER_BY,
                12,
                "How much warmer than the open air it is at night, without heating: a difference."
                    + " Negative for a frost pocket.")
            .between(-10, 30)
            .example(0),
        FormField.of(
                Column.LAG,
                8,
                "Hours by which it follows the outside air: 0 in the open, a day or more in a cellar.")
            .between(0, 2000)
            .example(0),
        FormField.of(
                Column.HOLDS_DOWN_TO,
                15,
                "Lowest outside temperature at which the heater still keeps up.")
            .between(-60, 30),
        FormField.of(Column.CLEAR_HEIGHT, 13, "Height under the roof.").between(1, 2000),
        FormField.of(
                Column.VENTS,
                8,
                "Whether you can air it. Empty: yes for a glasshouse, no elsewhere.")
            .from("yes_no")
            .example("no"),
        FormField.of(Column.PLACE_NOTES, 36, "For yourself.")
            .example("Example: overwrite or delete this row."));
  }
}
