package org.hibernacle.report.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.util.Locale;

/**
 * A font of the keeper's for characters that the program's own fonts lack. Letters are set one
 * after the other from left to right: scripts that join their letters, or run from right to left,
 * are not shaped.
 */
public final class PaperFont {
  private final String file;
  private final byte[] bytes;

  private PaperFont(String file, byte[] bytes) {
    this.file = file;
    this.bytes = bytes;
  }

  /**
   * The font in a TrueType or OpenType file.
   *
   * @param name of the file, telling its kind by its ending, {@code .ttf} or {@code .otf}
   * @param bytes of the file
   * @throws IOException if it is no such font, or may not be embedded
   */
  public static PaperFont of(String name, byte[] bytes) throws IOException {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (!ending.equals("ttf") && !ending.equals("otf")) {
      throw new IOException("its name ends neither in .ttf nor in .otf");
    }
    PaperFont font = new PaperFont("other." + ending, bytes.clone());
    try {
      font.face();
    } catch (IOException | RuntimeException e) {
      // The library meets damage with exceptions of many kinds.
      throw new IOException("it is damaged, of another kind, or may not be embedded", e);
    }
    return font;
  }

  /** Not shared, so that each file holds only the letters that it shows. */
  BaseFont face() throws IOException {
    return BaseFont.createFont(
        file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED, bytes.clone(), null);
  }
}
