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
import org.hibernacle.report.Palette;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.TemperatureChart;

/** A native chart that draws its lines from the columns beside it. */
final class LineChart {
  private static final int WIDTH_COLUMNS = 16;
  private static final int HEIGHT_ROWS = 34;

  private static final double TITLE_PT = 12;

  /** Days between two dates on the axis. */
  private static final int DAYS_APART = 14;

  /** The axis of temperatures ends at multiples of this, degrees. */
  private static final double STEP = 5;

  private final XSSFSheet sheet;
  private final TemperatureChart chart;
  private final Styles styles;
  private final List<String> headings;

  private LineChart(XSSFSheet sheet, List<Column> columns, TemperatureChart chart, Styles styles) {
    this.sheet = sheet;
    this.chart = chart;
    this.styles = styles;
    this.headings = columns.stream().map(Column::heading).toList();
  }

  /**
   * Draws the chart to the right of the table, and has paper show the chart alone.
   *
   * @param sheet with the table: headings in the first row, days in the first column
   * @param columns of the table
   * @param chart whose lines are named like columns
   * @param styles of the workbook
   */
  static void draw(XSSFSheet sheet, List<Column> columns, TemperatureChart chart, Styles styles) {
    new LineChart(sheet, columns, chart, styles).draw();
  }

  private void draw() {
    int left = headings.size() + 1;
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(0, 0, 0, 0, left, 1, left + WIDTH_COLUMNS, HEIGHT_ROWS);
    XSSFChart drawing = sheet.createDrawingPatriarch().createChart(anchor);
    drawing.setTitleText(chart.title());
    drawing.setTitleOverlay(false);
    drawing
        .getFormattedTitle()
        .getParagraphs()
        .forEach(p -> p.getTextRuns().forEach(run -> run.setFontSize(TITLE_PT)));
    drawing.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    XDDFDateAxis days = drawing.createDateAxis(AxisPosition.BOTTOM);
    days.setNumberFormat(styles.axisFormat());
    days.setMajorUnit(DAYS_APART);
    // Below the plot, not along the line of zero degrees.
    days.setTickLabelPosition(AxisTickLabelPosition.LOW);
    XDDFValueAxis degrees = drawing.createValueAxis(AxisPosition.LEFT);
    degrees.setTitle(chart.axis());
    degrees.setNumberFormat("0");
    degrees.setCrosses(AxisCrosses.MIN);
    degrees
        .getOrAddMajorGridProperties()
        .setLineProperties(line(styles.palette().rule(), 0.5, PresetLineDash.SOLID));
    bounds(degrees);
    XDDFLineChartData data = (XDDFLineChartData) drawing.createData(ChartTypes.LINE, days, degrees);
    data.setVaryColors(false);
    for (int i = 0; i < chart.lines().size(); i++) {
      add(data, chart.lines().get(i).name(), styles.palette().stroke(i));
    }
    drawing.plot(data);
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    sheet.getWorkbook().setPrintArea(index, left, left + WIDTH_COLUMNS, 1, HEIGHT_ROWS);
    sheet.getPrintSetup().setFitHeight((short) 1);
    sheet.setRepeatingRows(null);
  }

  private void add(XDDFLineChartData data, String name, Palette.Stroke stroke) {
    int column = headings.indexOf(name);
    if (column < 0) {
      throw new IllegalArgumentException("no column for the line " + name + " in " + headings);
    }
    XDDFLineChartData.Series series =
        (XDDFLineChartData.Series) data.addSeries(range(0), range(column));
    series.setTitle(name, new CellReference(sheet.getSheetName(), 0, column, true, true));
    series.setSmooth(false);
    series.setMarkerStyle(MarkerStyle.NONE);
    series.setLineProperties(line(stroke.colour(), 1.75, preset(stroke.dash())));
  }

  private XDDFNumericalDataSource<Double> range(int column) {
    return XDDFDataSourcesFactory.fromNumericCellRange(
        sheet, new CellRangeAddress(1, chart.days().size(), column, column));
  }

  private void bounds(XDDFValueAxis axis) {
    DoubleSummaryStatistics all =
        chart.lines().stream()
            .flatMap(line -> line.values().stream())
            .mapToDouble(Double::doubleValue)
            .summaryStatistics();
    axis.setMinimum(Math.floor(all.getMin() / STEP) * STEP);
    axis.setMaximum(Math.ceil(all.getMax() / STEP) * STEP);
    axis.setMajorUnit(STEP);
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
