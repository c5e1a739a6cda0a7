package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.Settings;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Row;
import org.junit.jupiter.api.Test;

class ReportAuthorTest {
  private static final SeasonReport REPORT = write(Settings.Units.METRIC, Locale.UK);
  private static final Display DISPLAY = new Display(Words.of(Locale.UK));

  private static SeasonReport write(Settings.Units units, Locale language) {
    return ReportAuthor.write(
        Fixtures.plan(Fixtures.settings(units, language)), Fixtures.facts(), Words.of(language));
  }

  private static int column(Section section, String id) {
    List<String> ids = section.columns().stream().map(Column::id).toList();
    assertTrue(ids.contains(id), id + " is none of " + ids);
    return ids.indexOf(id);
  }

  private static Row plant(SeasonReport report, String id) {
    return report.section("season-plan").rows().stream()
        .filter(row -> row.cells().get(0).equals(new Cell.Text(id)))
        .findFirst()
        .orElseThrow();
  }

  private static String cell(String plantId, String columnId) {
    int column = column(REPORT.section("season-plan"), columnId);
    return DISPLAY.text(plant(REPORT, plantId).cells().get(column));
  }

  @Test
  void namesTheColumnsThatAReaderLooksFor() {
    List<String> headings =
        REPORT.section("season-plan").columns().stream().map(Column::heading).toList();
    assertTrue(
        headings.containsAll(
            List.of("Id", "Species", "Place", "Move-down", "Move-in", "Return-to-bench")),
        headings.toString());
  }

  @Test
  void givesTheReasonOfAMoveWithItsNumbers() {
    assertEquals(
        "Down by Sat 14 Nov: a moving day later the root ball at Bench would have fallen to"
            + " -6.1 °C on 15 Nov 2024, when its limit was -4.0 °C; 2.0 K are kept in hand."
            + " Home from Sat 13 Mar: a moving day earlier the root ball would have fallen to"
            + " -5.3 °C there on 8 Mar 2025, when its limit was -4.0 °C.",
        cell("P-02", "why"));
  }

  @Test
  void marksALimitThatIsAnEstimateAndOneOfTheKeepersOwn() {
    assertTrue(cell("P-10", "why").contains("limit (an estimate) was -4.0 °C"));
    assertTrue(cell("P-09", "why").contains("limit (your figure) was -4.0 °C"));
    assertFalse(cell("P-02", "why").contains("estimate"), cell("P-02", "why"));
  }

  @Test
  void tellsWhyAPlantStaysAndLeavesItsDatesBlank() {
    assertEquals(
        "Safe at Bench: on 22 Jan 2025, when its root ball came closest to its limit (an"
            + " estimate), it was at -7.2 °C against -11.0 °C.",
        cell("P-01", "why"));
    for (String date : List.of("move-down", "move-in", "step-out", "return")) {
      assertEquals("", cell("P-01", date));
    }
    assertEquals("stays out", cell("P-01", "status"));
    assertEquals("lives indoors", cell("P-11", "status"));
  }

  @Test
  void saysWhatBreaksByHowMuchInHowManyWintersAndWhatWouldHelp() {
    String why = cell("P-05", "why");
    assertTrue(why.contains("would have fallen to -7.5 °C on 22 Jan 2025"), why);
    assertTrue(
        why.contains("with 2.0 K in hand was missed by 5.5 K at worst, in 3 of 10 winters"), why);
    assertTrue(why.contains("What would help: deep mulch"), why);
    assertEquals("7 of 10 winters", cell("P-05", "held"));
    assertEquals("CANNOT BE PROTECTED", cell("P-05", "status"));
    assertEquals(StyleRole.DANGER, plant(REPORT, "P-05").role());
  }

  @Test
  void admitsTheWinterThatTheAcceptedRiskLetsFail() {
    String why = cell("P-10", "why");
    assertTrue(why.contains("In 1 of 10 winters on file, which is the risk you accept"), why);
    assertEquals("9 of 10 winters", cell("P-10", "held"));
    assertEquals("moves", cell("P-10", "status"));
  }

  @Test
  void doesNotContradictItselfByRounding() {
    // -2.02 °C breaks -4 °C with 2 K in hand, though both read as -2.0.
    assertTrue(cell("P-10", "why").contains("would have fallen to just below -2.0 °C there"));
    // 5.03 °C is more than 5 °C.
    assertTrue(cell("P-06", "why").contains("would have averaged just above 5.0 °C"));
  }

