package org.hibernacle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Whether somebody watches the error stream. Java 17 can not tell, and later ones say yes to a
 * console that leads into a file; the launcher can, and so can some systems. In doubt nobody does.
 */
final class Terminal {
  /** Set to true or false by a launcher that asked the system. */
  static final String TOLD = "hibernacle.terminal";

  /** Where some systems tell what this process writes its errors to. */
  private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");

  private Terminal() {}

  static boolean isWatched() {
    return isWatched(Optional.ofNullable(System.getProperty(TOLD)), errorStream());
  }

  /**
   * The same, of what was found.
   *
   * @param told by the launcher
   * @param errorStream what the system says it leads to
   */
  static boolean isWatched(Optional<String> told, Optional<String> errorStream) {
    return told.map(Boolean::parseBoolean)
        .or(() -> errorStream.map(Terminal::isTerminal))
        .orElse(false);
  }

  private static boolean isTerminal(String device) {
    return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty");
  }

  private static Optional<String> errorStream() {
    try {
      return Optional.of(Files.readSymbolicLink(ERROR_STREAM).toString());
    } catch (IOException | UnsupportedOperationException e) {
      return Optional.empty();
    }
  }
}
