package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Image;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.hibernacle.report.Display;
import org.hibernacle.report.Palette;
import org.hibernacle.report.TemperatureChart;
import org.hibernacle.report.Words;

/** The temperature lines as a drawing. Dashes tell the lines apart without colour. */
final class TemperatureDrawing {
  private static final Style TICK = Style.SUBTLE;
  private static final float LABEL_DROP = 3;

  private final TemperatureChart chart;
  private final Typefaces type;
  private final Locale language;
  private final Display display;
  private final TemperatureScale scale;

  TemperatureDrawing(TemperatureChart chart, Typefaces type, Words words) {
    this.chart = chart;
    this.type = type;
    this.language = words.locale();
    this.display = new Display(words);
    scale = TemperatureScale.over(chart.lines());
  }

  /** Whether there is a line to draw. */
  static boolean worthDrawing(TemperatureChart chart) {
    return chart.days().size() > 1
        && chart.lines().stream().flatMap(l -> l.values().stream()).anyMatch(Double::isFinite);
  }

  /** Title, drawing and names of the lines, kept on one page. */
  PdfPTable table(PdfWriter writer, float width, float height) {
    PdfPTable table = Cells.table(1);
    table.setKeepTogether(true);
    table.addCell(
        Cells.padded(Cells.of(type.phrase(chart.title(), Style.COLUMN_HEADING.at(11))), 0, 2));
    table.addCell(Cells.padded(Cells.of(type.phrase(chart.axis(), TICK)), 0, 3));
    table.addCell(picture(draw(writer, width, height)));
    table.addCell(Cells.padded(Cells.of(names(writer, width)), 0, 5));
    return table;
  }

  private static PdfPCell picture(PdfTemplate drawing) {
    PdfPCell cell = new PdfPCell(Image.getInstance(drawing), false);
    cell.setBorder(0);
    cell.setPadding(0);
    return cell;
  }

  private PdfTemplate draw(PdfWriter writer, float width, float height) {
    PdfTemplate canvas = PdfTemplate.createTemplate(writer, width, height);
    float left = 4 + tickWidth();
    float bottom = 16;
    Plot plot = new Plot(left, bottom, width - left - 2, height - bottom - 6);
    drawScale(canvas, plot);
    drawMonths(canvas, plot);
    for (int i = 0; i < chart.lines().size(); i++) {
      dress(canvas, i);
      drawLine(canvas, plot, chart.lines().get(i).values());
    }
    return canvas;
  }

  private void drawScale(PdfTemplate canvas, Plot plot) {
    for (double tick : scale.ticks()) {
      float y = plot.y(scale.share(tick));
      canvas.setLineWidth(tick == 0 ? 0.9f : 0.4f);
      canvas.setColorStroke(new Color(tick == 0 ? type.palette().line() : type.palette().rule()));
      canvas.moveTo(plot.left(), y);
      canvas.lineTo(plot.left() + plot.width(), y);
      canvas.stroke();
      write(canvas, Element.ALIGN_RIGHT, number(tick), plot.left() - 4, y - LABEL_DROP);
    }
  }

  private void drawMonths(PdfTemplate canvas, Plot plot) {
    List<LocalDate> days = chart.days();
    DateTimeFormatter month = DateTimeFormatter.ofPattern("LLL", language);
    DateTimeFormatter monthAndYear = DateTimeFormatter.ofPattern("LLL yyyy", language);
    int from = 0;
    while (from < days.size()) {
      int to = from;
      while (to < days.size() && days.get(to).getMonth() == days.get(from).getMonth()) {
        to++;
      }
      float x0 = plot.x(from, days.size());
      float x1 = plot.x(Math.min(to, days.size() - 1), days.size());
      if (from > 0) {
        canvas.setLineWidth(0.4f);
        canvas.setColorStroke(new Color(type.palette().rule()));
        canvas.moveTo(x0, plot.bottom() - 4);
        canvas.lineTo(x0, plot.bottom() + plot.height());
        canvas.stroke();
      }
      LocalDate day = days.get(from);
      String full = monthAndYear.format(day);
      boolean newYear = from == 0 || day.getMonthValue() == 1;
      String label = newYear && fits(full, x1 - x0) ? full : month.format(day);
      if (fits(label, x1 - x0)) {
        write(canvas, Element.ALIGN_CENTER, label, (x0 + x1) / 2, plot.bottom() - 12);
      }
      from = to;
    }
  }

  private void drawLine(PdfTemplate canvas, Plot plot, List<Double> values) {
    boolean down = false;
    for (int i = 0; i < values.size(); i++) {
      double value = values.get(i);
      if (!Double.isFinite(value)) {
        down = false;
        continue;
      }
      float x = plot.x(i, values.size());
      float y = plot.y(scale.share(value));
      if (down) {
        canvas.lineTo(x, y);
      } else {
        canvas.moveTo(x, y);
      }
      down = true;
    }
    canvas.stroke();
  }

  private PdfPTable names(PdfWriter writer, float width) {
    int columns = Math.min(chart.lines().size(), 3);
    PdfPTable table = new PdfPTable(2 * columns);
    float sample = 34;
    float[] widths = new float[2 * columns];
    for (int i = 0; i < columns; i++) {
      widths[2 * i] = sample;
      widths[2 * i + 1] = width / columns - sample;
    }
    table.setWidths(widths);
    for (int i = 0; i < chart.lines().size(); i++) {
      PdfTemplate dash = PdfTemplate.createTemplate(writer, sample - 6, 10);
      dress(dash, i);
      dash.moveTo(0, 4);
      dash.lineTo(sample - 6, 4);
      dash.stroke();
      table.addCell(picture(dash));
      PdfPCell name = Cells.of(type.phrase(chart.lines().get(i).name(), Style.BODY));
      table.addCell(Cells.padded(name, 0, 1.5f));
    }
    table.completeRow();
    return table;
  }

  private void dress(PdfContentByte canvas, int line) {
    Palette.Stroke stroke = type.palette().stroke(line);
    canvas.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
    canvas.setLineWidth(1.2f);
    canvas.setColorStroke(new Color(stroke.colour()));
    canvas.setLineDash(lengths(stroke.dash()), 0);
  }

  /** On and off, in points. */
  private static float[] lengths(Palette.Dash dash) {
    return switch (dash) {
      case SOLID -> new float[] {};
      case DASHED -> new float[] {4, 2.5f};
      case DOTTED -> new float[] {1.2f, 1.8f};
      case DASH_DOT -> new float[] {5, 2, 1.2f, 2};
      case LONG_DASHED -> new float[] {9, 3};
      case LONG_DASH_DOT -> new float[] {9, 2.5f, 1.5f, 2.5f};
    };
  }

  private void write(PdfTemplate canvas, int align, String words, float x, float y) {
    ColumnText.showTextAligned(canvas, align, type.phrase(words, TICK), x, y, 0);
  }

  private boolean fits(String words, float width) {
    return type.width(words, TICK) + 4 <= width;
  }

  private float tickWidth() {
    float widest = 0;
    for (double tick : scale.ticks()) {
      widest = Math.max(widest, type.width(number(tick), TICK));
    }
    return widest;
  }

  private String number(double tick) {
    return display.number(tick, 0);
  }

  /** Where the lines go within the drawing, in points. */
  private record Plot(float left, float bottom, float width, float height) {
    float x(int index, int count) {
      return left + width * index / (count - 1);
    }

    float y(double share) {
      return bottom + (float) (height * share);
    }
  }
}