  @Test
  void tellsAFrozenBallFromOneThatBeginsToFreeze() {
    String why = cell("P-08", "why");
    assertTrue(why.contains("would have frozen, to -0.2 °C, on 1 Nov 2024"), why);
    assertTrue(why.contains("would have begun to freeze on 12 Apr 2025, and its pot"), why);
    assertTrue(cell("P-03", "why").contains("soon after its roots are cut"));
  }

  @Test
  void claimsAMovingDayOnlyWhereOneMovingDayDecides() {
    // Out of reach of the next moving day; before the moving day before; after the date itself.
    assertTrue(cell("P-10", "why").contains("Down by Sat 14 Nov: left where it was, the root"));
    assertTrue(cell("P-05", "why").contains("Home from Sat 10 Apr: some moving days earlier the"));
    assertTrue(cell("P-09", "why").contains("Home from Sat 20 Mar: had it come earlier, the air"));
  }

  @Test
  void explainsAReturnThatNoFrostHoldsBack() {
    // The moving day before Sat 30 Jan is Sun 24 Jan; the one before Sat 20 Mar is Sun 14 Mar,
    // eight nights after Sat 6 Mar.
    String midwinter = "Home from Sat 30 Jan: nothing goes home before Fri 29 Jan, a fortnight";
    assertTrue(cell("P-12", "why").contains(midwinter), cell("P-12", "why"));
    String stay = "Home from Sat 20 Mar: a pot stands 14 nights at least before";
    assertTrue(cell("P-06", "why").contains(stay), cell("P-06", "why"));
  }

  @Test
  void beginsWithTheFirstMovingDayAndWhatIsInDanger() {
    List<SeasonReport.Fact> facts = REPORT.overview();
    assertEquals("First moving day", facts.get(0).label());
    assertEquals("Saturday 19 September 2026: P-04 Ficus microcarpa", facts.get(0).text());
    assertEquals("21 in 16 rows of the inventory", facts.get(1).text());
    assertEquals("CANNOT BE PROTECTED", facts.get(2).label());
    assertTrue(facts.get(2).text().startsWith("4: P-05 Punica granatum, P-06"));
    assertEquals(StyleRole.DANGER, facts.get(2).role());
    assertEquals("2: P-01 Larix decidua, P-11 + Aunt", facts.get(3).text());
  }

  @Test
  void neverCallsAPlantSafeThatWasNotLookedUp() {
    assertEquals("poison not looked up", cell("P-01", "poison"));
    assertEquals("poisonous", cell("P-04", "poison"));
    assertEquals("no poison known", cell("P-09", "poison"));
  }

  @Test
  void ordersPlantsByNameAndMovesByDate() {
    int name = column(REPORT.section("season-plan"), "name");
    List<String> names =
        REPORT.section("season-plan").rows().stream()
            .map(row -> DISPLAY.text(row.cells().get(name)))
            .filter(text -> Character.isLetter(text.charAt(0)))
            .toList();
    assertEquals(names.stream().sorted(String.CASE_INSENSITIVE_ORDER).toList(), names);
    List<LocalDate> dates =
        REPORT.section("moving-days").rows().stream()
            .map(row -> ((Cell.Day) row.cells().get(0)).date())
            .toList();
    assertEquals(dates.stream().sorted().toList(), dates);
  }

  @Test
  void asksForTwoPeopleAboveTheLoadConstantOfTheLiftingEquation() {
    // 23 kg: Waters, Putz-Anderson and Garg 1994, DHHS (NIOSH) 94-110.
    Section moves = REPORT.section("moving-days");
    for (Row row : moves.rows()) {
      double kg = ((Cell.Quantity) row.cells().get(column(moves, "kg-each"))).value();
      boolean two = row.cells().get(column(moves, "people")) instanceof Cell.Level;
      boolean carried = !DISPLAY.text(row.cells().get(column(moves, "move"))).contains("wrap");
      assertEquals(carried && kg > 23, two, "kg " + kg);
    }
    int people = column(moves, "people");
    assertTrue(moves.rows().stream().anyMatch(r -> r.cells().get(people) instanceof Cell.Level));
  }

