package org.hibernacle.dist;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes a Java runtime that holds what the program needs and no more, for the system on which this
 * runs.
 */
public final class RuntimeImage {
  /** What no class asks for by name: words of other languages, and encodings such as Shift_JIS. */
  private static final List<String> BY_SERVICE = List.of("jdk.localedata", "jdk.charsets");

  private RuntimeImage() {}

  /** The program's jar, folder of the libraries, folder to write to. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path runtime = Path.of(args[2]);
    delete(runtime);
    String needed =
        run(
            "jdeps",
            "--print-module-deps",
            "--ignore-missing-deps",
            "--multi-release",
            "17",
            "--class-path",
            classPath(Path.of(args[1])),
            args[0]);
    Set<String> modules = new TreeSet<>(List.of(needed.strip().split(",")));
    modules.addAll(BY_SERVICE);
    System.out.println("modules: " + modules);
    run(
        "jlink",
        "--add-modules",
        String.join(",", modules),
        "--strip-java-debug-attributes",
        "--no-header-files",
        "--no-man-pages",
        "--dedup-legal-notices=error-if-not-same-content",
        "--output",
        runtime.toString());
    shareClasses(runtime);
  }

  /** Java's own classes made ready for a quick start, as every Java comes with. */
  private static void shareClasses(Path runtime) throws IOException, InterruptedException {
    Process java =
        new ProcessBuilder(
                runtime.resolve("bin").resolve("java").toString(), "-Xshare:dump", "-Xlog:disable")
            .inheritIO()
            .start();
    if (java.waitFor() != 0) {
      throw new IOException(runtime + " does not start");
    }
  }

  private static String classPath(Path libraries) throws IOException {
    try (Stream<Path> files = Files.list(libraries)) {
      return files.map(Path::toString).sorted().collect(Collectors.joining(File.pathSeparator));
    }
  }

  private static String run(String tool, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        ToolProvider.findFirst(tool)
            .orElseThrow(() -> new IllegalStateException("this Java has no " + tool))
            .run(new PrintWriter(out), new PrintWriter(err), words);
    if (code != 0) {
      throw new IllegalStateException(tool + ": " + out + err);
    }
    return out.toString();
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
