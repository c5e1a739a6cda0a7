package org.hibernacle.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.report.LabelSheet.Label;
import org.hibernacle.report.StyleRole;

/** The lines of a label, from top to bottom, in letters of one size. */
final class LabelLayout {
  /** Smaller letters are not read in a dim shed. */
  static final float LEAST_PT = 9;

  private static final float MOST_PT = 11;
  private static final float STEP_PT = 0.5f;
  private static final float LEADING = 1.2f;

  /** The Id is found from afar. */
  private static final float ID_SCALE = 1.4f;

  private static final int MOST_NAME_LINES = 2;

  private final LabelText text;
  private final Style plain;

  private LabelLayout(LabelText text, float sizePt) {
    this.text = text;
    this.plain = new Style(false, sizePt, StyleRole.PLAIN);
  }

  /** Letters of that size. */
  static LabelLayout at(LabelText text, float sizePt) {
    return new LabelLayout(text, sizePt);
  }

  /**
   * The largest letters in which all labels are whole and no higher than that. One that is not
   * whole in the least letters has no say: it alone is set in these.
   */
  static LabelLayout largest(LabelText text, List<Label> labels, float heightPt) {
    LabelLayout least = new LabelLayout(text, LEAST_PT);
    List<Label> asked = labels.stream().filter(least::whole).toList();
    for (float sizePt = MOST_PT; sizePt > LEAST_PT; sizePt -= STEP_PT) {
      LabelLayout layout = new LabelLayout(text, sizePt);
      if (asked.stream().allMatch(l -> layout.whole(l) && layout.heightPt(l) <= heightPt)) {
        return layout;
      }
    }
    return least;
  }

  /**
   * One line.
   *
   * @param words to be set
   * @param style of the letters
   * @param baselinePt below the top of the label's words
   */
  record Line(String words, Style style, float baselinePt) {}

  /** The lines in these letters, or in the least ones where these do not hold the label whole. */
  List<Line> lines(Label label) {
    return whole(label) ? linesAsIs(label) : at(text, LEAST_PT).linesAsIs(label);
  }

  private List<Line> linesAsIs(Label label) {
    List<Line> lines = new ArrayList<>();
    add(lines, text.lines(label.id(), id()), id());
    add(lines, text.lines(label.name(), plain.asBold(), MOST_NAME_LINES), plain.asBold());
    add(lines, text.lines(label.place(), plain, MOST_NAME_LINES), plain);
    label.dates().forEach(date -> add(lines, text.lines(date, plain), plain));
    add(lines, text.lines(label.night(), plain), plain);
    return lines;
  }

  float heightPt(Label label) {
    List<Line> lines = lines(label);
    Line last = lines.get(lines.size() - 1);
    return last.baselinePt() + (LEADING - 1 + DESCENT) * last.style().sizePt();
  }

  /** Of the letters, part of their size. */
  private static final float DESCENT = 0.24f;

  /** Width of the widest word of the Id, the dates and the night, in points. */
  float widestWordPt(Label label) {
    float widest =
        Math.max(text.widestWordPt(label.id(), id()), text.widestWordPt(label.night(), plain));
    for (String date : label.dates()) {
      widest = Math.max(widest, text.widestWordPt(date, plain));
    }
    return widest;
  }

  /** Whether nothing is shortened or broken within a word. */
  boolean whole(Label label) {
    return widestWordPt(label) <= text.widthPt()
        && text.widestWordPt(label.name(), plain.asBold()) <= text.widthPt()
        && text.lines(label.name(), plain.asBold()).size() <= MOST_NAME_LINES
        && text.lines(label.place(), plain).size() <= MOST_NAME_LINES;
  }

  private Style id() {
    return plain.asBold().at(ID_SCALE * plain.sizePt());
  }

  private static void add(List<Line> lines, List<String> words, Style style) {
    for (String line : words) {
      float above = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).baselinePt();
      float step = lines.isEmpty() ? 1 : LEADING;
      lines.add(new Line(line, style, above + step * style.sizePt()));
    }
  }
}
