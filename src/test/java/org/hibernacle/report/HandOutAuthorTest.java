package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Group;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.NightTrigger;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Task;
import org.junit.jupiter.api.Test;

/** What the hand-out says, held against the plan. */
class HandOutAuthorTest {
  private static final Words WORDS = Words.of(Locale.UK);
  private static final SeasonPlan PLAN = Fixtures.plan();

  /** A fortnight in January in which nothing is carried. */
  private static final DateSpan MIDWINTER =
      new DateSpan(LocalDate.of(2027, 1, 10), LocalDate.of(2027, 1, 20));

  private static List<HandOut> editions(DateSpan days) {
    return HandOutAuthor.editions(PLAN, Fixtures.facts(), WORDS, days);
  }

  private static List<HandOut.Item> items(HandOut handOut, String part) {
    String morning = new Display(WORDS).longDay(handOut.dated());
    return handOut.parts().stream()
        .filter(p -> p.title().equals(WORDS.text("handout." + part, morning)))
        .findFirst()
        .orElseThrow()
        .items();
  }

  private static String text(List<HandOut.Item> items) {
    return items.stream().map(i -> i.label() + " " + i.text()).collect(Collectors.joining("\n"));
  }

  /** Each month of the season. */
  private static List<DateSpan> months() {
    List<DateSpan> months = new ArrayList<>();
    for (LocalDate day = PLAN.season().start();
        day.isBefore(PLAN.season().endExclusive());
        day = day.plusMonths(1)) {
      months.add(new DateSpan(day, day.plusMonths(1)));
    }
    return months;
  }

  @Test
  void eachMoveStandsUnderItsDayOnceAndNoOther() {
    Display display = new Display(WORDS);
    int told = 0;
    for (DateSpan month : months()) {
      String text = text(items(editions(month).get(0), "days"));
      for (PlantMove pm : PLAN.movesByDate()) {
        if (month.contains(pm.move().date())) {
          String day = display.longDay(pm.move().date());
          assertTrue(text.contains(day), day + " in " + text);
          String ofDay = text.substring(text.indexOf(day));
          assertTrue(ofDay.contains(pm.plan().plant().id()), pm.plan().plant().id() + ": " + ofDay);
          told++;
        }
      }
    }
    assertEquals(PLAN.movesByDate().size(), told);
  }

  @Test
  void heavyPotsAskForTwoPeople() {
    PlantMove heavy =
        PLAN.movesByDate().stream().filter(MoveTable::heavy).findFirst().orElseThrow();
    LocalDate day = heavy.move().date();
    String text = text(items(editions(new DateSpan(day, day.plusDays(1))).get(0), "days"));
    assertTrue(
        text.contains("Two people or a trolley for") && text.contains(heavy.plan().plant().id()),
        text);
  }

  /** No forecast is called harmless that the plan does not know to be so. */
  @Test
  void noPlantIsToldAColderFigureThanThePlanKnows() {
    for (DateSpan month : months()) {
      for (HandOut edition : editions(month)) {
        List<HandOut.Item> cold = items(edition, "cold");
        for (PlantPlan p : PLAN.plants()) {
          for (NightTrigger t : p.nightTriggers()) {
            if (overlaps(t, month)) {
              assertCovered(cold, p.plant(), t);
            }
          }
        }
      }
    }
  }

  /** The figure of each place's first line is the warmest of its plants, rounded up. */
  @Test
  void thePlaceAsAWholeIsToldTheWarmestOfItsFigures() {
    for (DateSpan month : months()) {
      Map<String, Double> warmest = new TreeMap<>();
      for (PlantPlan p : PLAN.plants()) {
        p.nightTriggers().stream()
            .filter(t -> overlaps(t, month))
            .forEach(t -> warmest.merge(t.place().name(), Math.ceil(t.stationC()), Math::max));
      }
      for (HandOut edition : editions(month)) {
        List<HandOut.Item> cold = items(edition, "cold");
        warmest.forEach(
            (place, figure) ->
                assertEquals(
                    figure,
                    of(cold, place).stream()
                        .mapToDouble(HandOutAuthorTest::figure)
                        .max()
                        .orElseThrow(),
                    place + "\n" + text(cold)));
      }
    }
  }

  private static boolean overlaps(NightTrigger t, DateSpan days) {
    return t.fromInclusive().isBefore(days.toExclusive())
        && t.toExclusive().isAfter(days.fromInclusive());
  }

