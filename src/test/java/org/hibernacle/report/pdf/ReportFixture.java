package org.hibernacle.report.pdf;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hibernacle.report.Cell;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.TemperatureChart;

/** An invented season of 40 plants with 60 moves over eight months, September to April. */
final class ReportFixture {
  static final Set<Medium> BOTH = Set.of(Medium.PDF, Medium.WORKBOOK);
  static final Set<Medium> WORKBOOK_ONLY = Set.of(Medium.WORKBOOK);

  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final String[][] KINDS = {
    {"Acer palmatum", "Maple"},
    {"Larix kaempferi", "Larch"},
    {"Pinus thunbergii", "Black pine"},
    {"Juniperus chinensis", "Juniper"},
    {"Olea europaea", "Olive"},
    {"Punica granatum", "Pomegranate"},
    {"Ulmus parvifolia", "Elm"},
    {"Ficus microcarpa", "Fig"}
  };

  /** One plant's dates: blank ones stay at home. */
  private record Moves(int number, String name, String species, int kind) {
    boolean stays() {
      return kind == 2 || kind == 3;
    }

    boolean unprotected() {
      return number == 38;
    }

    LocalDate down() {
      return LocalDate.of(2026, 10, 31).plusDays(7L * (number % 5));
    }

    LocalDate in() {
      return LocalDate.of(2026, 9, 26).plusDays(7L * (number % 3));
    }

    LocalDate home() {
      return LocalDate.of(2027, 3, 27).plusDays(7L * (number % 4));
    }
  }

  private ReportFixture() {}

  static SeasonReport season() {
    return report(
        months(), "Winter of the invented garden", DayOfWeek.MONDAY, Locale.ENGLISH, false);
  }

  static SeasonReport report(
      List<MonthPage> months, String title, DayOfWeek weekStart, Locale language, boolean letter) {
    return new SeasonReport(
        title,
        "Hillside site, season 2026/27",
        overview(),
        sections(),
        months,
        legend(),
        chart(),
        List.of(),
        List.of(
            "Never heat a closed room with anything that burns: carbon monoxide has no smell.",
            "Pots over 23 kg take two people or a trolley. Keep your back straight and the path dry.",
            "Some of these plants are poisonous. Where the list says unknown, treat them as such.",
            "Read and follow the label before you spray anything under a roof."),
        "Hibernacle 0.1.0, inventory 3f9a1c27, temperatures 77b0de41, 9 winters on file",
        "9c1185a5c5e9fc54612808977ee8f548b2258d31",
        letter,
        weekStart,
        language);
  }

  static SeasonReport withDigest(SeasonReport r, String digest) {
    return new SeasonReport(
        r.title(),
        r.subtitle(),
        r.overview(),
        r.sections(),
        r.months(),
        r.legend(),
        r.chart(),
        r.carried(),
        r.cautions(),
        r.pageFooter(),
        digest,
        r.letterPaper(),
        r.weekStart(),
        r.language());
  }

