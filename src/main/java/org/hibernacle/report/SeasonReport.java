package org.hibernacle.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hibernacle.model.SheetTable;

/**
 * The one report model behind the workbook and the calendar.
 *
 * @param title of both files
 * @param subtitle site and season
 * @param overview label and text of each line of the overview
 * @param sections in order
 * @param months of the calendar, in order, without gaps
 * @param legend mark and meaning of each kind of calendar line
 * @param chart of temperatures
 * @param carried inventory sheets, written to the workbook as they were found
 * @param pageFooter provenance, short; shown on every page
 * @param digest of the run, equal in both files
 * @param letterPaper Letter instead of A4
 * @param weekStart first column of the calendar
 * @param language for dates and numbers
 * @param asked of the keeper in carried sheets
 * @param forScreen what the workbook has and paper has not
 * @param paper what paper alone shows
 */
public record SeasonReport(
    String title,
    String subtitle,
    List<Fact> overview,
    List<Section> sections,
    List<MonthPage> months,
    List<MonthPage.Line> legend,
    TemperatureChart chart,
    List<SheetTable> carried,
    String pageFooter,
    String digest,
    boolean letterPaper,
    DayOfWeek weekStart,
    Locale language,
    List<Asked> asked,
    ForScreen forScreen,
    Paper paper) {

  /**
   * A line of the overview.
   *
   * @param label what
   * @param text how much
   * @param role its look
   */
  public record Fact(String label, String text, StyleRole role) {}

  /**
   * A column of a carried sheet in which the keeper is to choose an answer.
   *
   * @param sheet its name
   * @param heading of the column
   * @param beside heading of the column with what is asked about; no answer is wanted where it is
   *     blank
   * @param answers to choose from
   */
  public record Asked(String sheet, String heading, String beside, List<String> answers) {
    public Asked {
      answers = List.copyOf(answers);
    }
  }

  /** A report that asks nothing and is the same on paper as elsewhere. */
  public SeasonReport(
      String title,
      String subtitle,
      List<Fact> overview,
      List<Section> sections,
      List<MonthPage> months,
      List<MonthPage.Line> legend,
      TemperatureChart chart,
      List<SheetTable> carried,
      String pageFooter,
      String digest,
      boolean letterPaper,
      DayOfWeek weekStart,
      Locale language) {
    this(
        title,
        subtitle,
        overview,
        sections,
        months,
        legend,
        chart,
        carried,
        pageFooter,
        digest,
        letterPaper,
        weekStart,
        language,
        List.of(),
        ForScreen.NOTHING,
        Paper.NONE);
  }

  public SeasonReport {
    asked = List.copyOf(asked);
    overview = List.copyOf(overview);
    sections = List.copyOf(sections);
    months = List.copyOf(months);
    legend = List.copyOf(legend);
    carried = List.copyOf(carried);
  }

  /**
   * The day that files carry as the day of writing, since the real one would differ from run to
   * run: the first of the calendar's first month, or where there is no month the day that {@link
   * #paper} names.
   */
  public LocalDate dated() {
    return months.isEmpty() ? paper.dated() : months.get(0).month().atDay(1);
  }

  /** The section with that id; throws {@link IllegalArgumentException} if there is none. */
  public Section section(String id) {
    return sections.stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no section " + id));
  }
}
