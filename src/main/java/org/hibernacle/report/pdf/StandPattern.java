package org.hibernacle.report.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Strips;

/** Fields that tell bench, ground and roof apart without colour: empty, dotted, hatched. */
final class StandPattern {
  private static final float DOTS_APART = 5;
  private static final float DOT = 0.55f;
  private static final float LINES_APART = 5;

  private StandPattern() {}

  static void draw(
      PdfContentByte canvas,
      Palette.Look look,
      Strips.Stand stand,
      float x,
      float y,
      float width,
      float height) {
    canvas.saveState();
    canvas.rectangle(x, y, width, height);
    canvas.setColorFill(new Color(look.fill()));
    canvas.fill();
    canvas.rectangle(x, y, width, height);
    canvas.clip();
    canvas.newPath();
    canvas.setColorFill(new Color(look.ink()));
    canvas.setColorStroke(new Color(look.ink()));
    canvas.setLineWidth(0.45f);
    switch (stand) {
      case BENCH -> {}
      case GROUND -> dots(canvas, x, y, width, height);
      case ROOF -> hatch(canvas, x, y, width, height);
    }
    canvas.restoreState();
    canvas.setColorStroke(new Color(look.ink()));
    canvas.setLineWidth(0.6f);
    canvas.rectangle(x, y, width, height);
    canvas.stroke();
  }

  private static void dots(PdfContentByte canvas, float x, float y, float width, float height) {
    int row = 0;
    for (float dotY = y + 2.5f; dotY < y + height; dotY += DOTS_APART / 2) {
      float shift = row++ % 2 == 0 ? 0 : DOTS_APART / 2;
      for (float dotX = x + 2 + shift; dotX < x + width; dotX += DOTS_APART) {
        canvas.circle(dotX, dotY, DOT);
      }
    }
    canvas.fill();
  }

  private static void hatch(PdfContentByte canvas, float x, float y, float width, float height) {
    for (float foot = x - height; foot < x + width; foot += LINES_APART) {
      canvas.moveTo(foot, y);
      canvas.lineTo(foot + height, y + height);
    }
    canvas.stroke();
  }
}