  /** Lines that tell a figure for that place. */
  private static List<HandOut.Item> of(List<HandOut.Item> cold, String place) {
    return cold.stream()
        .filter(i -> i.label().endsWith(" or colder:"))
        .filter(
            i -> i.text().startsWith(place + ": ") || i.text().matches(place + ", (all|both) .*"))
        .toList();
  }

  private static double figure(HandOut.Item item) {
    return Double.parseDouble(item.label().replaceAll(" \u00b0C or colder:", ""));
  }

  /** Whoever is named counts by that line; others by each line that leaves some unnamed. */
  private static void assertCovered(List<HandOut.Item> cold, Plant plant, NightTrigger t) {
    List<HandOut.Item> there = of(cold, t.place().name());
    List<HandOut.Item> named =
        there.stream().filter(i -> i.text().matches("(?s).*\\b" + plant.id() + "\\b.*")).toList();
    List<HandOut.Item> meant =
        named.isEmpty()
            ? there.stream()
                .filter(i -> i.text().matches(".*, (all|both) .*") || i.text().contains(" more ("))
                .toList()
            : named;
    String told = plant.id() + " " + t + "\n" + text(cold);
    assertFalse(meant.isEmpty(), told);
    meant.forEach(i -> assertTrue(figure(i) >= t.stationC(), told));
  }

  @Test
  void eachPotIsSaidToStandSomewhere() {
    String where = text(items(editions(MIDWINTER).get(0), "where"));
    PLAN.plants().forEach(p -> assertTrue(where.contains(p.plant().id()), p.plant().id()));
    int pots = PLAN.plants().stream().mapToInt(p -> p.plant().count()).sum();
    int told =
        items(editions(MIDWINTER).get(0), "where").stream()
            .mapToInt(i -> Integer.parseInt(i.label().replaceAll(".*\\((\\d+) pots?\\):", "$1")))
            .sum();
    assertEquals(pots, told);
  }

  @Test
  void whatWasNotLookedUpIsNotCalledSafe() {
    String care = text(items(editions(months().get(4)).get(0), "care"));
    for (PlantPlan p : PLAN.plants()) {
      boolean listed = care.matches("(?s).*\\b" + p.plant().id() + "\\b.*");
      assertEquals(
          p.plant().species().toxic() != org.hibernacle.model.Species.Toxicity.NO,
          listed,
          p.plant().id());
    }
  }

  @Test
  void whatIsLeftOutOfAShortEditionIsSaid() {
    SeasonPlan large = HandOutFixtures.garden(30, PLAN.inventory().settings());
    DateSpan days = new DateSpan(LocalDate.of(2026, 10, 20), LocalDate.of(2026, 11, 20));
    List<HandOut> editions = HandOutAuthor.editions(large, Fixtures.facts(), WORDS, days);
    int before = Integer.MAX_VALUE;
    for (HandOut edition : editions) {
      int length = edition.parts().stream().mapToInt(p -> text(p.items()).length()).sum();
      assertTrue(length < before, "each edition is shorter");
      before = length;
    }
    String shortest = text(items(editions.get(editions.size() - 1), "where"));
    assertTrue(shortest.contains(" more (the season calendar names them)"), shortest);
  }

  private static SeasonPlan of(List<PlantPlan> plants, List<Task> tasks) {
    return new SeasonPlan(
        PLAN.season(),
        PLAN.inventory(),
        PLAN.caution(),
        PLAN.winters(),
        plants,
        PLAN.places(),
        tasks,
        PLAN.traces(),
        PLAN.notes());
  }

  private static HandOut fullest(SeasonPlan plan, DateSpan days) {
    return HandOutAuthor.editions(plan, Fixtures.facts(), WORDS, days).get(0);
  }

  @Test
  void eachPlaceInWhichPotsStandIsToldHowToWater() {
    String water = text(items(editions(MIDWINTER).get(0), "water"));
    assertTrue(water.contains("Bench, North bed: " + WORDS.text("rule.water.outside")), water);
    assertTrue(
        water.contains("Shed, Glasshouse, Spare room: " + WORDS.text("rule.water.store")), water);
    assertTrue(water.contains("Hall: " + WORDS.text("rule.water.warm")), water);
  }

