package org.hibernacle.report.xlsx;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFDateAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.SheetChart;
import org.hibernacle.report.StyleRole;

/** A native chart that draws its lines from the columns beside it. */
final class ChartDrawing {
  private static final int WIDTH_COLUMNS = 15;
  private static final int HEIGHT_ROWS = 26;

  private static final double TITLE_PT = 13;
  private static final double LINE_PT = 2;
  private static final double LIMIT_PT = 1.25;

  /** Days between two dates on the axis. */
  private static final int DAYS_APART = 28;

  private final Sheets sheets;
  private final XSSFSheet sheet;
  private final SheetChart chart;
  private final List<Column> columns;
  private final Section section;

  private ChartDrawing(Sheets sheets, Section section, SheetChart chart) {
    this.sheets = sheets;
    this.section = section;
    this.chart = chart;
    this.columns =
        section.columns().stream().filter(c -> c.media().contains(Medium.WORKBOOK)).toList();
    this.sheet = sheets.workbook().getSheet(section.title());
  }

  /**
   * Draws the chart to the right of its table and has paper show it on a page of its own.
   *
   * @param section that was written, days in its first column
   */
  static void draw(Sheets sheets, Section section, SheetChart chart) {
    new ChartDrawing(sheets, section, chart).draw();
  }

  private void draw() {
    int left = columns.size() + 1;
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(0, 0, 0, 0, left, 1, left + WIDTH_COLUMNS, 1 + HEIGHT_ROWS);
    XSSFChart drawing = sheet.createDrawingPatriarch().createChart(anchor);
    drawing.setTitleText(chart.title());
    drawing.setTitleOverlay(false);
    drawing
        .getFormattedTitle()
        .getParagraphs()
        .forEach(p -> p.getTextRuns().forEach(run -> run.setFontSize(TITLE_PT)));
    drawing.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    XDDFDateAxis days = drawing.createDateAxis(AxisPosition.BOTTOM);
    days.setTitle(chart.daysTitle());
    days.setNumberFormat(sheets.styles().axisFormat());
    days.setMajorUnit(DAYS_APART);
    // Below the plot, not along the line of zero.
    days.setTickLabelPosition(AxisTickLabelPosition.LOW);
    XDDFValueAxis values = drawing.createValueAxis(AxisPosition.LEFT);
    values.setTitle(chart.valueTitle());
    values.setNumberFormat("0");
    values.setCrosses(AxisCrosses.MIN);
    values
        .getOrAddMajorGridProperties()
        .setLineProperties(line(palette().rule(), 0.5, PresetLineDash.SOLID));
    bounds(values);
    XDDFLineChartData data = (XDDFLineChartData) drawing.createData(ChartTypes.LINE, days, values);
    data.setVaryColors(false);
    int lines = 0;
    int limits = 0;
    for (SheetChart.Line line : chart.lines()) {
      add(data, line, line.limit() ? limits++ : lines++);
    }
    drawing.plot(data);
    // Columns that are folded away are drawn too.
    drawing.getCTChart().getPlotVisOnly().setVal(false);
    print(left);
  }

  private Palette palette() {
    return sheets.styles().palette();
  }

  /** The table, if it is wanted, then the chart on a page of its own. */
  private void print(int left) {
    int index = sheets.workbook().getSheetIndex(sheet);
    String chartCells = absolute(1, HEIGHT_ROWS, left, left + WIDTH_COLUMNS - 1);
    if (chart.alone()) {
      sheets.workbook().setPrintArea(index, chartCells);
      sheet.setRepeatingRows(null);
      sheet.getPrintSetup().setFitWidth((short) 1);
      sheet.getPrintSetup().setFitHeight((short) 1);
      return;
    }
    String printed = sheets.workbook().getPrintArea(index);
    String table =
        printed == null
            ? absolute(0, section.rows().size(), 0, columns.size() - 1)
            : printed.substring(printed.indexOf('!') + 1);
    sheets.workbook().setPrintArea(index, table + "," + chartCells);
  }

  private static String absolute(int fromRow, int toRow, int fromColumn, int toColumn) {
    return new CellReference(fromRow, fromColumn, true, true).formatAsString()
        + ":"
        + new CellReference(toRow, toColumn, true, true).formatAsString();
  }

  private void add(XDDFLineChartData data, SheetChart.Line line, int number) {
    int column = columns.stream().map(Column::id).toList().indexOf(line.column());
    if (column < 0) {
      throw new IllegalArgumentException("no column " + line.column() + " in " + section.id());
    }
    XDDFLineChartData.Series series =
        (XDDFLineChartData.Series) data.addSeries(range(0), range(column));
    series.setTitle(
        columns.get(column).heading(),
        new CellReference(sheet.getSheetName(), 0, column, true, true));
    series.setSmooth(false);
    series.setMarkerStyle(MarkerStyle.NONE);
    if (line.limit()) {
      int ink = palette().look(StyleRole.DANGER).ink();
      PresetLineDash dash = number == 0 ? PresetLineDash.SOLID : PresetLineDash.DASH;
      series.setLineProperties(line(ink, LIMIT_PT, dash));
    } else {
      Palette.Stroke stroke = palette().stroke(number);
      series.setLineProperties(line(stroke.colour(), LINE_PT, preset(stroke.dash())));
    }
  }

  private XDDFNumericalDataSource<Double> range(int column) {
    return XDDFDataSourcesFactory.fromNumericCellRange(
        sheet, new CellRangeAddress(1, section.rows().size(), column, column));
  }

  /** The axis ends where the lines end, at a mark. */
  private void bounds(XDDFValueAxis axis) {
    List<String> ids = section.columns().stream().map(Column::id).toList();
    DoubleSummaryStatistics all =
        chart.lines().stream()
            .mapToInt(line -> ids.indexOf(line.column()))
            .boxed()
            .flatMap(column -> section.rows().stream().map(row -> row.cells().get(column)))
            .filter(Cell.Quantity.class::isInstance)
            .mapToDouble(cell -> ((Cell.Quantity) cell).value())
            .summaryStatistics();
    axis.setMinimum(Math.floor(all.getMin() / chart.step()) * chart.step());
    axis.setMaximum(Math.ceil(all.getMax() / chart.step()) * chart.step());
    axis.setMajorUnit(chart.step());
  }

  private static PresetLineDash preset(Palette.Dash dash) {
    return switch (dash) {
      case SOLID -> PresetLineDash.SOLID;
      case DASHED -> PresetLineDash.SYSTEM_DASH;
      case DOTTED -> PresetLineDash.SYSTEM_DOT;
      case DASH_DOT -> PresetLineDash.DASH_DOT;
      case LONG_DASHED -> PresetLineDash.LARGE_DASH;
      case LONG_DASH_DOT -> PresetLineDash.LARGE_DASH_DOT;
    };
  }

  private static XDDFLineProperties line(int rgb, double widthPt, PresetLineDash dash) {
    byte[] bytes = {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    XDDFLineProperties line =
        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(bytes)));
    line.setWidth(widthPt);
    line.setPresetDash(new XDDFPresetLineDash(dash));
    return line;
  }
}
