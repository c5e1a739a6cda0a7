package org.hibernacle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Phrase;
import org.hibernacle.report.pdf.Missing;
import org.hibernacle.report.pdf.PaperFont;
import picocli.CommandLine.Option;

/** A font for other scripts; shared by the commands that write paper. */
final class FontOption {
  /** Larger than any font of all scripts. */
  private static final long MOST_BYTES = 64L * 1024 * 1024;

  /** Characters told on each side of one that is missing. */
  private static final int AROUND = 30;

  private static final int MOST_CHARACTERS = 20;

  @Option(
      names = "--font",
      paramLabel = "FILE",
      description =
          "A font (.ttf or .otf) for characters that the PDF files' own fonts lack. These have the"
              + " Latin, Greek and Cyrillic letters.")
  private Optional<Path> file = Optional.empty();

  /** The font, if one was given and can be used. */
  Optional<PaperFont> read(Problems problems) {
    return file.flatMap(path -> read(path, problems));
  }

  /** The file, if one was given. */
  List<Path> files() {
    return file.stream().toList();
  }

  private static Optional<PaperFont> read(Path path, Problems problems) {
    try {
      if (!Files.isRegularFile(path)) {
        problems.error("OU-631.none", path.toString());
      } else if (Files.size(path) > MOST_BYTES) {
        problems.error("OU-631.large", path.toString());
      } else {
        return Optional.of(
            PaperFont.of(String.valueOf(path.getFileName()), Files.readAllBytes(path)));
      }
    } catch (IOException e) {
      problems.error("OU-631", path.toString(), String.valueOf(e.getMessage()));
    }
    return Optional.empty();
  }

  /** Warns of characters that can not be shown, saying where they stand first. */
  static void warn(String name, List<Missing> missing, Problems problems) {
    if (missing.isEmpty()) {
      return;
    }
    List<Phrase> first =
        missing.stream()
            .limit(MOST_CHARACTERS)
            .map(m -> Phrase.of("character-in", m.character(), around(m)))
            .toList();
    int more = missing.size() - first.size();
    if (more > 0) {
      problems.warning("OU-630.more", name, first, more);
    } else {
      problems.warning("OU-630", name, first);
    }
  }

  /** The text with the character, cut to its neighbourhood. */
  private static String around(Missing missing) {
    int[] text = missing.text().codePoints().toArray();
    int at = 0;
    while (at < text.length - 1 && text[at] != missing.codePoint()) {
      at++;
    }
    int from = Math.max(0, at - AROUND);
    int to = Math.min(text.length, at + AROUND);
    String told = new String(text, from, to - from).replace('\n', ' ').strip();
    return (from > 0 ? "..." : "") + told + (to < text.length ? "..." : "");
  }
}
