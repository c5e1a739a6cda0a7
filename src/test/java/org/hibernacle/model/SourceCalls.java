package org.hibernacle.model;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Calls in the sources of the program, with the text of their arguments. */
final class SourceCalls {
  /**
   * One call.
   *
   * @param file in which it stands
   * @param method as it is called: {@code problems.error}
   * @param arguments the text of each
   */
  record Call(String file, String method, List<String> arguments) {}

  private SourceCalls() {}

  static String sources() throws IOException {
    StringBuilder text = new StringBuilder();
    for (Path file : files()) {
      text.append(Files.readString(file, UTF_8));
    }
    return text.toString();
  }

  /** The calls whose method has such a name. */
  static List<Call> of(String method) throws IOException {
    List<Call> calls = new ArrayList<>();
    for (Path file : files()) {
      String text = Files.readString(file, UTF_8);
      Matcher start = Pattern.compile("(?<![\\w.])(" + method + ")\\(").matcher(text);
      while (start.find()) {
        calls.add(
            new Call(
                String.valueOf(file.getFileName()), start.group(1), arguments(text, start.end())));
      }
    }
    return calls;
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
      return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    }
  }

  /** The arguments that begin there, up to the end of the call. */
  private static List<String> arguments(String text, int from) {
    List<String> arguments = new ArrayList<>();
    StringBuilder argument = new StringBuilder();
    int depth = 0;
    boolean quoted = false;
    for (int i = from; ; i++) {
      char c = text.charAt(i);
      quoted ^= c == '"' && text.charAt(i - 1) != '\\';
      depth += quoted ? 0 : "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
      boolean ends = depth < 0 || (depth == 0 && !quoted && c == ',');
      if (!ends) {
        argument.append(c);
        continue;
      }
      if (!argument.toString().isBlank()) {
        arguments.add(argument.toString().strip());
      }
      argument.setLength(0);
      if (depth < 0) {
        return arguments;
      }
    }
  }
}
