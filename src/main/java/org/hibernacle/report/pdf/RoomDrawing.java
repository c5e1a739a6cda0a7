package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.time.LocalDate;
import java.util.List;
import org.hibernacle.report.Display;
import org.hibernacle.report.Palette;
import org.hibernacle.report.PlacePage;
import org.hibernacle.report.Strips;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/** Floor in use, a bar a week, below the line of the room there is. */
final class RoomDrawing {
  private static final Style TICK = Style.SUBTLE;
  private static final float BOTTOM = 16;
  private static final float TOP = 14;

  private final Typefaces type;
  private final Words words;

  RoomDrawing(Typefaces type, Words words) {
    this.type = type;
    this.words = words;
  }

  PdfTemplate draw(PdfWriter writer, PlacePage.RoomChart chart, float width, float height) {
    List<PlacePage.Week> weeks = chart.weeks();
    double most =
        Math.max(
            chart.room().orElse(0),
            weeks.stream().mapToDouble(PlacePage.Week::used).max().orElse(0));
    String top = new Display(words).number(most, 1);
    float left = type.width(top, TICK) + 6;
    TimeAxis axis =
        new TimeAxis(
            weeks.get(0).start(),
            weeks.get(weeks.size() - 1).start().plusWeeks(1),
            left,
            width - left - 2);
    float rise = height - BOTTOM - TOP;
    PdfTemplate canvas = PdfTemplate.createTemplate(writer, width, height);
    ground(canvas, axis);
    for (PlacePage.Week week : weeks) {
      if (week.used() > 0) {
        bar(canvas, axis, week, (float) (rise * week.used() / most));
      }
    }
    write(canvas, Element.ALIGN_RIGHT, "0", left - 4, BOTTOM - 3);
    write(canvas, Element.ALIGN_RIGHT, top, left - 4, BOTTOM + rise - 3);
    chart
        .room()
        .ifPresent(
            room -> line(canvas, axis, BOTTOM + (float) (rise * room / most), chart.roomWords()));
    return canvas;
  }

  private void ground(PdfContentByte canvas, TimeAxis axis) {
    for (LocalDate month : axis.months()) {
      String name = axis.name(month, type, TICK, words.locale());
      write(canvas, Element.ALIGN_LEFT, name, axis.x(month) + 1, 3);
      canvas.setColorStroke(new Color(type.palette().rule()));
      canvas.setLineWidth(0.4f);
      canvas.moveTo(axis.x(month), 2);
      canvas.lineTo(axis.x(month), BOTTOM);
      canvas.stroke();
    }
    canvas.setColorStroke(new Color(type.palette().line()));
    canvas.setLineWidth(0.9f);
    canvas.moveTo(axis.left(), BOTTOM);
    canvas.lineTo(axis.left() + axis.width(), BOTTOM);
    canvas.stroke();
  }

  /** A bar that is more than the room there is has a hatched field. */
  private void bar(PdfContentByte canvas, TimeAxis axis, PlacePage.Week week, float height) {
    float from = axis.x(week.start()) + 0.6f;
    float width = axis.x(week.start().plusWeeks(1)) - from - 0.6f;
    if (week.over()) {
      Palette.Look look = type.palette().look(StyleRole.DANGER);
      StandPattern.draw(canvas, look, Strips.Stand.ROOF, from, BOTTOM, width, height);
    } else {
      canvas.setColorFill(new Color(type.palette().line()));
      canvas.rectangle(from, BOTTOM, width, height);
      canvas.fill();
    }
  }

  private void line(PdfContentByte canvas, TimeAxis axis, float y, String label) {
    canvas.setColorStroke(new Color(type.ink(Style.BODY)));
    canvas.setLineWidth(1.1f);
    canvas.setLineDash(new float[] {4, 2.5f}, 0);
    canvas.moveTo(axis.left(), y);
    canvas.lineTo(axis.left() + axis.width(), y);
    canvas.stroke();
    canvas.setLineDash(new float[] {}, 0);
    write(canvas, Element.ALIGN_RIGHT, label, axis.left() + axis.width(), y + 3);
  }

  private void write(PdfContentByte canvas, int align, String text, float x, float y) {
    ColumnText.showTextAligned(canvas, align, type.phrase(text, TICK), x, y, 0);
  }
}