  @Test
  void showsAPlaceThatIsAskedForMoreThanItHas() {
    Section places = REPORT.section("places");
    Row shed = places.rows().get(2);
    assertEquals(StyleRole.DANGER, shed.role());
    assertEquals("OVERFULL", DISPLAY.text(shed.cells().get(column(places, "overfull"))));
    double left = ((Cell.Quantity) shed.cells().get(column(places, "room-left"))).value();
    // Four plants of 0.55 m squared each in 1 m2.
    assertEquals(1 - 4 * 0.55 * 0.55, left, 1e-9);
    assertInstanceOf(Cell.Gap.class, places.rows().get(0).cells().get(column(places, "room")));
  }

  @Test
  void marksTheWeeksInWhichAPlaceIsOverfull() {
    Section weeks = REPORT.section("occupancy");
    int shed = column(weeks, "place-3");
    assertEquals("Shed (of 1.0 m2)", weeks.columns().get(shed).heading());
    for (Row row : weeks.rows()) {
      if (row.cells().get(shed) instanceof Cell.Quantity used) {
        assertEquals(used.value() > 1, used.role() == StyleRole.DANGER, row.toString());
      }
    }
    assertTrue(
        weeks.rows().stream()
            .anyMatch(
                row ->
                    row.cells().get(shed) instanceof Cell.Quantity used
                        && used.role() == StyleRole.DANGER));
  }

  @Test
  void neverShowsMinusZero() {
    assertEquals(0.0, new Cell.Quantity(-0.04, "", 1).value());
    assertEquals("0.0", DISPLAY.text(new Cell.Quantity(-0.04, "", 1)));
    assertEquals("-0.1", DISPLAY.text(new Cell.Quantity(-0.05, "", 1)));
    assertEquals(0.04, new Cell.Quantity(0.04, "", 1).value(), "full number");
  }

  @Test
  void drawsFewLinesFromSeptemberToMay() {
    TemperatureChart chart = REPORT.chart();
    assertEquals(
        List.of("Air", "Bench", "North bed", "Shed", "Glasshouse"),
        chart.lines().stream().map(line -> line.name().replaceFirst(", .*", "")).toList());
    assertEquals(LocalDate.of(2024, 9, 1), chart.days().get(0));
    assertEquals(LocalDate.of(2025, 5, 31), chart.days().get(chart.days().size() - 1));
  }

  @Test
  void convertsDifferencesWithoutThe32() {
    SeasonReport us = write(Settings.Units.US, Locale.US);
    int margin = column(us.section("season-plan"), "margin");
    // -1.75 against -4 °C: 2.25 K, 2.25 x 9/5 = 4.05 °F.
    Cell.Quantity cell = (Cell.Quantity) plant(us, "P-02").cells().get(margin);
    assertEquals(4.05, cell.value(), 1e-9);
    assertEquals("Smallest margin (°F)", us.section("season-plan").columns().get(margin).heading());
    String why =
        DISPLAY.text(plant(us, "P-02").cells().get(column(us.section("season-plan"), "why")));
    // -6.1 °C x 9/5 + 32 = 21.02 °F; 2 K are 3.6 °F.
    assertTrue(why.contains("fallen to 21.0 °F on Nov 15 2024"), why);
    assertTrue(why.contains("3.6 °F are kept in hand"), why);
    assertTrue(us.letterPaper());
  }

  @Test
  void givesNumbersAndDaysColumnsThatAreWideEnough() {
    // A spreadsheet shows a row of hashes for a number that is wider than its column.
    for (Locale language : List.of(Locale.UK, Locale.US, Locale.GERMANY)) {
      Display display = new Display(Words.of(language));
      for (Section section : write(Settings.Units.US, language).sections()) {
        for (Row row : section.rows()) {
          for (int i = 0; i < row.cells().size(); i++) {
            Cell cell = row.cells().get(i);
            if (cell instanceof Cell.Quantity || cell instanceof Cell.Day) {
              String text = display.text(cell);
              Column column = section.columns().get(i);
              assertTrue(text.length() + 1 <= column.width(), column.id() + ": " + text);
            }
          }
        }
      }
    }
  }