  @Test
  void heatThatFailsIsToldForWhatNeverLeavesIt() {
    Task task =
        new Task(
            Task.Kind.POWER_FAILURE,
            PLAN.season().coreStart(),
            PLAN.season().coreEndExclusive().minusDays(1),
            "Hall",
            List.of("P-11"),
            OptionalDouble.of(-3));
    String power = text(items(fullest(of(PLAN.plants(), List.of(task)), MIDWINTER), "power"));
    assertTrue(power.contains("Hall: ") && power.contains("P-11"), power);
  }

  @Test
  void potsStandWhereTheyStoodBeforeTheFirstMoves() {
    LocalDate day = LocalDate.of(2027, 1, 30);
    HandOut handOut = fullest(PLAN, new DateSpan(day, day.plusDays(3)));
    List<HandOut.Item> where = items(handOut, "where");
    assertTrue(
        text(where.stream().filter(i -> i.label().startsWith("Spare room")).toList())
            .contains("P-12"),
        text(where));
    assertTrue(text(items(handOut, "days")).contains("Carry 6 pots from Spare room to Bench"));
  }

  @Test
  void aWrapIsToldOnceInTheWordsOfItsCover() {
    LocalDate day = LocalDate.of(2026, 11, 28);
    Task task =
        new Task(Task.Kind.WRAP, day, day, "Bench", List.of("P-15"), OptionalDouble.empty());
    DateSpan days = new DateSpan(day, day.plusDays(1));
    String fleece = text(items(fullest(of(PLAN.plants(), List.of(task)), days), "days"));
    assertEquals(2, fleece.split("P-15", -1).length, fleece);
    assertTrue(fleece.contains("fleece or sacking"), fleece);
    Place bed = Fixtures.BED.wrapped("North bed, wrapped", Place.Cover.MULCH, 20);
    Move wrap = new Move(Move.Kind.WRAP, day, Fixtures.BED, bed, Optional.empty(), List.of());
    PlantPlan tub =
        HandOutFixtures.in(
            plant("P-15"),
            plant("P-15").plant().species().group(),
            List.of(
                new Stay(Fixtures.BED, PLAN.season().start(), day),
                new Stay(bed, day, PLAN.season().endExclusive())),
            List.of(wrap),
            -9);
    String mulch = text(items(fullest(of(List.of(tub), List.of(task)), days), "days"));
    assertTrue(mulch.contains("ring of mulch") && !mulch.contains("fleece"), mulch);
    assertEquals(2, mulch.split("P-15", -1).length, mulch);
  }

  private static PlantPlan plant(String id) {
    return PLAN.plants().stream().filter(p -> p.plant().id().equals(id)).findFirst().orElseThrow();
  }

  /** Before a cold night a fig goes into the heat, a larch under any roof, what is dug in stays. */
  @Test
  void helpForAColdNightSuitsThePot() {
    LocalDate in = LocalDate.of(2026, 10, 3);
    Stay after = new Stay(Fixtures.HALL, in, PLAN.season().endExclusive());
    PlantPlan fig =
        HandOutFixtures.in(
            plant("P-04"),
            Group.TROPICAL,
            List.of(new Stay(Fixtures.BENCH, PLAN.season().start(), in), after),
            List.of(),
            8);
    PlantPlan dugIn =
        HandOutFixtures.in(
            plant("P-02"),
            Group.HARDY_CONIFER,
            List.of(new Stay(Fixtures.BED, PLAN.season().start(), PLAN.season().endExclusive())),
            List.of(),
            -12);
    HandOut handOut =
        fullest(
            of(List.of(plant("P-01"), fig, dugIn), List.of()),
            new DateSpan(in.minusDays(9), in.minusDays(2)));
    String cold = text(items(handOut, "cold"));
    assertTrue(under(cold, "TENDER").contains("P-04 Ficus microcarpa \u2013 to Hall"), cold);
    assertFalse(under(cold, "TENDER").contains("P-01"), cold);
    assertTrue(under(cold, "BENCH").contains("P-01"), cold);
    assertFalse(under(cold, "BENCH").contains("P-04"), cold);
    assertTrue(under(cold, "STANDS").contains("P-02"), cold);
    assertFalse(under(cold, "STANDS").contains("carry"), cold);
  }

  /** What follows the heading of that shelter, to the next one. */
  private static String under(String cold, String shelter) {
    String heading = WORDS.text("handout.shelter." + shelter);
    String rest = cold.substring(cold.indexOf(heading) + heading.length());
    return rest.replaceAll("(?s)\n(In the open|On the ground|Under a roof|In a heated).*", "");
  }

