package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;

/**
 * Writes the report: the only place that decides words, numbers, rounding, order and warnings. The
 * writers of files add looks and nothing else.
 */
public final class ReportAuthor {
  private ReportAuthor() {}

  /**
   * Tells the plan.
   *
   * @param plan to tell
   * @param facts of the run: version, input files, problems met
   * @param words in the language of the report
   */
  public static SeasonReport write(SeasonPlan plan, RunFacts facts, Words words) {
    Material m = Material.of(plan, facts, words);
    Settings settings = plan.inventory().settings();
    String subtitle = subtitle(plan, words);
    List<Section> sections = sections(m);
    return new SeasonReport(
        words.text("report.title"),
        subtitle,
        Overview.write(m),
        sections,
        CalendarPages.write(m),
        CalendarPages.legend(m),
        new TemperatureTable(m).chart(),
        plan.inventory().sheets(),
        words.text("report.footer", facts.programVersion(), subtitle, Overview.wintersUsed(m)),
        facts.digest(),
        settings.paper() == Settings.Paper.LETTER,
        settings.firstDayOfWeek(),
        words.locale(),
        List.of(),
        WorkbookParts.write(m, sections),
        PaperPages.write(m));
  }

  /** Site and season. */
  static String subtitle(SeasonPlan plan, Words words) {
    String season = plan.season().toString();
    String site = plan.inventory().settings().site();
    return site.isBlank()
        ? words.text("report.subtitle", season)
        : words.text("report.subtitle.site", site, season);
  }

  private static List<Section> sections(Material m) {
    List<Section> sections = new ArrayList<>();
    sections.add(PlantTable.write(m));
    sections.add(MoveTable.write(m));
    ChangeTable.write(m).ifPresent(sections::add);
    sections.add(TaskTable.write(m));
    sections.add(PlaceTables.places(m));
    sections.add(PlaceTables.occupancy(m));
    sections.add(new TemperatureTable(m).table());
    sections.add(WinterTable.write(m));
    sections.add(LogTable.write(m));
    sections.add(NotesTable.write(m));
    return sections;
  }
}
