package org.hibernacle.report.ics;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import biweekly.io.text.ICalReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CodingErrorAction;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TimeZone;
import java.util.UUID;
import java.util.regex.Pattern;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Tick;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Task;
import org.hibernacle.report.Agenda;
import org.hibernacle.report.AgendaAuthor;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.Section;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The file read back with another library, against RFC 5545 and against the report. */
class CalendarFileTest {
  private static final Words WORDS = Words.of(Locale.UK);

  private static Agenda agenda(SeasonPlan plan) {
    return AgendaAuthor.write(plan, Fixtures.facts(), WORDS);
  }

  private static byte[] bytes(Agenda agenda) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarFile.write(agenda, out);
    return out.toByteArray();
  }

  private static ICalendar read(Agenda agenda) throws IOException {
    String text = new String(bytes(agenda), UTF_8);
    try (ICalReader reader = new ICalReader(text)) {
      ICalendar calendar = reader.readNext();
      assertEquals(List.<ParseWarning>of(), reader.getWarnings());
      return calendar;
    }
  }

  private static List<String> cells(Section section, String column) {
    Display display = new Display(WORDS);
    int at = section.columns().stream().map(Section.Column::id).toList().indexOf(column);
    return section.rows().stream().map(row -> display.text(row.cells().get(at))).toList();
  }

  private static boolean isMovingDay(VEvent event) {
    return event.getSummary().getValue().matches("(Move|Wrap or unwrap) \\d+ pots?(, .*)?");
  }

  private static LocalDate day(VEvent event) {
    return event.getDateStart().getValue().toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
  }

  @Test
  void aSecondLibraryReadsItAndFindsNothingWrong() throws IOException {
    ICalendar calendar = read(agenda(Fixtures.plan()));
    // RFC 5545 3.6: PRODID and VERSION once; biweekly checks all of section 3.
    assertEquals("-//Hibernacle//Season plan//EN", calendar.getProductId().getValue());
    assertEquals(ICalVersion.V2_0, calendar.getVersion());
    assertTrue(
        calendar.validate(ICalVersion.V2_0).isEmpty(),
        calendar.validate(ICalVersion.V2_0)::toString);
    assertFalse(calendar.getEvents().isEmpty());
  }

  /** One event a moving day; each pot of the report's sheet is in the event of its day. */
  @Test
  void everyMoveOfTheReportStandsOnItsDay() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    Section moves = ReportAuthor.write(plan, Fixtures.facts(), WORDS).section("moving-days");
    List<String> ids = cells(moves, "id");
    List<String> to = cells(moves, "to");
    List<String> from = cells(moves, "from");
    List<String> kg = cells(moves, "kg-each");
    List<String> people = cells(moves, "people");
    List<String> count = cells(moves, "count");
    Map<LocalDate, VEvent> days = new HashMap<>();
    for (VEvent event : read(agenda(plan)).getEvents()) {
      if (isMovingDay(event)) {
        assertEquals(null, days.put(day(event), event), "one event a day");
      }
    }
    Map<LocalDate, Integer> pots = new HashMap<>();
    for (int i = 0; i < ids.size(); i++) {
      LocalDate date = ((Cell.Day) moves.rows().get(i).cells().get(0)).date();
      String text = days.get(date).getDescription().getValue();
      String id = ids.get(i);
      String line = text.lines().filter(l -> l.startsWith(id + " ")).findFirst().orElseThrow();
      String route = "from " + from.get(i) + " to " + to.get(i) + ", " + kg.get(i) + " kg";
      assertTrue(line.contains(route), line);
      assertEquals(people.get(i).equals("two"), line.endsWith("two people"), line);
      pots.merge(date, Integer.parseInt(count.get(i)), Integer::sum);
    }
    assertEquals(pots.keySet(), days.keySet());
    pots.forEach((date, n) -> assertEquals(n, potsNamed(days.get(date).getSummary().getValue())));
  }

  private static int potsNamed(String title) {
    return Pattern.compile("\\d+")
        .matcher(title)
        .results()
        .mapToInt(number -> Integer.parseInt(number.group()))
        .sum();
  }

  @Test
  void everyTaskOfTheReportStandsOnItsFirstDay() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    Section tasks = ReportAuthor.write(plan, Fixtures.facts(), WORDS).section("tasks");
    Set<String> found = new HashSet<>();
    for (VEvent event : read(agenda(plan)).getEvents()) {
      found.add(day(event) + " " + event.getDescription().getValue().lines().findFirst().get());
    }
    List<String> sentences = cells(tasks, "task");
    for (int i = 0; i < sentences.size(); i++) {
      LocalDate date = ((Cell.Day) tasks.rows().get(i).cells().get(0)).date();
      assertTrue(found.contains(date + " " + sentences.get(i)), sentences.get(i));
    }
    assertFalse(sentences.isEmpty());
  }

  @Test
  void everyEventIsAWholeDayThatKeepsNobodyBusy() throws IOException {
    for (VEvent event : read(agenda(Fixtures.plan())).getEvents()) {
      // RFC 5545 3.6.1: DTSTART as DATE is an all-day event; 3.8.2.2: DTEND is not part of it.
      assertFalse(event.getDateStart().getValue().hasTime());
      assertFalse(event.getDateEnd().getValue().hasTime());
      long ms = event.getDateEnd().getValue().getTime() - event.getDateStart().getValue().getTime();
      assertEquals(24 * 3600 * 1000L, ms);
      // RFC 5545 3.8.2.7.
      assertTrue(event.getTransparency().isTransparent());
      // RFC 5545 3.2.10.
      assertEquals("en-GB", event.getSummary().getLanguage());
      // RFC 5545 3.8.7.2: the day from the plan and not the clock.
      assertEquals(Fixtures.SEASON.start(), day(event.getDateTimeStamp().getValue()));
    }
  }

  private static LocalDate day(java.util.Date instant) {
    return LocalDate.ofInstant(instant.toInstant(), ZoneId.of("UTC"));
  }

  /** RFC 5545 3.6.6 and 3.8.6.3: shown, by a duration from the start of the day. */
  @Test
  void anAlarmIsShownTheEveningBeforeAndAWeekBeforeHelpIsNeeded() throws IOException {
    Set<Duration> seen = new HashSet<>();
    for (VEvent event : read(agenda(Fixtures.plan())).getEvents()) {
      assertEquals(1, event.getAlarms().size());
      VAlarm alarm = event.getAlarms().get(0);
      assertTrue(alarm.getAction().isDisplay());
      assertEquals(event.getSummary().getValue(), alarm.getDescription().getValue());
      Duration when = Duration.ofMillis(alarm.getTrigger().getDuration().toMillis());
      String title = event.getSummary().getValue();
      if (isMovingDay(event)) {
        assertEquals(Duration.ofHours(-6), when);
      } else if (title.startsWith("two people")) {
        assertEquals(Duration.ofDays(-7).plusHours(8), when);
      } else {
        assertEquals(Duration.ofHours(8), when, title);
      }
      seen.add(when);
    }
    assertEquals(3, seen.size());
  }

  /** RFC 5545 3.1: lines end in CR LF and have 75 octets at most, no character is cut. */
  @Test
  void linesAreFoldedBetweenCharacters() throws IOException {
    String tree = "\uD83C\uDF32";
    String title = "Äpfel, Töpfe; C:\\n " + tree.repeat(60) + " ende";
    Agenda agenda =
        new Agenda(
            "n",
            "t",
            Locale.GERMANY,
            LocalDate.of(2026, 7, 1),
            0,
            "",
            List.of(entry(title, "a\nb")));
    byte[] file = bytes(agenda);
    List<byte[]> lines = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < file.length; i++) {
      if (file[i] == '\n') {
        assertEquals('\r', file[i - 1]);
        lines.add(java.util.Arrays.copyOfRange(file, from, i - 1));
        from = i + 1;
      }
    }
    assertEquals(file.length, from, "the last line ends too");
    for (byte[] line : lines) {
      assertTrue(line.length <= 75, () -> new String(line, UTF_8));
      UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(line));
    }
    // RFC 5545 3.3.11: backslash, comma, semicolon and line break are escaped.
    String unfolded = new String(file, UTF_8).replace("\r\n ", "");
    assertTrue(unfolded.contains("SUMMARY;LANGUAGE=de-DE:Äpfel\\, Töpfe\\; C:\\\\n "), unfolded);
    VEvent event = Biweekly.parse(new String(file, UTF_8)).first().getEvents().get(0);
    assertEquals(title, event.getSummary().getValue());
    assertEquals("a\nb", event.getDescription().getValue());
  }

  private static Agenda.Entry entry(String title, String text) {
    return new Agenda.Entry(
        new UUID(1, 2), LocalDate.of(2026, 11, 7), title, text, Optional.empty(), "", "", false);
  }

  /** RFC 5545 3.8.4.7 and 3.8.7.4: one identity from plan to plan, and a later plan outranks. */
  @Test
  void aLaterPlanMovesEventsRatherThanDoublingThem() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    List<VEvent> before = read(agenda(plan)).getEvents();
    SeasonPlan later = Fixtures.inSeason(plan, OptionalDouble.of(-6.5));
    List<VEvent> after = read(agenda(later)).getEvents();
    assertEquals(uids(before), uids(after));
    assertEquals(before.size(), uids(before).size(), "each once");
    int days = after.get(0).getSequence().getValue();
    assertEquals(0, before.get(0).getSequence().getValue());
    assertEquals(later.inSeason().orElseThrow().asOf(), Fixtures.SEASON.start().plusDays(days));
  }

  private static Set<String> uids(List<VEvent> events) {
    Set<String> uids = new HashSet<>();
    events.forEach(e -> uids.add(e.getUid().getValue()));
    return uids;
  }

  /** Two gardens in one calendar do not take each other's place. */
  @Test
  void anotherGardenHasOtherIdentities() throws IOException {
    Set<String> here = uids(read(agenda(Fixtures.plan())).getEvents());
    Settings metric = Fixtures.settings(Settings.Units.METRIC, Locale.UK);
    Settings there =
        new Settings(
            "Elsewhere",
            metric.siteColderByK(),
            metric.latitudeDeg(),
            metric.longitudeDeg(),
            metric.zone(),
            metric.units(),
            metric.safetyMarginK(),
            metric.acceptedRiskOfTen(),
            metric.movingDays(),
            metric.away(),
            metric.plantsPerMovingDay(),
            metric.minutesPerMovingDay(),
            metric.paper(),
            metric.firstDayOfWeek(),
            metric.language());
    here.retainAll(uids(read(agenda(Fixtures.plan(there))).getEvents()));
    assertEquals(Set.of(), here);
  }

  /** RFC 5545 3.8.1.11. */
  @Test
  void aMovingDayThatIsNoneAnyMoreIsTakenBack() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    long days = plan.movesByDate().stream().map(pm -> pm.move().date()).distinct().count();
    SeasonPlan shorter = Fixtures.firstPlants(plan, 2);
    Agenda agenda = AgendaAuthor.write(shorter, Fixtures.afterAnotherPlan(plan), WORDS);
    List<VEvent> events = read(agenda).getEvents();
    long cancelled =
        events.stream().filter(e -> e.getStatus() != null && e.getStatus().isCancelled()).count();
    long kept = shorter.movesByDate().stream().map(pm -> pm.move().date()).distinct().count();
    assertTrue(days > kept);
    assertEquals(days - kept, cancelled);
    assertEquals(events.size(), uids(events).size());
  }

  private static List<VEvent> cancelled(Agenda agenda) throws IOException {
    return read(agenda).getEvents().stream()
        .filter(e -> e.getStatus() != null && e.getStatus().isCancelled())
        .toList();
  }

  /** RFC 5545 3.8.1.11: what was planned, is not any more and was not done. */
  @Test
  void workThatIsNotPlannedAnyMoreIsTakenBackUnlessItIsDone() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    Agenda first = agenda(plan);
    SeasonPlan fewer = Fixtures.withTasks(plan, plan.tasks().subList(2, plan.tasks().size()));
    Task done = plan.tasks().get(0);
    Tick tick =
        new Tick(
            Phrase.verbatim(""),
            "",
            false,
            done.kind().name(),
            "",
            done.from(),
            done.to(),
            done.place(),
            List.of());
    Agenda second =
        AgendaAuthor.write(fewer, Fixtures.afterPublishing(plan, first, List.of()), WORDS);
    assertEquals(2, cancelled(second).size());
    assertEquals(first.entries().size(), read(second).getEvents().size());
    Agenda ticked =
        AgendaAuthor.write(fewer, Fixtures.afterPublishing(plan, first, List.of(tick)), WORDS);
    assertEquals(1, cancelled(ticked).size());
    assertEquals(first.entries().size() - 1, read(ticked).getEvents().size());
    // Whoever passed the second file by is told again by the third, which changed nothing.
    Agenda third =
        AgendaAuthor.write(fewer, Fixtures.afterPublishing(plan, second, List.of()), WORDS);
    assertArrayEquals(bytes(second), bytes(third));
  }

  /**
   * RFC 5545 3.8.7.4 and 3.8.7.2, RFC 5546 2.1.5: a revised event has a greater number and a later
   * stamp. Nothing but the plans tells how late it is.
   */
  @Test
  void aPlanThatChangedOutranksTheOneBefore() throws IOException {
    SeasonPlan plan = Fixtures.plan();
    Agenda first = agenda(plan);
    Agenda same = AgendaAuthor.write(plan, Fixtures.afterPublishing(plan, first, List.of()), WORDS);
    assertArrayEquals(bytes(first), bytes(same));
    SeasonPlan fewer = Fixtures.withTasks(plan, plan.tasks().subList(1, plan.tasks().size()));
    Agenda second =
        AgendaAuthor.write(fewer, Fixtures.afterPublishing(plan, same, List.of()), WORDS);
    Agenda third =
        AgendaAuthor.write(plan, Fixtures.afterPublishing(fewer, second, List.of()), WORDS);
    SeasonPlan inSeason = Fixtures.inSeason(plan, OptionalDouble.of(-6.5));
    Agenda fourth =
        AgendaAuthor.write(inSeason, Fixtures.afterPublishing(plan, third, List.of()), WORDS);
    Agenda fifth =
        AgendaAuthor.write(plan, Fixtures.afterPublishing(inSeason, fourth, List.of()), WORDS);
    VEvent before = read(first).getEvents().get(0);
    for (Agenda agenda : List.of(second, third, fourth, fifth)) {
      for (VEvent event : read(agenda).getEvents()) {
        assertTrue(event.getSequence().getValue() > before.getSequence().getValue());
        assertTrue(event.getDateTimeStamp().getValue().after(before.getDateTimeStamp().getValue()));
      }
      before = read(agenda).getEvents().get(0);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "en-US,UTC",
    "de-DE,America/St_Johns",
    "tr-TR,Australia/Lord_Howe",
    "ja-JP,Asia/Tokyo"
  })
  void equalOnEveryMachine(String locale, String zone) throws IOException {
    byte[] expected = bytes(agenda(Fixtures.plan()));
    Locale localeBefore = Locale.getDefault();
    TimeZone zoneBefore = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertArrayEquals(expected, bytes(agenda(Fixtures.plan())));
    } finally {
      Locale.setDefault(localeBefore);
      TimeZone.setDefault(zoneBefore);
    }
  }
}
