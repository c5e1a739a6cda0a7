package org.hibernacle.report.pdf;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks words into lines that are no wider than a label. */
final class LabelText {
  private static final String CUT = "\u2026";

  private final Typefaces type;
  private final Locale language;
  private final float widthPt;

  LabelText(Typefaces type, Locale language, float widthPt) {
    this.type = type;
    this.language = language;
    this.widthPt = widthPt;
  }

  /** The lines; a word that is wider than the label alone goes on in the next line. */
  List<String> lines(String words, Style style) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String piece : pieces(words)) {
      if (!fits(line + piece, style) && !line.isEmpty()) {
        lines.add(line.toString().strip());
        line.setLength(0);
      }
      line.append(piece);
      while (!fits(line.toString(), style) && line.codePointCount(0, line.length()) > 1) {
        int end = longestStart(line.toString(), style);
        lines.add(line.substring(0, end).strip());
        line.delete(0, end);
      }
    }
    if (!line.toString().isBlank()) {
      lines.add(line.toString().strip());
    }
    return lines;
  }

  /**
   * At most so many lines. What does not fit is left off at the end of a word, with an ellipsis in
   * its place.
   */
  List<String> lines(String words, Style style, int most) {
    if (lines(words, style).size() <= most) {
      return lines(words, style);
    }
    List<String> pieces = pieces(words);
    for (int keep = pieces.size() - 1; keep > 0; keep--) {
      String start = String.join("", pieces.subList(0, keep)).strip();
      List<String> shortened = lines(start + CUT, style);
      if (shortened.size() <= most) {
        return shortened;
      }
    }
    // One endless word.
    String start = words;
    while (lines(start + CUT, style).size() > most) {
      start = start.substring(0, start.offsetByCodePoints(start.length(), -1));
    }
    return lines(start + CUT, style);
  }

  /** Width of the widest word, in points. */
  float widestWordPt(String words, Style style) {
    return (float)
        pieces(words).stream().mapToDouble(p -> type.width(p.strip(), style)).max().orElse(0);
  }

  /** Width of a line, in points. */
  float widthPt() {
    return widthPt;
  }

  private boolean fits(String words, Style style) {
    return type.width(words.strip(), style) <= widthPt;
  }

  private int longestStart(String words, Style style) {
    int end = words.offsetByCodePoints(0, 1);
    while (end < words.length()) {
      int next = words.offsetByCodePoints(end, 1);
      if (!fits(words.substring(0, next), style)) {
        return end;
      }
      end = next;
    }
    return end;
  }

  /** Words with the blanks that follow them, as the language parts them. */
  private List<String> pieces(String words) {
    BreakIterator breaks = BreakIterator.getLineInstance(language);
    breaks.setText(words);
    List<String> pieces = new ArrayList<>();
    int from = breaks.first();
    for (int to = breaks.next(); to != BreakIterator.DONE; from = to, to = breaks.next()) {
      pieces.add(words.substring(from, to));
    }
    return pieces;
  }
}
