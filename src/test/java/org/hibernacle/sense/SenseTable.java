package org.hibernacle.sense;

import java.nio.file.Path;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hibernacle.SomePlant;
import org.hibernacle.input.Problems;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.input.TemperatureUnit;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.LeftOnBench;
import org.hibernacle.sense.SiteYear.Figure;

/**
 * Writes the tables of {@code docs/sense.md}: ten plants on the bench of three sites, what their
 * root balls fall to by month and what roots and shoots can take at that time.
 */
final class SenseTable {
  /** Found by a keeper's eye more easily than a number between others. */
  private static final String BOLD = "**";

  /** How much colder a bench is than the station on clear nights, K; the default of settings. */
  private static final double SITE_COLDER_BY_K = 1.5;

  private static final List<String> TAXA =
      List.of(
          "Larix decidua",
          "Pinus sylvestris",
          "Juniperus chinensis",
          "Fagus sylvatica",
          "Acer palmatum",
          "Acer buergerianum",
          "Ulmus parvifolia",
          "Rhododendron indicum",
          "Olea europaea",
          "Ficus microcarpa");

  private static final String HOW_TO_READ =
      """
      # Do the numbers make sense?

      Ten plants stand all winter on an open bench, each in a glazed pot of 5 L, with sound roots that were not cut. Nobody
      carries them anywhere: this is not advice, it shows what the planner compares. The first two rows of a table are what
      the bench brings in each month: the coldest air, and the coldest edge of a root ball. Below, for each plant, what
      its roots can take on the night of that coldest ball, and its shoots on the night of that coldest air. Compare roots
      with the ball and shoots with the air.

      Each cell has two temperatures in °C: the median of the winters, then the winter with the coldest root ball of all.
      A limit in **bold** is not low enough for what the month brings: the plant would be harmed on the bench, before any
      safety margin. Two medians may be of different winters, so a limit that is nearly bold is as good as bold. Limits sink in
      autumn as plants harden and rise again in spring; all of them are estimates but those that
      [species.md](species.md) gives a source for. The banyan does not harden: its 8 °C is where chilling begins to harm,
      by dose, and not where it dies.

      Read as a grower: what stands out is that roots in a small pot lose on every cold bench what their tops shrug off;
      that 5 L give no shelter once a frost lasts for days; and that a mild autumn leaves roots soft for the first frost of
      November (New York). Three things we would not swear to: tops may be told too hard at the end of an inland October
      and too hard for too long in spring, where they hardly ever decide; roots keep more of their hardness into April than
      growing roots may have; Indian azalea and trident maple, beech and Japanese maple differ more than their group
      estimates do.
      """;

  private SenseTable() {}

  /** The whole page. */
  static String page() {
    List<String> parts = new ArrayList<>(List.of(HOW_TO_READ));
    parts.add(
        site(
            "New York: cold winters by the sea",
            "Measured",
            CityGarden.weather(City.NEW_YORK),
            40.7));
    parts.add(site("Seattle: mild and wet", "Measured", CityGarden.weather(City.SEATTLE), 47.6));
    parts.add(
        site(
            "Inland, the demo's weather: long frosts, warm summers",
            "Invented",
            demoWeather(),
            48.1));
    return String.join("\n", parts);
  }

  private static String site(
      String title, String origin, TemperatureSeries weather, double latitudeDeg) {
    LeftOnBench bench = new LeftOnBench(weather, latitudeDeg, SITE_COLDER_BY_K);
    List<SiteYear> plants =
        TAXA.stream().map(t -> SiteYear.of(bench, SomePlant.of(t).plant())).toList();
    SiteYear first = plants.get(0);
    List<Season> seasons =
        first.winters().stream()
            .map(w -> Season.containing(w.get(0).day(), latitudeDeg < 0))
            .toList();
    List<String> lines = new ArrayList<>();
    lines.add("## " + title + "\n");
    lines.add(
        "%s temperatures, latitude %s°, winters %s to %s; the coldest root ball was in %s.\n"
            .formatted(
                origin,
                latitudeDeg,
                seasons.get(0),
                seasons.get(seasons.size() - 1),
                seasons.get(first.coldestWinter())));
    lines.add(
        row("median / coldest winter, °C", m -> m.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)));
    lines.add(row("---", m -> "---"));
    lines.add(row("*coldest air*", m -> cell(first.coldestAir(m), always())));
    lines.add(row("*coldest root ball*", m -> cell(first.coldestBall(m), always())));
    for (int i = 0; i < TAXA.size(); i++) {
      SiteYear year = plants.get(i);
      Plant plant = SomePlant.of(TAXA.get(i)).plant();
      String name = plant.species().commonNames().get(0);
      lines.add(row(name + ", roots", m -> cell(year.rootLimit(m), year.coldestBall(m))));
      lines.add(row(name + ", shoots", m -> cell(year.shootLimit(m), year.coldestAir(m))));
    }
    return String.join("\n", lines) + "\n";
  }

  private static Figure always() {
    return new Figure(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private static String row(String heading, Function<Month, String> cell) {
    return SiteYear.MONTHS.stream()
        .map(cell)
        .collect(Collectors.joining(" | ", "| " + heading + " | ", " |"));
  }

  private static String cell(Figure limit, Figure met) {
    return celsius(limit.medianC(), met.medianC())
        + " / "
        + celsius(limit.coldestWinterC(), met.coldestWinterC());
  }

  private static String celsius(double limitC, double metC) {
    String text = String.format(Locale.ROOT, "%.1f", Math.round(limitC * 10) / 10.0 + 0.0);
    return metC < limitC ? BOLD + text + BOLD : text;
  }

  private static TemperatureSeries demoWeather() {
    return TemperatureCsv.read(
            List.of(Path.of("demo-data", "temperatures.csv")),
            new TemperatureCsv.Options(
                Optional.empty(),
                Optional.of(TemperatureUnit.C),
                Optional.empty(),
                Optional.empty()),
            new Problems())
        .orElseThrow();
  }
}
