package org.hibernacle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.input.Problems;
import org.hibernacle.report.pdf.Missing;
import org.hibernacle.report.pdf.PaperFont;
import picocli.CommandLine.Option;

/** A font for other scripts; shared by the commands that write paper. */
final class FontOption {
  /** Larger than any font of all scripts. */
  private static final long MOST_BYTES = 64L * 1024 * 1024;

  private static final int LONGEST_TEXT = 60;
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

  private static Optional<PaperFont> read(Path path, Problems problems) {
    String found;
    try {
      if (!Files.isRegularFile(path)) {
        found = "there is no such file";
      } else if (Files.size(path) > MOST_BYTES) {
        found = "the file is too large for a font";
      } else {
        return Optional.of(
            PaperFont.of(String.valueOf(path.getFileName()), Files.readAllBytes(path)));
      }
    } catch (IOException e) {
      found = String.valueOf(e.getMessage());
    }
    problems.error(
        "OU-631", path.toString(), found, "a TrueType or OpenType font, named .ttf or .otf");
    return Optional.empty();
  }

  /** Warns of characters that can not be shown, saying where they stand first. */
  static void warn(String name, List<Missing> missing, PrintWriter err) {
    if (missing.isEmpty()) {
      return;
    }
    Problems problems = new Problems();
    List<String> found = new ArrayList<>();
    missing.stream()
        .limit(MOST_CHARACTERS)
        .forEach(m -> found.add(m.character() + " in \"" + shortened(m.text()) + "\""));
    if (missing.size() > MOST_CHARACTERS) {
      found.add("and " + (missing.size() - MOST_CHARACTERS) + " more");
    }
    problems.warning(
        "OU-630",
        name,
        "no font here has " + String.join(", ", found),
        "a font that has them: give one with --font FILE",
        "a mark stands in their place");
    ProblemPrinter.print(problems, err);
  }

  private static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST_TEXT
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_TEXT)) + "...";
  }
}
