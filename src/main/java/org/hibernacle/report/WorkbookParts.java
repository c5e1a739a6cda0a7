package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hibernacle.model.SheetTable;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.SeasonPlan.PlantMove;

/** What the workbook of a plan has beside its tables. */
final class WorkbookParts {
  /** Name of the cell with the next moving day. */
  static final String NEXT_DAY = "next_moving_day";

  private static final String ID = "Id";
  private static final String TO_DO = "({moving-days:done}=\"\")";
  private static final String COUNT = "{moving-days:count}";

  private final Material m;
  private final List<Glance.Line> lines = new ArrayList<>();

  private WorkbookParts(Material material) {
    this.m = material;
  }

  static ForScreen write(Material m, List<Section> sections) {
    List<SheetChart> charts = new ArrayList<>();
    charts.add(new TemperatureTable(m).sheetChart());
    PlaceTables.chart(m).ifPresent(charts::add);
    List<ForScreen.IdColumn> ids =
        m.plan().inventory().sheets().stream()
            .filter(sheet -> holdsPlants(m, sheet))
            .limit(1)
            .map(sheet -> new ForScreen.IdColumn(sheet.name(), heading(sheet), "season-plan"))
            .toList();
    return new ForScreen(
        Optional.of(new WorkbookParts(m).glance()), charts, ids, RecordLines.of(m, sections));
  }

  /** The sheet that has every plant of the plan under its heading Id. */
  private static boolean holdsPlants(Material m, SheetTable sheet) {
    if (!sheet.has(ID)) {
      return false;
    }
    List<String> ids =
        sheet.rows().stream().map(row -> SheetTable.plainText(sheet.cell(row, ID))).toList();
    return m.plan().plants().stream().anyMatch(p -> ids.contains(p.plant().id()));
  }

  private static String heading(SheetTable sheet) {
    return sheet.headings().stream()
        .filter(h -> h.strip().equalsIgnoreCase(ID))
        .findFirst()
        .orElseThrow();
  }

  /** The next day on which anything is left to carry. */
  static Optional<LocalDate> nextDay(Material m) {
    return m.plan().movesByDate().stream()
        .filter(pm -> !m.ticks().isDone(pm) && !pm.move().date().isBefore(m.asOf()))
        .map(pm -> pm.move().date())
        .min(Comparator.naturalOrder());
  }

  private Glance glance() {
    if (!m.plan().movesByDate().isEmpty()) {
      moving();
    }
    danger();
    return new Glance(
        m.asOf(),
        m.words().text("glance.as-of"),
        m.words().text("glance.prompt"),
        m.plan().season().start(),
        m.plan().season().endExclusive().minusDays(1),
        lines);
  }

  private void moving() {
    String open = "({moving-days:date}>=" + Glance.AS_OF + ")*" + TO_DO;
    String none = Table.quoted(m.words().text("glance.none"));
    Optional<LocalDate> next = nextDay(m);
    line(
        NEXT_DAY,
        next.<Cell>map(Cell.Day::new).orElse(new Cell.Text(m.words().text("glance.none"))),
        // Days that are over or done count as far away.
        "IF(SUMPRODUCT("
            + open
            + ")=0,"
            + none
            + ",SUMPRODUCT(MIN({moving-days:date}+1000000*(1-"
            + open
            + "))))",
        Optional.empty());
    line(
        "pots_next",
        pots(pm -> !m.ticks().isDone(pm) && next.filter(pm.move().date()::equals).isPresent()),
        "SUMPRODUCT(({moving-days:date}=" + NEXT_DAY + ")*" + TO_DO + "*" + COUNT + ")",
        Optional.empty());
    line(
        "pots_moved",
        pots(m.ticks()::isDone),
        "SUMPRODUCT(({moving-days:done}<>\"\")*" + COUNT + ")",
        Optional.empty());
    line(
        "pots_left",
        pots(pm -> !m.ticks().isDone(pm)),
        "SUMPRODUCT(" + TO_DO + "*" + COUNT + ")",
        Optional.empty());
    line(
        "pots_overdue",
        pots(pm -> !m.ticks().isDone(pm) && pm.move().date().isBefore(m.asOf())),
        "SUMPRODUCT(({moving-days:date}<" + Glance.AS_OF + ")*" + TO_DO + "*" + COUNT + ")",
        Optional.of(new Section.Mark("{}>0", StyleRole.DANGER, " !")));
  }

  private void danger() {
    List<PlantPlan> lost =
        m.plan().plants().stream().filter(p -> p.verdict() == Verdict.UNPROTECTED).toList();
    String status = Table.quoted(m.words().of("status", Verdict.UNPROTECTED));
    String isLost = "SUMPRODUCT(--({season-plan:status}=" + status + "),";
    Optional<Section.Mark> alarm = Optional.of(new Section.Mark("{}>0", StyleRole.DANGER, " !"));
    line(
        "pots_at_risk",
        Measures.count(lost.stream().mapToInt(p -> p.plant().count()).sum()),
        isLost + "{season-plan:count})",
        alarm);
    if (m.valued()) {
      double value = lost.stream().mapToDouble(p -> p.plant().value().orElse(0)).sum();
      line(
          "value_at_risk", new Cell.Quantity(value, "", 0), isLost + "{season-plan:value})", alarm);
    }
  }

  private Cell pots(Predicate<PlantMove> which) {
    return Measures.count(
        m.plan().movesByDate().stream()
            .filter(which)
            .mapToInt(pm -> pm.plan().plant().count())
            .sum());
  }

  private void line(String name, Cell cell, String formula, Optional<Section.Mark> mark) {
    String label = m.words().text("glance." + name);
    String helpKey = "glance.help." + name;
    String help = m.words().has(helpKey) ? m.words().text(helpKey) : "";
    lines.add(new Glance.Line(name, label, help, cell, formula, mark));
  }
}
