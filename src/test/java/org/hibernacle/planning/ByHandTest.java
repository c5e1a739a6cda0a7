package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Follows the beech of the demo (P16, on the open bench) from the rows of the file to its move-down
 * date, with nothing but the arithmetic of {@code docs/by-hand.md}; every number asserted here
 * stands on that page. Outside source of each formula: the pages in {@code docs/models}.
 */
class ByHandTest {
  private static final Path WEATHER = Path.of("demo-data", "temperatures.csv");
  private static final double LATITUDE_DEG = 48.1;
  private static final double SITE_COLDER_K = 1.5;

  /**
   * The beech's pot: round, 36 cm wide, 16 cm deep, plastic; ball as the workbook reader has it.
   */
  private static final double SIDE_M2 = Math.PI * 0.36 * 0.1472;

  private static final double FOOT_M2 = Math.PI * 0.18 * 0.18;

  private static TreeMap<LocalDate, double[]> file;
  private static Inventory garden;
  private static PlantPlan plan;

  @BeforeAll
  static void readTheDemo() throws IOException {
    file = new TreeMap<>();
    for (String line : Files.readAllLines(WEATHER).subList(1, 3835)) {
      String[] cells = line.split(",", -1);
      file.put(
          LocalDate.parse(cells[0]),
          new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])});
    }
    Problems problems = new Problems();
    Inventory whole =
        InventoryWorkbook.read(
                Path.of("demo-data", "inventory.xlsx"), SpeciesCatalogue.builtIn(), problems)
            .orElseThrow();
    garden =
        new Inventory(
            whole.plants().stream().filter(p -> p.id().equals("P16")).toList(),
            whole.places(),
            whole.settings(),
            List.of());
    plan =
        SeasonPlanner.plan(
                garden,
                TemperatureCsv.read(List.of(WEATHER), TemperatureCsv.Options.NONE, problems)
                    .orElseThrow(),
                OptionalInt.empty())
            .orElseThrow()
            .plants()
            .get(0);
  }

  @Test
  void theRowsOfTheFile() {
    assertEquals(-0.6, file.get(LocalDate.of(2021, 11, 6))[0]);
    assertEquals(8.5, file.get(LocalDate.of(2021, 11, 6))[1]);
    assertEquals(-4.0, file.get(LocalDate.of(2021, 11, 7))[0]);
    assertEquals(2.2, file.get(LocalDate.of(2021, 11, 7))[1]);
  }

  @Test
  void theAirAtTheBench() {
    assertEquals(9.6, dayLengthH(LocalDate.of(2021, 11, 6)), 0.05);
    assertEquals(
        -2.0, lowestOfTheMorning(LocalDate.of(2021, 11, 6)), 0.1, "a clear day: 1.5 K off");
    assertEquals(-3.9, lowestOfTheMorning(LocalDate.of(2021, 11, 7)), 0.1, "not a clear day");
  }

  @Test
  void theRootBallInTheFirstTwoFrosts() {
    assertEquals(4.33, bothWPerK(), 0.01);
    assertEquals(0.0, lowestEdgeC(LocalDate.of(2021, 11, 5)), 0.1, "the night to the 6th");
    assertEquals(-1.16, lowestEdgeC(LocalDate.of(2021, 11, 6)), 0.01, "the night to the 7th");
  }

  @Test
  void theRootLimitAfterAMildAutumn() {
    assertEquals(-2.62, rootLimitC(LocalDate.of(2021, 11, 6)), 0.01);
  }

  @Test
  void theDateFollows() {
    double keptC = Math.min(0, rootLimitC(LocalDate.of(2021, 11, 6)) + 2);
    assertTrue(lowestEdgeC(LocalDate.of(2021, 11, 6)) < keptC, "broken in the night to the 7th");
    assertTrue(lowestEdgeC(LocalDate.of(2021, 11, 5)) >= -1e-9, "and not in the night before");
    LocalDate day = LocalDate.of(2026, 11, 6);
    while (!garden.settings().isMovingDay(day)) {
      day = day.minusDays(1);
    }
    assertEquals(LocalDate.of(2026, 11, 1), day, "the last moving day before that night");

    Move down = plan.move(Move.Kind.MOVE_DOWN).orElseThrow();
    Violation because = down.because().orElseThrow();
    assertEquals(day, down.date());
    assertEquals(Rule.ROOT_BALL, because.rule());
    assertEquals(LocalDate.of(2021, 11, 7), because.day());
    assertEquals(lowestEdgeC(LocalDate.of(2021, 11, 6)), because.foundC(), 0.1);
    assertEquals(rootLimitC(LocalDate.of(2021, 11, 6)), because.limitC(), 0.1);
  }

  /** Day length from the Sun's declination, h; good to a few minutes. */
  private static double dayLengthH(LocalDate day) {
    double declination =
        Math.toRadians(-23.44) * Math.cos(2 * Math.PI * (day.getDayOfYear() + 10) / 365.25);
    double latitude = Math.toRadians(LATITUDE_DEG);
    double cosine =
        (Math.sin(Math.toRadians(-0.833)) - Math.sin(latitude) * Math.sin(declination))
            / (Math.cos(latitude) * Math.cos(declination));
    return 2 * Math.toDegrees(Math.acos(cosine)) / 15;
  }

  /** The air at the bench at any time, °C: docs/models/air.md. */
  private static double airC(LocalDate day, double hour) {
    double[] today = file.get(day);
    double lengthH = dayLengthH(day);
    double sunrise = 12 - lengthH / 2;
    double sunset = 12 + lengthH / 2;
    double stationC;
    if (hour >= sunrise && hour <= sunset) {
      stationC = rising(today, lengthH, hour - sunrise);
    } else if (hour > sunset) {
      stationC = falling(today, lengthH, file.get(day.plusDays(1))[0], hour - sunset);
    } else {
      double[] yesterday = file.get(day.minusDays(1));
      stationC = falling(yesterday, lengthH, today[0], hour + 24 - sunset);
    }
    double rangeK = today[1] - today[0];
    double offsetK = rangeK > 8 ? SITE_COLDER_K : 0;
    return stationC - offsetK * Math.max(0, Math.min(1, (today[1] - stationC) / rangeK));
  }

  private static double rising(double[] day, double lengthH, double sinceSunriseH) {
    return day[0] + (day[1] - day[0]) * Math.sin(Math.PI * sinceSunriseH / (lengthH + 4));
  }

  private static double falling(
      double[] day, double lengthH, double nextMinimumC, double sinceSunsetH) {
    double atSunset = rising(day, lengthH, lengthH);
    double nightH = 24 - lengthH;
    return atSunset - (atSunset - nextMinimumC) / Math.log(nightH + 1) * Math.log(sinceSunsetH + 1);
  }

  private static double lowestOfTheMorning(LocalDate day) {
    double lowest = 99;
    for (int hour = 0; hour < 12; hour++) {
      lowest = Math.min(lowest, airC(day, hour));
    }
    return lowest;
  }

  /** Side, top and base of the pot on an open bench, wind 2 m/s, plastic wall. */
  private static double bothWPerK() {
    double surface = 1 / (5.7 + 3.8 * 2.0);
    double wall = surface + 0.015;
    return SIDE_M2 / wall + FOOT_M2 / surface + FOOT_M2 / wall;
  }

  /**
   * Lowest edge of the night that begins on that day, stepped every ten seconds from far before.
   */
  private static double lowestEdgeC(LocalDate evening) {
    double volumeM3 = garden.plants().get(0).container().volumeL() / 1000;
    double[] shareM3 = {0.35 * volumeM3, 0.65 * volumeM3};
    double areaM2 = SIDE_M2 + 2 * FOOT_M2;
    double inner =
        Math.min(
            0.8 * areaM2 * Math.pow(1 - 0.35 / 2, 2.0 / 3) / (0.5 * volumeM3 / areaM2),
            0.5 * shareM3[1] * 1.413e6 / 900);
    double[] heatJ = {shareM3[0] * 2.0286e6 * 12, shareM3[1] * 2.0286e6 * 12};
    double lowest = 99;
    LocalDate start = evening.minusDays(4);
    for (long second = 0; second < 5 * 86400; second += 10) {
      double hour = 12 + second / 3600.0;
      LocalDate day = start.plusDays((long) (hour / 24));
      // As the program does, the air of an hour holds for the hour.
      double aroundC = airC(day, Math.floor(hour % 24));
      double edgeC = temperatureC(heatJ[0], shareM3[0]);
      double coreC = temperatureC(heatJ[1], shareM3[1]);
      heatJ[0] += 10 * (bothWPerK() * (aroundC - edgeC) + inner * (coreC - edgeC));
      heatJ[1] += 10 * inner * (edgeC - coreC);
      if (second >= 4 * 86400) {
        lowest = Math.min(lowest, temperatureC(heatJ[0], shareM3[0]));
      }
    }
    return lowest;
  }

  /** Water share 0.27: 2.03 MJ/m3K unfrozen, 1.41 frozen, 90.2 MJ/m3 between. */
  private static double temperatureC(double heatJ, double volumeM3) {
    double latentJ = volumeM3 * 0.27 * 334e6;
    if (heatJ > 0) {
      return heatJ / (volumeM3 * 2.0286e6);
    }
    return heatJ < -latentJ ? (heatJ + latentJ) / (volumeM3 * 1.413e6) : 0;
  }

  /**
   * The beech's root limit on the evening of that day, °C: from -2 towards -9, by the cold below 10
   * °C of each day since July. A ball of this size has the mean of its air, so air serves.
   */
  private static double rootLimitC(LocalDate evening) {
    double limit = -2;
    boolean feltCold = false;
    for (LocalDate day = LocalDate.of(2021, 7, 1); day.isBefore(evening); day = day.plusDays(1)) {
      double mean = 0;
      for (int hour = 12; hour < 36; hour++) {
        mean += airC(day.plusDays(hour / 24), hour % 24) / 24;
      }
      double lost = (limit + 9) / 7;
      double gain = Math.min(0, mean - 10) * 0.012 * 7 * lost;
      double loss = feltCold ? Math.max(0, mean - 10) * 0.003 * 7 * (1 - lost) : 0;
      limit = Math.max(-9, Math.min(-2, limit + gain + loss));
      feltCold |= mean < 10;
    }
    return limit;
  }
}