  private static List<Moves> plants() {
    List<Moves> plants = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      String[] kind = KINDS[i % KINDS.length];
      plants.add(new Moves(i, kind[1] + " " + (i / KINDS.length + 1), kind[0], i % KINDS.length));
    }
    return plants.stream().sorted((a, b) -> a.name().compareTo(b.name())).toList();
  }

  private static List<SeasonReport.Fact> overview() {
    return List.of(
        new SeasonReport.Fact("Plants", "40 in 8 places", StyleRole.PLAIN),
        new SeasonReport.Fact("Stay at home", "10", StyleRole.STAYS),
        new SeasonReport.Fact("Moves", "60 on 12 moving days, 7 on the fullest", StyleRole.PLAIN),
        new SeasonReport.Fact(
            "First move", "26 Sep 2026, Olive 1 to the glasshouse", StyleRole.MOVE_IN),
        new SeasonReport.Fact("Last return", "17 Apr 2027", StyleRole.RETURN),
        new SeasonReport.Fact(
            "Not protected",
            "1 plant, value 180: Elm 5. More room in the shed (0.4 m\u00b2) or a fleece would help.",
            StyleRole.DANGER),
        new SeasonReport.Fact(
            "Worst winter on file",
            "2011/12: the root balls on the bench reached -11.8 \u00b0C on 4 Feb",
            StyleRole.CAUTION),
        new SeasonReport.Fact("Held in", "8 of 9 winters on file", StyleRole.PLAIN));
  }

  private static List<MonthPage.Line> legend() {
    return List.of(
        new MonthPage.Line(StyleRole.MOVE_DOWN, "DOWN", "from the bench to sheltered ground"),
        new MonthPage.Line(StyleRole.MOVE_IN, "IN", "under a roof"),
        new MonthPage.Line(
            StyleRole.STEP_OUT, "STEP OUT", "from a roof to the ground, fleece at hand"),
        new MonthPage.Line(StyleRole.RETURN, "HOME", "back to the bench"),
        new MonthPage.Line(StyleRole.TASK, "DO", "work beside the moves"));
  }

  static List<MonthPage> months() {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    for (Moves p : plants()) {
      if (p.stays()) {
        continue;
      }
      boolean tender = p.kind() == 7 || p.kind() == 4;
      put(
          days,
          tender ? p.in() : p.down(),
          tender
              ? new MonthPage.Line(StyleRole.MOVE_IN, "IN", p.name() + " to the glasshouse")
              : new MonthPage.Line(StyleRole.MOVE_DOWN, "DOWN", p.name() + " to the north bed"));
      put(
          days,
          p.home(),
          new MonthPage.Line(StyleRole.RETURN, "HOME", p.name() + " to the long bench"));
    }
    put(
        days,
        LocalDate.of(2026, 9, 19),
        new MonthPage.Line(StyleRole.TASK, "DO", "Leaves and moss off, look for pests"));
    put(
        days,
        LocalDate.of(2026, 12, 5),
        new MonthPage.Line(StyleRole.TASK, "DO", "Mulch on, 120 L"));
    put(
        days,
        LocalDate.of(2026, 12, 12),
        new MonthPage.Line(StyleRole.TASK, "DO", "Rodent guard in the shed"));
    put(
        days,
        LocalDate.of(2027, 2, 13),
        new MonthPage.Line(StyleRole.TASK, "DO", "Thaw out and water: Maple 1, Maple 2"));
    put(
        days,
        LocalDate.of(2027, 3, 13),
        new MonthPage.Line(StyleRole.STEP_OUT, "STEP OUT", "Pomegranate 1 to the north bed"));
    List<MonthPage> months = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      months.add(month(YearMonth.of(2026, 9).plusMonths(i), days));
    }
    return months;
  }

  static MonthPage month(YearMonth month, TreeMap<LocalDate, List<MonthPage.Line>> days) {
    List<MonthPage.DayEntry> entries = new ArrayList<>();
    days.subMap(month.atDay(1), true, month.atEndOfMonth(), true)
        .forEach((date, lines) -> entries.add(new MonthPage.DayEntry(date, lines)));
    return new MonthPage(
        month, month.format(DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH)), entries);
  }

  static void put(
      TreeMap<LocalDate, List<MonthPage.Line>> days, LocalDate day, MonthPage.Line line) {
    days.computeIfAbsent(day, d -> new ArrayList<>()).add(line);
  }

  private static List<Section> sections() {
    return List.of(plan(), movingDays(), places(), tasks(), winters(), handOut(), log(), notes());
  }

  private static Section plan() {
    List<Section.Row> rows = new ArrayList<>();
    for (Moves p : plants()) {
      boolean tender = p.kind() == 7 || p.kind() == 4;
      Cell none = new Cell.Gap("");
      rows.add(
          new Section.Row(
              p.unprotected() ? StyleRole.DANGER : StyleRole.PLAIN,
              List.of(
                  new Cell.Text(p.name()),
                  new Cell.Text("P-" + (100 + p.number())),
                  new Cell.Text(p.species()),
                  p.stays() ? new Cell.Gap("stays") : tender ? none : new Cell.Day(p.down()),
                  tender ? new Cell.Day(p.in()) : none,
                  p.stays() ? none : new Cell.Day(p.home()),
                  new Cell.Quantity(p.unprotected() ? -1.34 : 2.05 + p.number() / 7.0, "K", 1),
                  p.unprotected()
                      ? new Cell.Level(StyleRole.DANGER, "not protected")
                      : p.stays()
                          ? new Cell.Level(StyleRole.STAYS, "stays home")
                          : new Cell.Level(
                              tender ? StyleRole.MOVE_IN : StyleRole.MOVE_DOWN, "moves"),
                  new Cell.Text(why(p)))));
    }
    return new Section(
        "season-plan",
        "Plants A to Z",
        BOTH,
        List.of("One block a plant: its dates, the closest it comes to its root limit, and why."),
        List.of(
            column("plant", "Plant"),
            new Section.Column("id", "Id", "", 8, WORKBOOK_ONLY),
            column("species", "Species"),
            column("down", "Move down"),
            column("in", "Move in"),
            column("return", "Back home"),
            column("margin", "Margin K"),
            column("status", "Status"),
            column("why", "Why")),
        rows);
  }

  private static String why(Moves p) {
    if (p.stays()) {
      return "On the bench the root ball came to -6.4 \u00b0C in the coldest winter on file; it stands -12.0 \u00b0C by then.";
    }
    return "On the bench the root ball would have reached -"
        + (6 + p.number() % 4)
        + ".1 \u00b0C on 8 Dec 2012 while it stood -4.0 \u00b0C. Early "
        + SHORT.format(p.down().minusDays(9))
        + ", typical "
        + SHORT.format(p.down().plusDays(6))
        + ", late "
        + SHORT.format(p.down().plusDays(30))
        + "; the date held in 8 of 9 winters on file.";
  }

  private static Section.Column column(String id, String heading) {
    return new Section.Column(id, heading, "", 14, BOTH);
  }

  private static Section movingDays() {
    List<Section.Row> rows = new ArrayList<>();
    for (MonthPage month : months()) {
      for (MonthPage.DayEntry entry : month.entries()) {
        for (MonthPage.Line line : entry.lines()) {
          rows.add(
              new Section.Row(
                  StyleRole.PLAIN,
                  List.of(
                      new Cell.Day(entry.date()),
                      new Cell.Level(line.role(), line.mark()),
                      new Cell.Text(line.text()),
                      new Cell.Quantity(4.0 + line.text().length() / 3.0, "kg", 0),
                      new Cell.Text("\u2610"))));
        }
      }
    }
    return new Section(
        "moving-days",
        "Moving days",
        BOTH,
        List.of(),
        List.of(
            column("date", "Day"),
            column("kind", "What"),
            column("plant", "Which pot, where to"),
            column("mass", "Mass kg"),
            column("done", "Done")),
        rows);
  }

  private static Section places() {
    List<Section.Row> rows = new ArrayList<>();
    String[] places = {"Long bench", "North bed", "Shed", "Glasshouse"};
    for (int i = 0; i < places.length; i++) {
      rows.add(
          new Section.Row(
              i == 2 ? StyleRole.CAUTION : StyleRole.PLAIN,
              List.of(
                  new Cell.Text(places[i]),
                  new Cell.Quantity(2.4 + i, "m\u00b2", 1),
                  new Cell.Quantity(1.9 + 1.1 * i, "m\u00b2", 1),
                  new Cell.Quantity(-11.8 + 5 * i, "\u00b0C", 1),
                  new Cell.Text(i == 2 ? "Full from 28 Nov to 6 Mar" : "Room to spare"))));
    }
    return new Section(
        "places",
        "Places",
        BOTH,
        List.of("Floor used on the fullest day, and the coldest air of the winters on file."),
        List.of(
            column("place", "Place"),
            column("floor", "Floor m\u00b2"),
            column("used", "Used m\u00b2"),
            column("coldest", "Coldest air \u00b0C"),
            column("remark", "Remark")),
        rows);
  }

  private static Section tasks() {
    return new Section(
        "tasks",
        "Tasks",
        BOTH,
        List.of(),
        List.of(
            column("from", "From"),
            column("to", "To"),
            column("task", "Task"),
            column("plants", "Plants")),
        List.of(
            new Section.Row(
                StyleRole.TASK,
                List.of(
                    new Cell.Day(LocalDate.of(2026, 11, 28)),
                    new Cell.Day(LocalDate.of(2027, 3, 6)),
                    new Cell.Text("Every week: are the balls in the shed barely moist?"),
                    new Cell.Text(
                        "Maple 1, Maple 2, Maple 3, Maple 4, Maple 5, Elm 1, Elm 2, Elm 3, Elm 4"))),
            new Section.Row(
                StyleRole.TASK,
                List.of(
                    new Cell.Day(LocalDate.of(2027, 2, 20)),
                    new Cell.Gap("one day"),
                    new Cell.Text("Vent the shed in the morning; it usually passes 5 \u00b0C"),
                    new Cell.Gap("all in the shed")))));
  }

  private static Section winters() {
    List<Section.Row> rows = new ArrayList<>();
    for (int year = 2008; year < 2017; year++) {
      rows.add(
          new Section.Row(
              StyleRole.PLAIN,
              List.of(
                  new Cell.Text(String.format(Locale.ROOT, "%d/%02d", year, (year + 1) % 100)),
                  new Cell.Quantity(-7.25 - year % 5, "\u00b0C", 1),
                  new Cell.Day(LocalDate.of(year + 1, 2, 4)),
                  new Cell.Quantity(1240 + 37 * (year % 4), "h", 0))));
    }
    return new Section(
        "winters",
        "Winters on file",
        BOTH,
        List.of(),
        List.of(
            column("winter", "Winter"),
            column("coldest", "Coldest night \u00b0C"),
            column("when", "On"),
            column("chill", "Chill h")),
        rows);
  }

  private static Section handOut() {
    return new Section(
        "hand-out",
        "For whoever looks after the plants",
        Set.of(Medium.PDF),
        List.of(
            "Look at the forecast each evening. Do what the first fitting line says.",
            "Telephone: ______________________    Neighbour: ______________________"),
        List.of(
            column("done", "\u2610"),
            column("forecast", "Forecast for the night"),
            column("do", "Do this")),
        Stream.of("-3 \u00b0C or lower", "-6 \u00b0C or lower", "-10 \u00b0C or lower")
            .map(
                f ->
                    new Section.Row(
                        StyleRole.PLAIN,
                        List.of(
                            new Cell.Text("\u2610"),
                            new Cell.Text(f),
                            new Cell.Text(
                                "Fleece over the north bed before dusk, off by ten in the morning"))))
            .toList());
  }

  private static Section log() {
    return new Section(
        "log",
        "Log for the workbook alone",
        WORKBOOK_ONLY,
        List.of(),
        List.of(column("id", "Id")),
        List.of(new Section.Row(StyleRole.PLAIN, List.of(new Cell.Text("never on paper")))));
  }

  private static Section notes() {
    return new Section(
        "notes",
        "Notes",
        BOTH,
        List.of(),
        List.of(column("kind", "Kind"), column("note", "Note")),
        List.of(
            new Section.Row(
                StyleRole.CAUTION,
                List.of(
                    new Cell.Level(StyleRole.CAUTION, "assumed"),
                    new Cell.Text(
                        "Plants!C7: no pot material given; plastic was taken. It cools faster than clay, so the dates err to the early side."))),
            new Section.Row(
                StyleRole.PLAIN,
                List.of(
                    new Cell.Level(StyleRole.SUBTLE, "source"),
                    new Cell.Text(
                        "Root limits of this report are invented for the layout and no guide to any real plant.")))));
  }

  private static TemperatureChart chart() {
    List<LocalDate> days = new ArrayList<>();
    List<Double> air = new ArrayList<>();
    List<Double> ball = new ArrayList<>();
    List<Double> limit = new ArrayList<>();
    for (int i = 0; i < 243; i++) {
      days.add(LocalDate.of(2026, 9, 1).plusDays(i));
      double season = Math.cos((i - 136) / 365.0 * 2 * Math.PI);
      air.add(6 - 12 * season + 5 * Math.sin(i * 0.9) * Math.cos(i * 0.37));
      ball.add(7 - 9 * season + 2 * Math.sin(i * 0.9 - 1) * Math.cos(i * 0.37));
      limit.add(-4 - 6 * Math.max(0, season));
    }
    return new TemperatureChart(
        "The coldest winter on file",
        "\u00b0C, lowest of the day",
        days,
        List.of(
            new TemperatureChart.Line("Air at the bench", air),
            new TemperatureChart.Line("Root ball on the north bed", ball),
            new TemperatureChart.Line("Root limit of the maples", limit)));
  }
}
