package org.hibernacle.dist;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Licence texts of everything that is shipped: those that lie in a library's jar, and those of this
 * project's {@code src/dist/licences} for jars that hold none.
 */
final class Licences {
  private static final Pattern TEXT =
      Pattern.compile("META-INF/(licen[cs]es?|notice)(\\.\\w+)?", Pattern.CASE_INSENSITIVE);
  private static final Path FONTS =
      Path.of("src", "main", "resources", "org", "hibernacle", "report", "pdf", "fonts");

  private final Path project;
  private final Path texts;

  /** The licences of a project. */
  Licences(Path project) {
    this.project = project;
    texts = project.resolve("src").resolve("dist").resolve("licences");
  }

  /**
   * Writes a folder for the program, one for the fonts and one for each library.
   *
   * @param libraries folder of their jars
   * @throws IllegalStateException if one has no licence, or one is named that is not there
   */
  void write(Path libraries, Path folder) throws IOException {
    copy(texts.resolve("Apache-2.0.txt"), folder.resolve("hibernacle"));
    copy(project.resolve(FONTS).resolve("LICENSE.txt"), folder.resolve("fonts"));
    Properties kept = kept();
    TreeSet<String> unused = new TreeSet<>(kept.stringPropertyNames());
    for (Path jar : jars(libraries)) {
      String file = jar.getFileName().toString();
      String name = file.replaceAll("-\\d[^-]*\\.jar$", "");
      Path own = folder.resolve(file.replaceAll("\\.jar$", ""));
      boolean found = extract(jar, own);
      for (String text : kept.getProperty(name, "").strip().split(" +")) {
        if (!text.isEmpty()) {
          copy(texts.resolve(text), own);
          found = true;
        }
      }
      unused.remove(name);
      if (!found) {
        throw new IllegalStateException(
            "no licence of " + file + ": name its text in " + texts + "/libraries.properties");
      }
    }
    if (!unused.isEmpty()) {
      throw new IllegalStateException("licences of libraries that are not shipped: " + unused);
    }
  }

  private Properties kept() throws IOException {
    Properties kept = new Properties();
    try (InputStream in = Files.newInputStream(texts.resolve("libraries.properties"))) {
      kept.load(in);
    }
    return kept;
  }

  private static List<Path> jars(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
    }
  }

  /** Whether there is more in the jar than a notice. */
  private static boolean extract(Path jar, Path folder) throws IOException {
    boolean found = false;
    try (JarFile library = new JarFile(jar.toFile())) {
      for (JarEntry entry : library.stream().toList()) {
        if (TEXT.matcher(entry.getName()).matches()) {
          Files.createDirectories(folder);
          String name = entry.getName().substring("META-INF/".length());
          try (InputStream in = library.getInputStream(entry)) {
            Files.write(folder.resolve(name), in.readAllBytes());
          }
          found |= name.toLowerCase(Locale.ROOT).startsWith("licen");
        }
      }
    }
    return found;
  }

  private static void copy(Path text, Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.write(folder.resolve(text.getFileName().toString()), Files.readAllBytes(text));
  }
}
