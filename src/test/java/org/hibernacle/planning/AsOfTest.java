package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.SeasonSoFar;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/**
 * Plans made within the season, under the measured weather of New York ({@code noaa/README.md}):
 * what is known of a season must be lived as it was, and what was done stays done.
 */
class AsOfTest {
  private static final LocalDate NOV_10 = LocalDate.of(2014, 11, 10);
  private static final TemperatureSeries WEATHER = CityGarden.weather(City.NEW_YORK);

  private static Inventory garden(String... ids) {
    Inventory all = CityGarden.inventory(City.NEW_YORK);
    List<Plant> some = all.plants().stream().filter(p -> Set.of(ids).contains(p.id())).toList();
    return new Inventory(some, all.places(), all.settings(), List.of());
  }

  private static TemperatureSeries upTo(LocalDate last) {
    return new TemperatureSeries(
        WEATHER.station(), WEATHER.days().headMap(last, true), new TreeMap<>());
  }

  /** Measured up to 10 November 2014, then a week with such nights. */
  private static TemperatureSeries forecast(double lowestC) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>(upTo(NOV_10).days());
    for (int d = 1; d <= 7; d++) {
      days.put(NOV_10.plusDays(d), new DailyExtremes(lowestC, lowestC + 6));
    }
    return new TemperatureSeries(WEATHER.station(), days, new TreeMap<>());
  }

  private static SeasonPlan asOf(
      Inventory garden, TemperatureSeries file, LocalDate day, MoveMade... made) {
    Progress progress = new Progress(day, List.of(made), List.of());
    return SeasonPlanner.plan(
            new Question(garden, file, Map.of(), OptionalInt.empty(), Optional.of(progress)))
        .orElseThrow();
  }

  private static PlantPlan plan(SeasonPlan season, String id) {
    return season.plants().stream()
        .filter(p -> p.plant().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void asOfTheFirstDayWithNothingKnownItIsThePlanMadeBeforeTheSeason() {
    Inventory garden = garden("MAPLE-6", "OLIVE-10", "FIG-4");
    TemperatureSeries before = upTo(LocalDate.of(2014, 6, 30));
    SeasonPlan ordinary = SeasonPlanner.plan(garden, before, OptionalInt.empty()).orElseThrow();
    SeasonPlan first = asOf(garden, before, LocalDate.of(2014, 7, 1));
    assertEquals(new Season(2014, false), first.season());
    assertEquals(ordinary.plants(), first.plants());
    assertEquals(ordinary.tasks(), first.tasks());
    assertEquals(ordinary.caution(), first.caution());
  }

  @Test
  void whateverWinterFollowsBallsAndHardeningUpToTheDayAreThoseOfTheSeasonItself() {
    Inventory garden = garden("MAPLE-6");
    Plant maple = garden.plants().get(0);
    double latitudeDeg = garden.settings().latitudeDeg();
    Season planned = new Season(2014, false);
    SeasonSoFar soFar = SeasonSoFar.of(upTo(NOV_10), NOV_10, false);
    List<Winter> followed =
        List.of(new Season(2012, false), new Season(2013, false)).stream()
            .map(s -> new HourlyAir(soFar.followedBy(WEATHER, s), latitudeDeg))
            .map(
                air ->
                    Winter.of(
                        Season.containing(air.series().days().firstKey().plusDays(9), false),
                        air,
                        1.5))
            .toList();
    Winter measured = Winter.of(planned, new HourlyAir(WEATHER, latitudeDeg), 1.5);
    Trial joined =
        new Trial(maple, new WintersOnFile(planned, followed, garden.places(), latitudeDeg), 2);
    Trial itself =
        new Trial(
            maple, new WintersOnFile(planned, List.of(measured), garden.places(), latitudeDeg), 2);
    Lived real = itself.atHome(0, 0);
    int nights = measured.index(NOV_10);
    // The evening before 1 July is another one, which the first morning feels.
    double toleranceK = 1e-3;
    for (int w = 0; w < 2; w++) {
      Lived lived = joined.atHome(w, 0);
      assertArrayEquals(
          Arrays.copyOf(real.trace().ballMinC(), nights),
          Arrays.copyOf(lived.trace().ballMinC(), nights),
          toleranceK);
      assertArrayEquals(
          Arrays.copyOf(real.state().rootLimitC(), nights),
          Arrays.copyOf(lived.state().rootLimitC(), nights),
          toleranceK);
      assertArrayEquals(
          Arrays.copyOf(real.state().shootLimitC(), nights),
          Arrays.copyOf(lived.state().shootLimitC(), nights),
          toleranceK);
      assertFalse(
          Arrays.equals(real.trace().ballMinC(), lived.trace().ballMinC()), "another winter after");
    }
  }

  @Test
  void whatWasDoneStaysDoneAndThePlanGoesOnFromThere() {
    LocalDate down = LocalDate.of(2014, 11, 5);
    SeasonPlan season =
        asOf(
            garden("MAPLE-6", "FIG-4"),
            forecast(2),
            NOV_10,
            new MoveMade("FIG-4", LocalDate.of(2014, 9, 3), "Garden room"),
            new MoveMade("MAPLE-6", down, "Hedge foot"));
    PlantPlan maple = plan(season, "MAPLE-6");
    assertEquals("Bench", maple.stays().get(0).place().name());
    assertEquals(down, maple.stays().get(0).toExclusive());
    assertEquals("Hedge foot", maple.stays().get(1).place().name());
    assertTrue(maple.moves().get(0).made());
    assertEquals(Optional.empty(), maple.moves().get(0).because());
    maple.moves().stream()
        .skip(1)
        .forEach(move -> assertFalse(move.made() || move.date().isBefore(NOV_10), move::toString));
    PlantPlan fig = plan(season, "FIG-4");
    assertEquals(LocalDate.of(2014, 9, 3), fig.moves().get(0).date());
    assertEquals("Garden room", fig.stays().get(1).place().name());
    assertTrue(season.tasks().stream().noneMatch(task -> task.to().isBefore(NOV_10)));
    assertTrue(
        season.plants().stream()
            .flatMap(p -> p.broken().stream())
            .noneMatch(v -> season.season().contains(v.day()) && v.day().isBefore(NOV_10)));
  }

  /** A tub that nobody would carry was carried all the same: it goes on from where it stands. */
  @Test
  void aHeavyPotThatWasCarriedGoesOnFromWhereItStands() {
    Inventory yard = CityGarden.yardInventory(City.NEW_YORK);
    Plant tub = yard.plants().get(0);
    Inventory garden = new Inventory(List.of(tub), yard.places(), yard.settings(), List.of());
    PlantPlan untouched = plan(asOf(garden, forecast(2), NOV_10), tub.id());
    assertTrue(
        untouched.stays().stream()
            .allMatch(s -> s.place().wrapOf().isPresent() || s.place().name().equals(tub.home())),
        "wrapped at home");
    LocalDate carried = LocalDate.of(2014, 11, 5);
    PlantPlan moved =
        plan(
            asOf(garden, forecast(2), NOV_10, new MoveMade(tub.id(), carried, "Mulched bed")),
            tub.id());
    assertEquals(carried, moved.stays().get(1).fromInclusive());
    assertEquals("Mulched bed", moved.stays().get(1).place().name());
    assertEquals(tub.home(), moved.stays().get(moved.stays().size() - 1).place().name());
    moved.moves().stream()
        .skip(1)
        .forEach(move -> assertFalse(move.date().isBefore(NOV_10), move::toString));
  }

  /** Frost tonight on a day without hands: the day is named that would save the plant. */
  @Test
  void aColdForecastCarriesSoonerAndNamesADayWhereMovingDaysComeTooLate() {
    Inventory garden = garden("MAPLE-6", "YEW-8");
    SeasonPlan mild = asOf(garden, forecast(4), NOV_10);
    SeasonPlan cold = asOf(garden, forecast(-12), NOV_10);
    assertTrue(mild.inSeason().orElseThrow().threatened().isEmpty());
    assertTrue(mild.inSeason().orElseThrow().late().isEmpty());
    LocalDate mildDate = plan(mild, "MAPLE-6").moves().get(0).date();
    LocalDate coldDate = plan(cold, "MAPLE-6").moves().get(0).date();
    assertTrue(coldDate.isBefore(mildDate), coldDate + " and " + mildDate);
    // 10 November 2014 was a Monday; pots are carried on Saturdays and Sundays.
    InSeason now = cold.inSeason().orElseThrow();
    assertEquals(-12, now.tonightC().orElseThrow(), 0.5);
    InSeason.Late late =
        now.late().stream().filter(l -> l.plantId().equals("MAPLE-6")).findFirst().orElseThrow();
    Move extra = late.extra().orElseThrow();
    assertFalse(garden.settings().isMovingDay(extra.date()));
    assertTrue(extra.date().isBefore(LocalDate.of(2014, 11, 15)), extra::toString);
    assertTrue(now.threatened().stream().anyMatch(t -> t.plantId().equals("MAPLE-6")));
  }

  /** Half a kelvin a day up to 2 K, by hand. */
  @Test
  void aForecastKeepsMoreInHandTheFurtherOffItIs() {
    Outlook outlook =
        new Outlook(Optional.of(SeasonSoFar.of(forecast(0), NOV_10, false)), List.of());
    int tonight = outlook.tonight();
    assertEquals(132, tonight, "31 + 31 + 30 + 31 days of July to October, and 9");
    double[] expectedK = {0, 0.5, 1.0, 1.5, 2.0, 2.0, 2.0, 2.0, 0, 0};
    for (int i = 0; i < expectedK.length; i++) {
      assertEquals(expectedK[i], outlook.leadMarginK(tonight - 1 + i), 1e-12, "night " + i);
    }
    assertEquals(0, Outlook.NONE.leadMarginK(0));
  }

  @Test
  void whatThePlanHadAndTheLogHasNotIsSaid() {
    Inventory garden = garden("MAPLE-6");
    Progress progress =
        new Progress(
            NOV_10,
            List.of(),
            List.of(
                new MovePlanned("MAPLE-6", "move-down", LocalDate.of(2014, 11, 8), "Hedge foot"),
                new MovePlanned("GONE", "move-in", LocalDate.of(2014, 11, 8), "Shed")),
            Set.of("MAPLE-6", "OTHER"));
    SeasonPlan season =
        SeasonPlanner.plan(
                new Question(
                    garden, upTo(NOV_10), Map.of(), OptionalInt.empty(), Optional.of(progress)))
            .orElseThrow();
    List<String> codes = season.notes().stream().map(n -> n.code()).toList();
    assertTrue(codes.containsAll(List.of("PL-440", "PL-444", "PL-445")), codes::toString);
    assertFalse(codes.contains("PL-441"), codes::toString);
    assertTrue(
        season.notes().stream()
            .filter(n -> n.code().equals("PL-445"))
            .allMatch(
                n ->
                    n.found().contains("the log: MAPLE-6; ticked")
                        && n.found().endsWith("the log: MAPLE-6")));
  }
}
