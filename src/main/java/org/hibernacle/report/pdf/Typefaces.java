package org.hibernacle.report.pdf;

import com.lowagie.text.Chunk;
import com.lowagie.text.Font;
import com.lowagie.text.Phrase;
import com.lowagie.text.SplitCharacter;
import com.lowagie.text.pdf.BaseFont;
import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hibernacle.report.Palette;

/**
 * The two embedded faces and the colours they are printed in. All words of the file pass through
 * {@link #phrase}, which puts a visible mark in place of each character that the faces lack and
 * remembers it: the PDF library would drop it without a word.
 */
final class Typefaces {
  /** U+FFFD, what Unicode offers for a character that can not be shown. */
  private static final int REPLACEMENT = 0xFFFD;

  private static final SplitCharacter LINE_ENDS = new LineEnds();

  private final Palette palette;
  private final BaseFont regular;
  private final BaseFont bold;
  private final SortedSet<Integer> missing = new TreeSet<>();

  Typefaces(Palette palette) throws IOException {
    this.palette = palette;
    regular = face("DejaVuSansCondensed.ttf", 0.0);
    bold = face("DejaVuSansCondensed-Bold.ttf", 0.04);
  }

  private static BaseFont face(String file, double subsetPrefix) throws IOException {
    try (InputStream in = Typefaces.class.getResourceAsStream("fonts/" + file)) {
      if (in == null) {
        throw new IOException("the program file is damaged: the font " + file + " is not in it");
      }
      BaseFont face =
          BaseFont.createFont(
              file,
              BaseFont.IDENTITY_H,
              BaseFont.EMBEDDED,
              BaseFont.NOT_CACHED,
              in.readAllBytes(),
              null);
      face.setSecureRandom(new FixedPrefix(subsetPrefix));
      return face;
    }
  }

  /** Words ready to be set. */
  Phrase phrase(String words, Style style) {
    Chunk chunk = new Chunk(printable(words, style), font(style));
    chunk.setSplitCharacter(LINE_ENDS);
    return new Phrase(chunk);
  }

  /** The colours of this file. */
  Palette palette() {
    return palette;
  }

  /** Colour of the letters, 0xRRGGBB. */
  int ink(Style style) {
    return palette.look(style.role()).ink();
  }

  Font font(Style style) {
    return new Font(face(style), style.sizePt(), Font.NORMAL, new Color(ink(style)));
  }

  /** Width of the words on one line, in points. */
  float width(String words, Style style) {
    return face(style).getWidthPoint(printable(words, style), style.sizePt());
  }

  /** Each character that was asked for and that the faces lack, with its code. */
  List<String> missingCharacters() {
    return missing.stream()
        .map(c -> String.format(Locale.ROOT, "%s (U+%04X)", Character.toString(c), c))
        .toList();
  }

  private BaseFont face(Style style) {
    return style.bold() ? bold : regular;
  }

  private String printable(String words, Style style) {
    BaseFont face = face(style);
    StringBuilder out = new StringBuilder(words.length());
    Normalizer.normalize(words, Normalizer.Form.NFC)
        .codePoints()
        .forEach(
            c -> {
              if (c == '\n') {
                out.append('\n');
              } else if (c == '\t' || c == '\r') {
                out.append(' ');
              } else if (face.charExists(c)) {
                out.appendCodePoint(c);
              } else {
                missing.add(c);
                out.appendCodePoint(REPLACEMENT);
              }
            });
    return out.toString();
  }

  /** Makes the letters before the name of an embedded part of a font the same in every run. */
  private static final class FixedPrefix extends SecureRandom {
    private static final long serialVersionUID = 1;
    private final double value;

    FixedPrefix(double value) {
      this.value = value;
    }

    @Override
    public double nextDouble() {
      return value;
    }
  }
}
