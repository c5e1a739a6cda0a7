package org.hibernacle.planning;

import static org.hibernacle.planning.HandArithmetic.AROUND_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.CORE_KJ;
import static org.hibernacle.planning.HandArithmetic.DAY_H;
import static org.hibernacle.planning.HandArithmetic.EDGE_KJ;
import static org.hibernacle.planning.HandArithmetic.FELT_OF_SKY;
import static org.hibernacle.planning.HandArithmetic.FLOOR_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.FOOT_M2;
import static org.hibernacle.planning.HandArithmetic.FROZEN_SHELL_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.NIGHT_H;
import static org.hibernacle.planning.HandArithmetic.SHELL_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.SIDE_M2;
import static org.hibernacle.planning.HandArithmetic.SIDE_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.SUNRISE_H;
import static org.hibernacle.planning.HandArithmetic.SUNSET_6TH_C;
import static org.hibernacle.planning.HandArithmetic.SUNSET_7TH_C;
import static org.hibernacle.planning.HandArithmetic.TOP_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.TO_EDGE_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.TO_MIDNIGHT_H;
import static org.hibernacle.planning.HandArithmetic.UNFROZEN_TO_EDGE_W_PER_K;
import static org.hibernacle.planning.HandArithmetic.VOLUME_M3;
import static org.hibernacle.planning.HandArithmetic.ballFollowsH;
import static org.hibernacle.planning.HandArithmetic.benchFreezesH;
import static org.hibernacle.planning.HandArithmetic.clearSky;
import static org.hibernacle.planning.HandArithmetic.clouds;
import static org.hibernacle.planning.HandArithmetic.coreWPerK;
import static org.hibernacle.planning.HandArithmetic.edgeC;
import static org.hibernacle.planning.HandArithmetic.eveningKh;
import static org.hibernacle.planning.HandArithmetic.fallK;
import static org.hibernacle.planning.HandArithmetic.fallenC;
import static org.hibernacle.planning.HandArithmetic.frozenAfterH;
import static org.hibernacle.planning.HandArithmetic.frozenAfterKh;
import static org.hibernacle.planning.HandArithmetic.frozenBallFollowsH;
import static org.hibernacle.planning.HandArithmetic.inSeries;
import static org.hibernacle.planning.HandArithmetic.lastFeltC;
import static org.hibernacle.planning.HandArithmetic.ledgerAtSunsetKj;
import static org.hibernacle.planning.HandArithmetic.ledgerInTheMorningKj;
import static org.hibernacle.planning.HandArithmetic.lossWPerM2;
import static org.hibernacle.planning.HandArithmetic.nightKh;
import static org.hibernacle.planning.HandArithmetic.shareOfTheDay;
import static org.hibernacle.planning.HandArithmetic.sineKh;
import static org.hibernacle.planning.HandArithmetic.skyK;
import static org.hibernacle.planning.HandArithmetic.sunriseOfTheEighthC;
import static org.hibernacle.planning.HandArithmetic.thawsAfterH;
import static org.hibernacle.planning.HandArithmetic.vapourHPa;
import static org.hibernacle.planning.HandArithmetic.wayDone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.PlaceClimate;
import org.hibernacle.thermal.RootBall;
import org.hibernacle.thermal.ThermalClass;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Follows the beech of the demo (P16, on the open bench) from the rows of the file to its move-down
 * date, with the arithmetic of {@code docs/by-hand.md} and nothing else. Each step is first held
 * against the number on that page, to its last digit, and then against the program, within what the
 * page's short cuts cost. Outside sources of the formulas: the pages in {@code docs/models}.
 */
class ByHandTest {
  private static final Path WEATHER = Path.of("demo-data", "temperatures.csv");
  private static final LocalDate SIXTH = LocalDate.of(2021, 11, 6);
  private static final LocalDate SEVENTH = LocalDate.of(2021, 11, 7);
  private static final LocalDate EIGHTH = LocalDate.of(2021, 11, 8);

