package org.hibernacle.report.pdf;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ForScreen;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.TemperatureChart;
import org.hibernacle.report.Words;

/** Reports to be printed: the one of {@link Fixtures}, and made-up variants of it. */
final class PaperReports {
  static final Set<Medium> BOTH = Set.of(Medium.PDF, Medium.WORKBOOK);

  private PaperReports() {}

  static SeasonReport season() {
    return season(Fixtures.facts());
  }

  static SeasonReport season(RunFacts facts) {
    return ReportAuthor.write(Fixtures.plan(), facts, Words.of(Locale.UK));
  }

  /** Tables of several pages, and a section for paper alone. */
  static SeasonReport longSeason() {
    List<Section> sections = new ArrayList<>();
    for (Section s : season().sections()) {
      List<Section.Row> rows =
          Collections.nCopies(4, s.rows()).stream().flatMap(List::stream).toList();
      sections.add(new Section(s.id(), s.title(), s.media(), s.intro(), s.columns(), rows));
    }
    Section handOut = section("hand-out", List.of("Forecast"), List.of(List.of(text("-3 °C"))));
    sections.add(
        new Section(
            handOut.id(),
            "For whoever looks after the plants",
            Set.of(Medium.PDF),
            List.of("Look at the forecast each evening."),
            handOut.columns(),
            handOut.rows()));
    SeasonReport s = season();
    return with(s, s.title(), sections, s.months(), s.weekStart(), false);
  }

  static SeasonReport of(
      List<MonthPage> months, String title, DayOfWeek weekStart, boolean letterPaper) {
    return with(season(), title, season().sections(), months, weekStart, letterPaper);
  }

  private static SeasonReport with(
      SeasonReport s,
      String title,
      List<Section> sections,
      List<MonthPage> months,
      DayOfWeek weekStart,
      boolean letterPaper) {
    return new SeasonReport(
        title,
        s.subtitle(),
        s.overview(),
        sections,
        months,
        s.legend(),
        s.chart(),
        List.of(),
        s.pageFooter(),
        s.digest(),
        letterPaper,
        weekStart,
        s.language(),
        List.of(),
        ForScreen.NOTHING,
        s.paper());
  }

  /** A report of that section alone. */
  static SeasonReport only(Section section) {
    return new SeasonReport(
        "Long",
        "site",
        List.of(),
        List.of(section),
        List.of(),
        List.of(),
        new TemperatureChart("", "", List.of(), List.of()),
        List.of(),
        "footer",
        "digest",
        false,
        DayOfWeek.MONDAY,
        Locale.ENGLISH);
  }

  /** A section whose column named why goes below the row. */
  static Section section(String id, List<String> columns, List<List<Cell>> rows) {
    return new Section(
        id,
        "Long",
        BOTH,
        List.of(),
        columns.stream()
            .map(c -> new Column(c, c, "", 10, c.equals("why") ? Set.of(Medium.BELOW) : BOTH))
            .toList(),
        rows.stream().map(cells -> new Section.Row(StyleRole.PLAIN, cells)).toList());
  }

  static Cell text(String words) {
    return new Cell.Text(words);
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
}