  @Test
  void theWarmthToBeWarnedAtIsGiven() {
    Task task =
        PLAN.tasks().stream()
            .filter(t -> t.kind() == Task.Kind.WAKING_ALARM)
            .findFirst()
            .orElseThrow();
    String days =
        text(items(fullest(PLAN, new DateSpan(task.from(), task.from().plusDays(1))), "days"));
    assertTrue(days.contains(WORDS.text("task.WAKING_ALARM") + " \u2013 10.0 \u00b0C"), days);
  }

  @Test
  void potsThatComeOrGoAreNotCounted() {
    DateSpan autumn = new DateSpan(LocalDate.of(2026, 10, 20), LocalDate.of(2026, 11, 20));
    for (HandOut edition : editions(autumn)) {
      for (HandOut.Item item : items(edition, "cold")) {
        assertFalse(item.text().matches("(Bench|North bed|Shed), all \\d+ pots"), item.text());
      }
    }
    String settled = text(items(editions(MIDWINTER).get(2), "cold"));
    assertTrue(settled.matches("(?s).*North bed, all \\d+ pots.*"), settled);
  }

  /** The bench is told with a count from the day after on which the last pot came home. */
  @Test
  void allListsCountThePotsOfTheMorningOfTheFirstDay() {
    for (PlantMove pm : PLAN.movesByDate()) {
      LocalDate day = pm.move().date();
      HandOut handOut = fullest(PLAN, new DateSpan(day, day.plusDays(1)));
      String where = text(items(handOut, "where"));
      String cold = text(items(handOut, "cold"));
      Matcher told = Pattern.compile("([\\w ]+), all (\\d+) pots").matcher(cold);
      while (told.find()) {
        String place = told.group(1).strip();
        assertTrue(where.contains(place + " (" + told.group(2) + " pots)"), where + cold);
        assertFalse(place.equals(pm.move().from().floorOf()), cold);
        assertFalse(place.equals(pm.move().to().floorOf()), cold);
      }
      String morning = new Display(WORDS).longDay(day);
      assertEquals(
          PLAN.movesByDate().stream()
              .map(PlantMove::move)
              .anyMatch(m -> m.date().equals(day) && m.kind().carries()),
          cold.contains(WORDS.text("handout.cold.counted", morning)),
          cold);
      assertTrue(
          handOut.parts().stream()
              .anyMatch(p -> p.title().equals(WORDS.text("handout.where", morning))));
    }
  }

  /** On a bench with wrapped and bare pots it is told which ones are meant. */
  @Test
  void wrappedPotsAndBareOnesOfOneBenchAreToldApart() {
    Place wrap = Fixtures.BENCH.wrapped("Bench" + Place.WRAPPED, Place.Cover.FLEECE, 0);
    LocalDate from = PLAN.season().start();
    LocalDate to = PLAN.season().endExclusive();
    List<PlantPlan> pots = new ArrayList<>();
    for (String id : List.of("P-01", "P-02", "P-03", "P-04")) {
      Place place = id.compareTo("P-03") < 0 ? wrap : Fixtures.BENCH;
      List<Stay> stays = List.of(new Stay(place, from, to));
      pots.add(HandOutFixtures.in(plant(id), Group.HARDY_CONIFER, stays, List.of(), -9));
    }
    String cold = text(items(fullest(of(pots, List.of()), MIDWINTER), "cold"));
    assertFalse(cold.matches("(?s).*, (all|both) .*"), cold);
    pots.forEach(p -> assertTrue(cold.contains(p.plant().id()), cold));
  }

  @Test
  void aQuietFortnightSaysSo() {
    SeasonPlan quiet = of(List.of(), List.of());
    HandOut handOut =
        HandOutAuthor.editions(quiet, Fixtures.facts(), WORDS, months().get(6)).get(0);
    String nothing = items(handOut, "days").get(0).text();
    assertEquals(WORDS.text("handout.days.none"), nothing);
    assertTrue(nothing.contains("nothing to carry") && nothing.contains("water"), nothing);
    assertEquals(WORDS.text("handout.cold.none"), items(handOut, "cold").get(0).text());
    assertFalse(handOut.parts().stream().anyMatch(p -> p.title().contains("power")));
  }
}