  private static TreeMap<LocalDate, double[]> file;
  private static Inventory garden;
  private static PlantPlan plan;
  private static Winter winter;
  private static PlaceClimate bench;
  private static Lived atHome;

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
    TemperatureSeries series =
        TemperatureCsv.read(List.of(WEATHER), TemperatureCsv.Options.NONE, problems).orElseThrow();
    plan =
        SeasonPlanner.planOnly(garden, series, OptionalInt.empty()).orElseThrow().plants().get(0);
    double latitudeDeg = garden.settings().latitudeDeg();
    winter =
        Winter.of(
            new Season(2021, false),
            new HourlyAir(series, latitudeDeg),
            garden.settings().siteColderByK());
    WintersOnFile winters =
        new WintersOnFile(new Season(2026, false), List.of(winter), garden.places(), latitudeDeg);
    assertEquals("Open bench", garden.places().get(0).name());
    bench = winters.simulator(0).climate(0);
    atHome =
        new Trial(garden.plants().get(0), winters, garden.settings().safetyMarginK()).atHome(0, 0);
  }

  @Test
  void theRowsOfTheFile() {
    assertEquals(List.of(-0.6, 8.5), row(SIXTH));
    assertEquals(List.of(-4.0, 2.2), row(SEVENTH));
    assertEquals(List.of(-8.2, -3.4), row(EIGHTH));
  }

  @Test
  void steps1And2TheAirAtTheBench() {
    assertEquals(6.7, SUNSET_6TH_C, 0.05);
    assertEquals(3.9, fallK(SUNSET_6TH_C, -4.0), 0.05);
    assertEquals(0.9, SUNSET_7TH_C, 0.05);
    assertEquals(3.3, fallK(SUNSET_7TH_C, -8.2), 0.05);
    assertEquals(NIGHT_H + DAY_H, 24, 1e-9);

    assertEquals(DAY_H, winter.dayLengthH()[winter.index(SIXTH)], 0.1);
    for (int hour = 22; hour < 24; hour++) {
      double t = hour - SUNRISE_H - DAY_H;
      assertEquals(fallenC(SUNSET_6TH_C, -4.0, t) - 1.5, airC(SIXTH, hour), 0.1);
      assertEquals(fallenC(SUNSET_7TH_C, -8.2, t), airC(SEVENTH, hour), 0.1);
    }
    for (int hour = 0; hour < 7; hour++) {
      double t = hour + TO_MIDNIGHT_H;
      assertEquals(fallenC(SUNSET_6TH_C, -4.0, t), airC(SEVENTH, hour), 0.1);
      assertEquals(fallenC(SUNSET_7TH_C, -8.2, t), airC(EIGHTH, hour), 0.1);
    }
  }

  @Test
  void step3TheSky() {
    assertEquals(-5.7, fallenC(SUNSET_7TH_C, -8.2, 23 - SUNRISE_H - DAY_H), 0.05);
    assertEquals(0.46, clouds(7.9), 0.005);
    assertEquals(4.0, vapourHPa(-5.7), 0.05);
    assertEquals(0.68, clearSky(-5.7, -3), 0.005);
    assertEquals(10.5, lossWPerM2(-5.7, 7.9, -3), 0.1);
    assertEquals(0.79, skyK(-5.7, 7.9, -3), 0.006);
    assertEquals(0.48, skyK(-8.2, 4.8, -7), 0.006);
    assertEquals(1.0, skyK(-2.5, 11.0, 0), 0.05, "less than the 1.5 K of the setting");

    assertEquals(skyK(-5.7, 7.9, -3), bench.skyK()[hour(SEVENTH, 4)], 0.02);
    assertEquals(skyK(-8.2, 4.8, -7), bench.skyK()[hour(EIGHTH, 2)], 0.02);
    assertEquals(0, bench.skyK()[hour(SIXTH, 22)]);
  }

  @Test
  void steps4And5TheWaysOfTheHeat() {
    assertEquals(0.166, SIDE_M2, 0.0005);
    assertEquals(0.102, FOOT_M2, 0.0005);
    assertEquals(12.7, 1000 * VOLUME_M3, 0.05);
    assertEquals(1.85, SIDE_W_PER_K, 0.005);
    assertEquals(1.35, TOP_W_PER_K, 0.005);
    assertEquals(1.13, FLOOR_W_PER_K, 0.005);
    assertEquals(4.33, AROUND_W_PER_K, 0.005);
    assertEquals(0.53, FELT_OF_SKY, 0.005);
    assertEquals(0.42, FELT_OF_SKY * 0.79, 0.005);
    assertEquals(0.25, FELT_OF_SKY * 0.48, 0.005);
    assertEquals(4.3, SHELL_W_PER_K, 0.05);
    assertEquals(6.2, FROZEN_SHELL_W_PER_K, 0.05);
    assertEquals(4.06, TO_EDGE_W_PER_K, 0.005);
    assertEquals(3.95, UNFROZEN_TO_EDGE_W_PER_K, 0.005);
    assertEquals(52, coreWPerK(0), 0.5);
    assertEquals(3.8, inSeries(coreWPerK(0)), 0.05);
    assertEquals(3.1, inSeries(coreWPerK(0.5)), 0.05);
    assertEquals(400, EDGE_KJ, 0.5);
    assertEquals(743, CORE_KJ, 0.5);
    assertEquals(garden.plants().get(0).container().volumeL(), 1000 * VOLUME_M3, 1e-6);
  }

  @Test
  void step6TheLedger() {
    assertEquals(19.55, SUNRISE_H + DAY_H + benchFreezesH(), 0.01);
    assertEquals(1.8, ballFollowsH(), 0.05);
    assertEquals(-6.2, eveningKh(), 0.05);
    assertEquals(-23.9, nightKh(SUNSET_6TH_C, -4.0, TO_MIDNIGHT_H, NIGHT_H, 0.42), 0.05);
    assertEquals(10.23, SUNRISE_H + thawsAfterH(), 0.01);
    assertEquals(-5.8, sineKh(-4.0, 2.2, 0, thawsAfterH()), 0.05);
    assertEquals(10.4, sineKh(-4.0, 2.2, thawsAfterH(), DAY_H), 0.05);
    assertEquals(-433, ledgerInTheMorningKj(), 0.5);
    assertEquals(-362, ledgerAtSunsetKj(), 0.5);

    // An hour of frost is about 60 kJ; the program is asked at 7:12.
    double sevenKj = programsBall(SEVENTH, 7).heatJ() / 1000;
    double eightKj = programsBall(SEVENTH, 8).heatJ() / 1000;
    assertEquals(ledgerInTheMorningKj(), sevenKj + 0.2 * (eightKj - sevenKj), 80);
    assertEquals(ledgerAtSunsetKj(), programsBall(SEVENTH, 17).heatJ() / 1000, 60);
  }

  @Test
  void step7TheNightToTheSeventh() {
    assertEquals(33, -ledgerInTheMorningKj() - EDGE_KJ, 0.5);
    assertEquals(44, coreWPerK(33 / CORE_KJ), 0.5);
    assertEquals(-0.4, edgeC(33 / CORE_KJ), 0.05);
    assertEquals(edgeC(33 / CORE_KJ), lowestC(SIXTH), 0.2);
  }

  @Test
  void step8TheNightToTheEighth() {
    assertEquals(781, EDGE_KJ + CORE_KJ + ledgerAtSunsetKj(), 0.5);
    assertEquals(66.9, frozenAfterKh(), 0.1);
    assertEquals(12.3, frozenAfterH(), 0.05);
    assertEquals(1.2, frozenBallFollowsH(), 0.05);
    assertEquals(0.81, wayDone(), 0.005);
    assertEquals(-8.2, lastFeltC(), 0.05);
    assertEquals(-6.7, sunriseOfTheEighthC(), 0.05);

    assertTrue(programsBall(EIGHTH, 6).coreIce() < 1);
    assertEquals(1, programsBall(EIGHTH, 7).coreIce());
    assertEquals(8, atHome.trace().ballMinHour()[winter.index(SEVENTH)] % 24);
    assertEquals(sunriseOfTheEighthC(), lowestC(SEVENTH), 1);
  }

  @Test
  void step9TheRootLimit() {
    assertEquals(8.4, coldKd(SIXTH), 0.05);
    assertEquals(9, LocalDate.of(2021, 7, 1).datesUntil(SIXTH).filter(d -> meanC(d) < 10).count());
    assertEquals(8.4, 10 - meanC(SIXTH), 0.05);
    assertEquals(-2.7, limitC(SIXTH), 0.05);
    assertEquals(-3.3, limitC(SEVENTH), 0.05);
    assertEquals(0.43, shareOfTheDay(DAY_H), 0.005);
    assertEquals(0.47, shareOfTheDay(12), 0.005);

    assertEquals(limitC(SIXTH), programsLimitC(SIXTH), 0.15);
    assertEquals(limitC(SEVENTH), programsLimitC(SEVENTH), 0.15);
  }

  @Test
  void step10TheRule() {
    double edgeC = edgeC(33 / CORE_KJ);
    double keptC = limitC(SIXTH) + 2;
    assertTrue(edgeC > keptC, "kept in the night to the 7th");
    assertTrue(edgeC(0.25) > keptC && edgeC(0.28) < keptC, "a quarter of the core frozen");
    assertEquals(3, (0.266 * CORE_KJ - 33) / (4.4 * 3.5 * 3.6), 0.2, "hours more");
    assertEquals(5.4, limitC(SEVENTH) + 2 - sunriseOfTheEighthC(), 0.05);

    Move down = plan.move(Move.Kind.MOVE_DOWN).orElseThrow();
    assertEquals(winter.index(SEVENTH), atHome.violations().get(0).night());
    assertEquals(LocalDate.of(2026, 11, 7), down.earliest().orElseThrow());
    assertEquals(LocalDate.of(2026, 11, 23), down.ownDays().get(1), "the next winter");
  }

  @Test
  void step11TheDateFollows() {
    LocalDate day = LocalDate.of(2026, 11, 7);
    assertTrue(garden.settings().isMovingDay(day), "a Saturday");

    Move down = plan.move(Move.Kind.MOVE_DOWN).orElseThrow();
    Violation because = down.because().orElseThrow();
    assertEquals(day, down.date());
    assertEquals("Mulch bed", down.to().name());
    assertEquals(2, plan.moves().size());
    assertTrue(plan.broken().isEmpty());
    assertEquals(Rule.ROOT_BALL, because.rule());
    assertEquals(EIGHTH, because.day());
    assertEquals(sunriseOfTheEighthC(), because.foundC(), 1);
    assertEquals(limitC(SEVENTH), because.limitC(), 0.15);
  }

  private static List<Double> row(LocalDate day) {
    return List.of(file.get(day)[0], file.get(day)[1]);
  }

  private static double meanC(LocalDate evening) {
    double[] next = file.get(evening.plusDays(1));
    return HandArithmetic.meanC(file.get(evening)[1], next[0], next[1]);
  }

  /** Degree-days below 10 °C of the nights since July, before that one. */
  private static double coldKd(LocalDate evening) {
    return LocalDate.of(2021, 7, 1)
        .datesUntil(evening)
        .mapToDouble(day -> Math.max(0, 10 - meanC(day)))
        .sum();
  }

  private static double limitC(LocalDate evening) {
    return HandArithmetic.limitC(coldKd(evening));
  }

  private static int hour(LocalDate day, int hour) {
    return 24 * winter.index(day) + hour;
  }

  private static double airC(LocalDate day, int hour) {
    return bench.airC()[hour(day, hour)];
  }

  private static double lowestC(LocalDate evening) {
    return atHome.trace().ballMinC()[winter.index(evening)];
  }

  private static double programsLimitC(LocalDate evening) {
    return atHome.state().rootLimitC()[winter.index(evening)];
  }

  /** The program's ball at the full hour, lived from 1 November in the program's air. */
  private static RootBall programsBall(LocalDate day, int hour) {
    ThermalClass pot = ThermalClass.of(garden.plants().get(0).container());
    int from = hour(LocalDate.of(2021, 11, 1), 12);
    RootBall ball = new RootBall(pot, RootBall.WATER_FRACTION, bench.airC()[from]);
    for (int h = from; h < hour(day, hour); h++) {
      ball.hour(bench.airC()[h] - FELT_OF_SKY * bench.skyK()[h], AROUND_W_PER_K);
    }
    return ball;
  }
}
