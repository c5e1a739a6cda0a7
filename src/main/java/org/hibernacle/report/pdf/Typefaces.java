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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hibernacle.report.Palette;

/**
 * The embedded faces and the colours they are printed in. All words of the file pass through {@link
 * #phrase}: a character that the program's own faces lack is taken from the keeper's font; one that
 * this lacks too gets a visible mark and is remembered, since the PDF library would drop it without
 * a word.
 */
final class Typefaces {
  /** U+FFFD, what Unicode offers for a character that can not be shown. */
  private static final int REPLACEMENT = 0xFFFD;

  private static final SplitCharacter LINE_ENDS = new LineEnds();

  private final Palette palette;
  private final BaseFont regular;
  private final BaseFont bold;
  private final Optional<BaseFont> other;
  private final SortedMap<Integer, String> missing = new TreeMap<>();

  Typefaces(Palette palette, Optional<PaperFont> font) throws IOException {
    this.palette = palette;
    regular = face("DejaVuSansCondensed.ttf", 0.0);
    bold = face("DejaVuSansCondensed-Bold.ttf", 0.04);
    other = font.isPresent() ? Optional.of(font.get().face()) : Optional.empty();
    other.ifPresent(face -> face.setSecureRandom(new FixedPrefix(0.08)));
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
    Normalizer.normalize(words, Normalizer.Form.NFC)
        .codePoints()
        .filter(c -> isMissing(c, style))
        .forEach(c -> missing.putIfAbsent(c, words));
    Phrase phrase = new Phrase();
    for (Run run : runs(words, style)) {
      Chunk chunk = new Chunk(run.text(), font(run.face(), style));
      chunk.setSplitCharacter(LINE_ENDS);
      phrase.add(chunk);
    }
    return phrase;
  }

  /** The colours of this file. */
  Palette palette() {
    return palette;
  }

  /** Colour of the letters, 0xRRGGBB. */
  int ink(Style style) {
    return palette.look(style.role()).ink();
  }

  private Font font(BaseFont face, Style style) {
    return new Font(face, style.sizePt(), Font.NORMAL, new Color(ink(style)));
  }

  /** Width of the words on one line, in points. */
  float width(String words, Style style) {
    float width = 0;
    for (Run run : runs(words, style)) {
      width += run.face().getWidthPoint(run.text(), style.sizePt());
    }
    return width;
  }

  /** Each character that was asked for and that the faces lack. */
  List<Missing> missing() {
    return missing.entrySet().stream().map(e -> new Missing(e.getKey(), e.getValue())).toList();
  }

  /** Whether no face has the character; white space is never missing. */
  private boolean isMissing(int c, Style style) {
    return c != '\n'
        && c != '\t'
        && c != '\r'
        && !own(style).charExists(c)
        && (other.isEmpty() || !other.get().charExists(c));
  }

  private BaseFont own(Style style) {
    return style.bold() ? bold : regular;
  }

  /** Neighbouring letters of one face. */
  private record Run(BaseFont face, String text) {}

  private List<Run> runs(String words, Style style) {
    List<Run> runs = new ArrayList<>();
    BaseFont own = own(style);
    BaseFont face = own;
    StringBuilder text = new StringBuilder(words.length());
    for (int c : Normalizer.normalize(words, Normalizer.Form.NFC).codePoints().toArray()) {
      BaseFont next = own;
      int shown = c;
      if (c == '\t' || c == '\r') {
        shown = ' ';
      } else if (c != '\n' && !own.charExists(c)) {
        if (isMissing(c, style)) {
          shown = REPLACEMENT;
        } else {
          next = other.orElseThrow();
        }
      }
      if (next != face && !text.isEmpty()) {
        runs.add(new Run(face, text.toString()));
        text.setLength(0);
      }
      face = next;
      text.appendCodePoint(shown);
    }
    runs.add(new Run(face, text.toString()));
    return runs;
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
