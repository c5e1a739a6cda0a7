package org.hibernacle.sense;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Supposed;

/**
 * Writes {@code docs/sensitivity.md}: ten plants of the demo, planned anew with one thing supposed
 * to be otherwise, and how far dates and margins move.
 */
final class SensitivityTable {
  /** Water in a ball that was left to dry, m3/m3. */
  static final double DRY = 0.10;

  /** Water in a ball of peat after rain, m3/m3. */
  static final double WET = 0.45;

  private static final double SAFETY_MARGIN_K = 2;
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
  private static final DateTimeFormatter DAY_AND_YEAR =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  private static final List<String> IDS =
      List.of("P10", "P03", "P05", "P21", "P13", "P12", "P26", "P36", "P41", "P45");

  private final Inventory inventory;
  private final TemperatureSeries file;
  private final List<Plant> plants;
  private final List<Supposed.Planned> planned;
  private final List<PlantPlan.Tightest> tightest;

  SensitivityTable() {
    Path folder = Path.of("demo-data");
    Problems problems = new Problems();
    Inventory demo =
        InventoryWorkbook.read(
                folder.resolve("inventory.xlsx"), SpeciesCatalogue.builtIn(), problems)
            .orElseThrow();
    inventory = new Inventory(demo.plants(), demo.places(), anyDay(demo.settings()), demo.sheets());
    file =
        TemperatureCsv.read(
                List.of(folder.resolve("temperatures.csv")), TemperatureCsv.Options.NONE, problems)
            .orElseThrow();
    plants = IDS.stream().map(this::plant).toList();
    Supposition usual = Supposition.usual(inventory, file);
    planned = plants.stream().map(usual::plan).toList();
    tightest = eachPlant(i -> usual.tightest(plants.get(i), planned.get(i).stays()));
  }

