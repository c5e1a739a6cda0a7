package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.NightTrigger;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.junit.jupiter.api.Test;

/** What the hand-out says, held against the plan. */
class HandOutAuthorTest {
  private static final Words WORDS = Words.of(Locale.UK);
  private static final SeasonPlan PLAN = Fixtures.plan();

  private static List<HandOut> editions(DateSpan days) {
    return HandOutAuthor.editions(PLAN, Fixtures.facts(), WORDS, days);
  }

  private static List<HandOut.Item> items(HandOut handOut, String part) {
    return handOut.parts().stream()
        .filter(p -> p.title().equals(WORDS.text("handout." + part)))
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
            if (t.fromInclusive().isBefore(month.toExclusive())
                && t.toExclusive().isAfter(month.fromInclusive())) {
              assertTrue(
                  cold.stream().anyMatch(i -> covers(i, p.plant(), t)),
                  p.plant().id() + " " + t + "\n" + text(cold));
            }
          }
        }
      }
    }
  }

  private static boolean covers(HandOut.Item item, Plant plant, NightTrigger t) {
    if (!item.label().endsWith(" or colder:") || !item.text().contains(t.place().name())) {
      return false;
    }
    double figure = Double.parseDouble(item.label().replaceAll(" \u00b0C or colder:", ""));
    boolean named =
        item.text().matches("(?s).*\\b" + plant.id() + "\\b.*")
            || item.text().matches(".*, (all|both) .*")
            || item.text().contains(" more (");
    return named && figure >= t.stationC();
  }

  @Test
  void eachPotIsSaidToStandSomewhere() {
    DateSpan midwinter = new DateSpan(LocalDate.of(2027, 1, 10), LocalDate.of(2027, 1, 20));
    String where = text(items(editions(midwinter).get(0), "where"));
    PLAN.plants().forEach(p -> assertTrue(where.contains(p.plant().id()), p.plant().id()));
    int pots = PLAN.plants().stream().mapToInt(p -> p.plant().count()).sum();
    int told =
        items(editions(midwinter).get(0), "where").stream()
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

  @Test
  void aQuietFortnightSaysSo() {
    SeasonPlan quiet =
        new SeasonPlan(
            PLAN.season(),
            PLAN.inventory(),
            PLAN.caution(),
            PLAN.winters(),
            List.of(),
            PLAN.places(),
            List.of(),
            PLAN.traces(),
            PLAN.notes());
    HandOut handOut =
        HandOutAuthor.editions(quiet, Fixtures.facts(), WORDS, months().get(6)).get(0);
    assertEquals(WORDS.text("handout.days.none"), items(handOut, "days").get(0).text());
    assertEquals(WORDS.text("handout.cold.none"), items(handOut, "cold").get(0).text());
    assertFalse(handOut.parts().stream().anyMatch(p -> p.title().contains("power")));
  }
}
