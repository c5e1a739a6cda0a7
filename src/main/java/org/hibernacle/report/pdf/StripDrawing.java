package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Strips;

/** One plant's strip: bars above, the winters' own days below, thick strokes for moves. */
final class StripDrawing {
  static final float BAR = 14;
  private static final float LANE = 6;
  private static final float AROUND = 1.5f;
  private static final float CAP = 2;
  private static final Style WORD = Style.SUBTLE;

  private final Typefaces type;
  private final TimeAxis axis;

  StripDrawing(Typefaces type, TimeAxis axis) {
    this.type = type;
    this.axis = axis;
  }

  /** The drawing, as wide as its axis. */
  PdfTemplate draw(PdfWriter writer, Strips.Strip strip) {
    List<Integer> lanes = lanes(strip.moves());
    int count = lanes.stream().mapToInt(lane -> lane + 1).max().orElse(0);
    float bottom = AROUND + count * LANE;
    float height = bottom + BAR + AROUND;
    float width = axis.left() + axis.width() + AROUND;
    PdfTemplate canvas = PdfTemplate.createTemplate(writer, width, height);
    months(canvas, height);
    strip.bars().forEach(bar -> bar(canvas, bar, bottom));
    for (int i = 0; i < strip.moves().size(); i++) {
      Strips.Mark move = strip.moves().get(i);
      if (lanes.get(i) >= 0) {
        ownDays(canvas, move, bottom - (lanes.get(i) + 0.5f) * LANE);
      }
      stroke(canvas, move, bottom);
    }
    return canvas;
  }

  private void months(PdfContentByte canvas, float height) {
    canvas.setLineWidth(0.4f);
    canvas.setColorStroke(new Color(type.palette().rule()));
    for (LocalDate month : axis.months()) {
      canvas.moveTo(axis.x(month), 0);
      canvas.lineTo(axis.x(month), height);
    }
    canvas.moveTo(axis.left() + axis.width(), 0);
    canvas.lineTo(axis.left() + axis.width(), height);
    canvas.stroke();
  }

  private void bar(PdfContentByte canvas, Strips.Bar bar, float y) {
    float from = axis.x(bar.from());
    float width = axis.x(bar.toExclusive()) - from;
    Palette.Look look = type.palette().look(bar.role());
    StandPattern.draw(canvas, look, bar.stand(), from, y, width, BAR);
    Style style = WORD.in(bar.role());
    for (String word : bar.words()) {
      float wide = type.width(word, style);
      if (wide + 6 <= width) {
        // The pattern is kept off the letters.
        canvas.setColorFill(new Color(look.fill()));
        canvas.rectangle(from + (width - wide) / 2 - 2, y + 1, wide + 4, BAR - 2);
        canvas.fill();
        ColumnText.showTextAligned(
            canvas, Element.ALIGN_CENTER, type.phrase(word, style), from + width / 2, y + 4, 0);
        return;
      }
    }
  }

  private void stroke(PdfContentByte canvas, Strips.Mark move, float y) {
    if (!move.date().isBefore(axis.from()) && move.date().isBefore(axis.toExclusive())) {
      canvas.setLineWidth(2.2f);
      canvas.setColorStroke(new Color(type.palette().look(move.role()).ink()));
      canvas.moveTo(axis.x(move.date()), y - AROUND);
      canvas.lineTo(axis.x(move.date()), y + BAR + AROUND);
      canvas.stroke();
    }
  }

  /** A line from early to late with caps, a dot for typical. */
  private void ownDays(PdfContentByte canvas, Strips.Mark move, float y) {
    Strips.OwnDays own = move.own().orElseThrow();
    Color ink = new Color(type.palette().look(move.role()).ink());
    float early = axis.x(own.early());
    float late = axis.x(own.late());
    canvas.setColorStroke(ink);
    canvas.setLineWidth(0.8f);
    canvas.moveTo(early, y);
    canvas.lineTo(late, y);
    for (float end : new float[] {early, late}) {
      canvas.moveTo(end, y - CAP);
      canvas.lineTo(end, y + CAP);
    }
    canvas.stroke();
    canvas.setColorFill(ink);
    canvas.circle(axis.x(own.typical()), y, CAP);
    canvas.fill();
  }

  /** The lane of each move's own days, from the top; -1 where it has none. None overlap. */
  private List<Integer> lanes(List<Strips.Mark> moves) {
    List<Integer> lanes = new ArrayList<>();
    List<Float> ends = new ArrayList<>();
    for (Strips.Mark move : moves) {
      if (move.own().isEmpty()) {
        lanes.add(-1);
        continue;
      }
      float from = axis.x(move.own().get().early()) - CAP;
      float to = axis.x(move.own().get().late()) + CAP;
      int lane = 0;
      while (lane < ends.size() && ends.get(lane) + 1 > from) {
        lane++;
      }
      if (lane == ends.size()) {
        ends.add(to);
      } else {
        ends.set(lane, to);
      }
      lanes.add(lane);
    }
    return lanes;
  }
}