  @Test
  void fillsTheCalendarFromTheFirstThingToDoToTheLastWithoutAGap() {
    List<YearMonth> months = REPORT.months().stream().map(MonthPage::month).toList();
    assertEquals(YearMonth.of(2026, 9), months.get(0));
    assertEquals(YearMonth.of(2027, 6), months.get(months.size() - 1));
    for (int i = 1; i < months.size(); i++) {
      assertEquals(months.get(i - 1).plusMonths(1), months.get(i));
    }
    MonthPage november = REPORT.months().get(2);
    MonthPage.DayEntry day =
        november.entries().stream()
            .filter(e -> e.date().equals(LocalDate.of(2026, 11, 14)))
            .findFirst()
            .orElseThrow();
    assertEquals("down", day.lines().get(0).mark());
    assertEquals("to North bed: P-02 =Old pine, P-10 Acer palmatum", day.lines().get(0).text());
    assertEquals("to North bed: P-02, P-10", day.lines().get(0).brief());
  }

  @Test
  void drawsTheChartFromColumnsOfTheTemperatureTable() {
    List<String> headings =
        REPORT.section("temperatures").columns().stream().map(Column::heading).toList();
    for (TemperatureChart.Line line : REPORT.chart().lines()) {
      int column = headings.indexOf(line.name());
      assertTrue(column > 0, line.name());
      List<Double> values =
          REPORT.section("temperatures").rows().stream()
              .map(row -> ((Cell.Quantity) row.cells().get(column)).value())
              .toList();
      assertEquals(values.size(), line.values().size());
      IntStream.range(0, values.size())
          .forEach(i -> assertEquals(values.get(i), line.values().get(i), 0.05));
    }
  }

  @Test
  void carriesAnEarlierLogOverWithColumnsAndPlantsThatAreGone() {
    SheetTable log =
        new SheetTable(
            "Log",
            List.of("Id", "NAME ", "Real move-down", "Outcome", "Shelf"),
            List.of(
                List.of("P-02", "x", LocalDate.of(2026, 11, 15), "NO_DAMAGE", 4.0),
                List.of("Z-99", "Gone oak", "", "DEAD", "attic"),
                List.of("", "", "", "", "")));
    SeasonReport report =
        ReportAuthor.write(
            Fixtures.plan(),
            Fixtures.facts(
                Optional.of(
                    new LogSheet(log, List.of("id", "name", "real-move-down", "outcome", "")))),
            Words.of(Locale.UK));
    Section section = report.section("log");
    Row pine =
        section.rows().stream()
            .filter(r -> r.cells().get(0).equals(new Cell.Text("P-02")))
            .findFirst()
            .orElseThrow();
    assertEquals(
        new Cell.Day(LocalDate.of(2026, 11, 15)),
        pine.cells().get(column(section, "real-move-down")));
    assertEquals(new Cell.Quantity(4, "", 0), pine.cells().get(column(section, "own-1")));
    Row gone = section.rows().get(section.rows().size() - 1);
    assertEquals(new Cell.Text("Z-99"), gone.cells().get(0));
    assertEquals(new Cell.Text("Gone oak"), gone.cells().get(1));
    assertEquals(new Cell.Text("dead"), gone.cells().get(column(section, "outcome")));
    assertEquals(REPORT.section("log").rows().size() + 1, section.rows().size());
  }

  @Test
  void changesTheDigestWithEveryInputOptionAndVersionOnly() {
    RunFacts facts = Fixtures.facts();
    RunFacts renamed =
        new RunFacts(
            facts.programVersion(),
            facts.inputs().stream().map(i -> new RunFacts.InputFile("other", i.sha256())).toList(),
            List.of(),
            facts.options(),
            List.of(),
            Optional.empty());
    assertEquals(facts.digest(), renamed.digest());
    assertEquals(16, facts.digest().length());
    RunFacts otherOption =
        new RunFacts(
            facts.programVersion(),
            facts.inputs(),
            facts.diagnostics(),
            List.of("--season 2027"),
            facts.remarks(),
            Optional.empty());
    assertNotEquals(facts.digest(), otherOption.digest());
  }

  @Test
  void warnsOfWhatHurtsPeople() {
    String all =
        REPORT.section("notes").rows().stream()
            .filter(row -> row.role() == StyleRole.CAUTION)
            .map(row -> DISPLAY.text(row.cells().get(1)))
            .collect(Collectors.joining(" "));
    for (String word :
        List.of("carbon monoxide", "charcoal", "electrician", "23 kg", "ice", "label", "vents")) {
      assertTrue(all.contains(word), word);
    }
  }
}
