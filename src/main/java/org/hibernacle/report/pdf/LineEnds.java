package org.hibernacle.report.pdf;

import com.lowagie.text.SplitCharacter;
import com.lowagie.text.pdf.DefaultSplitCharacter;
import com.lowagie.text.pdf.PdfChunk;
import java.util.regex.Pattern;

/** Where a line may end: neither between a number and its unit nor after a minus sign. */
final class LineEnds implements SplitCharacter {
  private static final SplitCharacter ORDINARY = new DefaultSplitCharacter();

  /** What stands between words: blanks, or nothing after a character of Chinese or Japanese. */
  static final Pattern BETWEEN_WORDS =
      Pattern.compile("\\s+|(?<=[\\u2e80-\\ud7a0\\uf900-\\ufaff\\ufe30-\\ufe4f\\uff61-\\uff9f])");

  @Override
  public boolean isSplitCharacter(int start, int current, int end, char[] text, PdfChunk[] fonts) {
    char before = current > 0 ? text[current - 1] : ' ';
    char after = current + 1 < end ? text[current + 1] : ' ';
    if (text[current] == ' ' && Character.isDigit(before) && isUnit(text, current + 1, end)) {
      return false;
    } else if (text[current] == '-' && !(Character.isLetter(before) && Character.isLetter(after))) {
      return false;
    }
    return ORDINARY.isSplitCharacter(start, current, end, text, fonts);
  }

  /** A degree sign, or one or two letters alone. */
  private static boolean isUnit(char[] text, int from, int end) {
    if (from < end && text[from] == '\u00b0') {
      return true;
    }
    int to = from;
    while (to < end && Character.isLetter(text[to])) {
      to++;
    }
    return to > from && to - from <= 2 && isBoundary(text, to, end);
  }

  private static boolean isBoundary(char[] text, int at, int end) {
    return at >= end || ";,.) ".indexOf(text[at]) >= 0;
  }
}