  private Plant plant(String id) {
    return inventory.plants().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  private <T> List<T> eachPlant(Function<Integer, T> value) {
    return Stream.iterate(0, i -> i + 1).limit(IDS.size()).map(value).toList();
  }

  private static Settings anyDay(Settings s) {
    return new Settings(
        s.site(),
        s.siteColderByK(),
        s.latitudeDeg(),
        s.longitudeDeg(),
        s.zone(),
        s.units(),
        SAFETY_MARGIN_K,
        0,
        EnumSet.allOf(DayOfWeek.class),
        List.of(),
        s.plantsPerMovingDay(),
        s.minutesPerMovingDay(),
        s.paper(),
        s.firstDayOfWeek(),
        s.language());
  }

  /** What is planned as things are. */
  String usualTable() {
    List<String> lines = new ArrayList<>();
    lines.add("| plant | pot, L | down | in | home | smallest margin, K | on |");
    lines.add("| --- | --- | --- | --- | --- | --- | --- |");
    for (int i = 0; i < IDS.size(); i++) {
      Supposed.Planned plan = planned.get(i);
      lines.add(
          "| %s | %s | %s | %s | %s | %s | %s, %s |"
              .formatted(
                  name(i),
                  tenths(plants.get(i).container().volumeL()),
                  day(plan.down()),
                  day(plan.in()),
                  day(plan.home()),
                  tenths(tightest.get(i).marginK()),
                  tightest.get(i).day().format(DAY_AND_YEAR),
                  tightest.get(i).place().toLowerCase(Locale.ROOT)));
    }
    return String.join("\n", lines) + "\n";
  }

  /** The whole page. */
  String page() {
    List<Supposition> others = Supposition.others(inventory, file);
    List<List<Supposed.Planned>> plans =
        eachPlant(i -> others.stream().map(o -> o.plan(plants.get(i))).toList());
    double[][] shiftK = new double[IDS.size()][others.size()];
    for (int i = 0; i < shiftK.length; i++) {
      for (int k = 0; k < others.size(); k++) {
        PlantPlan.Tightest other = others.get(k).tightest(plants.get(i), planned.get(i).stays());
        shiftK[i][k] = other.marginK() - tightest.get(i).marginK();
      }
    }
    // Another safety margin changes nothing about plants that keep to the old dates.
    List<Supposition> natures = others.subList(0, 8);
    return String.join(
        "\n",
        SensitivityPage.HEAD,
        usualTable(),
        SensitivityPage.DATES,
        "### First day on the ground\n",
        table(others, (i, k) -> shift(planned.get(i).down(), plans.get(i).get(k).down())),
        "### First day under a roof\n",
        table(others, (i, k) -> shift(planned.get(i).in(), plans.get(i).get(k).in())),
        "### First day home\n",
        table(others, (i, k) -> shift(planned.get(i).home(), plans.get(i).get(k).home())),
        SensitivityPage.MARGINS,
        table(natures, (i, k) -> signed(shiftK[i][k])),
        SensitivityPage.TOGETHER,
        together(shiftK),
        SensitivityPage.WHAT_FOLLOWS);
  }

  private interface Cell {
    String of(int plant, int supposition);
  }

  private String table(List<Supposition> others, Cell cell) {
    List<String> lines = new ArrayList<>();
    lines.add(others.stream().map(Supposition::heading).collect(joined("plant")));
    lines.add(others.stream().map(o -> "---").collect(joined("---")));
    for (int i = 0; i < IDS.size(); i++) {
      int plant = i;
      lines.add(
          Stream.iterate(0, k -> k + 1)
              .limit(others.size())
              .map(k -> cell.of(plant, k))
              .collect(joined(name(i))));
    }
    return String.join("\n", lines) + "\n";
  }

  private static java.util.stream.Collector<CharSequence, ?, String> joined(String first) {
    return Collectors.joining(" | ", "| " + first + " | ", " |");
  }

  /** Losses of margin that do not know of each other, in quadrature. */
  private String together(double[][] shiftK) {
    List<String> lines = new ArrayList<>();
    lines.add("| plant | air | transfer | water | together, moist | together, dry |");
    lines.add("| --- | --- | --- | --- | --- | --- |");
    double[] moistK = new double[IDS.size()];
    double[] dryK = new double[IDS.size()];
    for (int i = 0; i < dryK.length; i++) {
      double airK = loss(shiftK[i], 0, 1);
      double transferK = loss(shiftK[i], 2, 3);
      double waterK = loss(shiftK[i], 4, 5);
      moistK[i] = Math.hypot(airK, transferK);
      dryK[i] = Math.hypot(moistK[i], waterK);
      lines.add(
          "| %s | %s | %s | %s | %s | %s |"
              .formatted(
                  name(i),
                  tenths(airK),
                  tenths(transferK),
                  tenths(waterK),
                  judged(moistK[i]),
                  judged(dryK[i])));
    }
    lines.add("\n" + covered("moist", moistK) + "\n" + covered("dry", dryK));
    return String.join("\n", lines) + "\n";
  }

  private static String judged(double lossK) {
    return lossK <= SAFETY_MARGIN_K ? tenths(lossK) : "**" + tenths(lossK) + "**";
  }

  private static String covered(String ball, double[] lossK) {
    double[] sorted = Arrays.stream(lossK).sorted().toArray();
    int n = sorted.length;
    return "With %s balls 2 K cover %d of %d plants; the median asks for %s K, nine of ten for %s K, all for %s K."
        .formatted(
            ball,
            Arrays.stream(sorted).filter(k -> k <= SAFETY_MARGIN_K).count(),
            n,
            tenths((sorted[(n - 1) / 2] + sorted[n / 2]) / 2),
            tenths(sorted[n - 2]),
            tenths(sorted[n - 1]));
  }

  /** The larger loss of two opposite suppositions, K; nothing where both gain. */
  private static double loss(double[] shiftK, int one, int other) {
    return Math.max(0, -Math.min(shiftK[one], shiftK[other]));
  }

  private String name(int i) {
    Plant plant = plants.get(i);
    return plant.label().isBlank() ? plant.name() : plant.label().toLowerCase(Locale.ROOT);
  }

  private static String day(Optional<LocalDate> day) {
    return day.map(d -> d.format(DAY)).orElse("-");
  }

  private static String shift(Optional<LocalDate> usual, Optional<LocalDate> other) {
    if (usual.isEmpty() || other.isEmpty()) {
      return usual.isEmpty() && other.isEmpty()
          ? "-"
          : other.map(d -> d.format(DAY)).orElse("never");
    }
    long days = ChronoUnit.DAYS.between(usual.get(), other.get());
    return days == 0 ? "0" : String.format(Locale.ROOT, "%+d", days);
  }

  private static String signed(double valueK) {
    String text = String.format(Locale.ROOT, "%+.1f", valueK);
    return text.substring(1).equals("0.0") ? "0.0" : text;
  }

  private static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value + 0.0);
  }
}
