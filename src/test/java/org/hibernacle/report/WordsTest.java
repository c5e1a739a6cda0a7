package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.NewPlace;
import org.hibernacle.planning.PlaceFit;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Task;
import org.hibernacle.planning.WinterJudged;
import org.hibernacle.review.SeasonReview;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
  private static final ResourceBundle ENGLISH = ResourceBundle.getBundle(Words.BUNDLE, Locale.ROOT);

  /** Takes down which keys were asked for. */
  private static final class Recorder extends ResourceBundle {
    private final Set<String> asked = new TreeSet<>();

    @Override
    protected Object handleGetObject(String key) {
      asked.add(key);
      return ENGLISH.getString(key);
    }

    @Override
    public boolean containsKey(String key) {
      return ENGLISH.containsKey(key);
    }

    @Override
    public Enumeration<String> getKeys() {
      return ENGLISH.getKeys();
    }
  }

  @Test
  void everyKeyIsUsedAndNoneIsMissing() {
    Recorder recorder = new Recorder();
    Words words = new Words(Locale.UK, recorder);
    SeasonPlan plan = Fixtures.plan();
    ReportAuthor.write(plan, Fixtures.facts(), words);
    LabelAuthor.write(plan, Fixtures.facts(), words);
    AgendaAuthor.write(plan, Fixtures.facts(), words);
    AgendaAuthor.write(Fixtures.inSeason(plan, OptionalDouble.of(1)), Fixtures.facts(), words);
    AgendaAuthor.write(with(plan, 0, 2), Fixtures.afterAnotherPlan(plan), words);
    Agenda agenda = AgendaAuthor.write(plan, Fixtures.facts(), words);
    AgendaAuthor.write(with(plan, 0, 2), Fixtures.afterPublishing(plan, agenda, List.of()), words);
    ReportAuthor.write(Fixtures.withLogger(plan), Fixtures.facts(), words);
    RunFacts changed = Fixtures.afterAnotherPlan(plan);
    for (OptionalDouble tonightC :
        List.of(OptionalDouble.of(-6.5), OptionalDouble.of(2), OptionalDouble.empty())) {
      ReportAuthor.write(Fixtures.inSeason(plan, tonightC), changed, words);
    }
    ReportAuthor.write(Fixtures.withHelp(plan), Fixtures.facts(), words);
    for (NewPlace kind : NewPlace.values()) {
      words.of("remedy.place", kind);
    }
    words.text("overview.text.help.none");
    ReportAuthor.write(with(plan, 0, 1), Fixtures.facts(), words);
    ReportAuthor.write(with(plan, 5, 7), Fixtures.facts(), words);
    ExplanationFixture.all(plan).forEach(told -> PlantStory.write(told, Fixtures.facts(), words));
    Hindsight.write(List.of(new WinterJudged(plan.season(), 18, 2, 1, 900, 120)), words);
    review(ReviewFixtures.review(), words);
    review(ReviewFixtures.record(), words);
    review(ReviewFixtures.quiet(nameless(plan)), words);
    handOuts(plan, words);
    for (PlaceFit fit : PlaceFit.values()) {
      words.of("fit", fit);
    }
    Material material = Material.of(plan, Fixtures.facts(), words);
    assertEquals("a, b and 2 more", material.list(List.of("a", "b", "c", "d"), 2));
    for (Rule rule : Rule.values()) {
      words.of("advice", rule);
    }
    for (Task.Kind kind : Task.Kind.values()) {
      words.of("task", kind);
      words.of("task.short", kind);
    }
    for (Diagnostic.Severity severity : Diagnostic.Severity.values()) {
      words.of("severity", severity);
    }
    assertEquals("d MMM", new Display(words).axisPattern());
    // Words of the writers have tests of their own.
    Set<String> unused = new TreeSet<>(ENGLISH.keySet());
    unused.removeAll(recorder.asked);
    unused.removeIf(key -> key.startsWith("workbook.") || key.startsWith("paper."));
    assertEquals(Set.of(), unused);
  }

  /** Hand-outs of each month, of a garden too large for one, of an empty one. */
  private static void handOuts(SeasonPlan plan, Words words) {
    SeasonPlan large = HandOutFixtures.garden(40, plan.inventory().settings());
    SeasonPlan bare = with(plan, 0, 0);
    for (LocalDate day = plan.season().start();
        day.isBefore(plan.season().endExclusive());
        day = day.plusMonths(1)) {
      DateSpan month = new DateSpan(day, day.plusMonths(1));
      for (SeasonPlan each : List.of(plan, large, bare)) {
        HandOutAuthor.editions(each, Fixtures.facts(), words, month);
      }
    }
    // Of kinds of places and plants that the fixture has not, and of days too full for any fixture.
    for (String key :
        List.of(
            "rule.vent.door",
            "handout.days.left-out",
            "handout.until",
            "handout.shelter.ROOFED",
            "handout.shelter.HEATED",
            "handout.act.ROOFED",
            "handout.act.HEATED",
            "handout.shelter.TENDER",
            "handout.act.TENDER",
            "handout.cold.to",
            "handout.move.WRAP.MULCH")) {
      words.text(key, 1, "a");
    }
  }

  /** A plan with some of the plants only, at a site without a name. */
  private static SeasonPlan with(SeasonPlan plan, int from, int to) {
    SeasonPlan other = Fixtures.plan(nameless(plan));
    return new SeasonPlan(
        other.season(),
        other.inventory(),
        other.caution(),
        other.winters(),
        other.plants().subList(from, to),
        other.places().subList(0, 1),
        List.of(),
        other.traces(),
        List.of());
  }

  private static void review(SeasonReview review, Words words) {
    ReviewAuthor.write(review, Fixtures.facts(), words);
    ReviewAuthor.revision(review, Fixtures.facts(), words);
    ReviewAuthor.inventory(review, Fixtures.facts(), words, List.of(), List.of());
  }

  private static Settings nameless(SeasonPlan plan) {
    Settings s = plan.inventory().settings();
    return new Settings(
        "",
        s.siteColderByK(),
        s.latitudeDeg(),
        s.longitudeDeg(),
        s.zone(),
        s.units(),
        s.safetyMarginK(),
        s.acceptedRiskOfTen(),
        s.movingDays(),
        s.away(),
        s.plantsPerMovingDay(),
        s.minutesPerMovingDay(),
        s.paper(),
        s.firstDayOfWeek(),
        s.language());
  }

  @Test
  void everyTextIsAPatternWithItsApostrophesDoubled() {
    for (String key : ENGLISH.keySet()) {
      String text = ENGLISH.getString(key);
      assertFalse(text.isBlank() && !key.startsWith("list.joint"), key);
      assertFalse(text.replace("''", "").contains("'"), key + " has a single apostrophe: " + text);
      new MessageFormat(text, Locale.UK);
    }
  }

  @Test
  void aTranslationIsOneMoreFileAndTakesTheRestFromEnglish() {
    // words_eo.properties among the test resources holds a few keys only.
    Words words = Words.of(Locale.forLanguageTag("eo"));
    assertEquals("Planto", words.text("column.name"));
    assertEquals("Species", words.text("column.species"));
  }

  @Test
  void theMachinesLanguagePlaysNoPart() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("eo"));
      assertEquals("Name", Words.of(Locale.ENGLISH).text("column.name"));
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertEquals("lives indoors", Words.of(Locale.UK).text("status.stays-in"));
      assertEquals("-6.1", new Display(Words.of(Locale.UK)).number(-6.1, 1));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void roundsHalfUpAndNeverPrintsMinusZero() {
    Display display = new Display(Words.of(Locale.UK));
    assertEquals("0.0", display.number(-0.04, 1));
    assertEquals("-0.1", display.number(-0.06, 1));
    assertEquals("2.3", display.number(2.25, 1));
    assertEquals("24", display.number(23.5, 0));
    assertEquals("-6,1", new Display(Words.of(Locale.GERMANY)).number(-6.1, 1));
  }

  @Test
  void datesFollowTheLanguage() {
    LocalDate day = LocalDate.of(2026, 11, 14);
    Display british = new Display(Words.of(Locale.UK));
    assertEquals("Sat 14 Nov", british.day(day));
    assertEquals("Saturday 14 November 2026", british.longDay(day));
    assertEquals("14 Nov 2026", british.pastDay(day));
    assertEquals("Sat Nov 14", new Display(Words.of(Locale.US)).day(day));
    assertEquals("14 Nov 2026", british.text(new Cell.Day(day, true)));
  }

  /**
   * No bundle is there for these languages: English words, but days and numbers of their own. How a
   * day is written in them: Unicode CLDR, dates of the Gregorian calendar, from memory.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de-DE|Sa., 14. Nov.|14. Nov. 2026|14. Nov.|Samstag, 14. November 2026|November 2026|-6,1",
        "tr-TR|14 Kas Cmt|14 Kas 2026|14 Kas|14 Kasım 2026 Cumartesi|Kasım 2026|-6,1",
        "ja-JP|11月14日土|2026年11月14日|11月14日|2026年11月14日土曜日|2026年11月|-6.1",
        "es-ES|sáb, 14 de nov|14 de nov de 2026|14 de nov|sábado, 14 de noviembre de 2026"
            + "|noviembre de 2026|-6,1",
      })
  void aLanguageWithoutWordsHasItsOwnDaysAndNumbers(
      String tag, String day, String past, String axis, String full, String month, String number) {
    LocalDate date = LocalDate.of(2026, 11, 14);
    Words words = Words.of(Locale.forLanguageTag(tag));
    Display display = new Display(words);
    assertEquals(day, display.day(date));
    assertEquals(past, display.pastDay(date));
    assertEquals(axis, display.dayAndMonth(date));
    assertEquals(full, display.longDay(date));
    assertEquals(month, display.month(YearMonth.of(2026, 11)));
    assertEquals(number, display.number(-6.1, 1));
    assertEquals("Species", words.text("column.species"));
  }

  @Test
  void unitsFollowTheirDefinitions() {
    // 1 gal = 3.785411784 L, 1 lb = 0.45359237 kg, 1 ft = 0.3048 m exactly: NIST SP 811, App. B.8.
    Measures us = new Measures(new Display(Words.of(Locale.US)), Settings.Units.US);
    assertEquals("-40.0 °F", us.temperature(-40));
    assertEquals("32.0 °F", us.temperature(0));
    assertEquals("3.6 °F", us.difference(2));
    assertEquals("51 lb", us.mass(23));
    assertEquals("10.8 sq ft", us.area(1));
    assertEquals(new Cell.Quantity(1, "gal", 0), us.volumeWithUnit(3.785411784));
    Measures metric = new Measures(new Display(Words.of(Locale.UK)), Settings.Units.METRIC);
    assertEquals("-6.1 °C", metric.temperature(-6.1));
    assertEquals("2.0 K", metric.difference(2));
    assertEquals(Optional.of("23 kg"), Optional.of(metric.mass(23)));
  }
}
