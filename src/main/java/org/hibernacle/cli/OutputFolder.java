package org.hibernacle.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes several files so that each is either the old one or the new one, whole: everything is
 * written beside its target first, and only when all of it stands are the targets replaced, in the
 * order given.
 */
final class OutputFolder {
  private final Path folder;
  private final Map<Path, Path> waiting = new LinkedHashMap<>();

  OutputFolder(Path folder) {
    this.folder = folder;
  }

  /** Writes bytes to a stream it is given. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Where a file of that name will stand. */
  Path target(String name) {
    return folder.resolve(name);
  }

  /**
   * Writes one file beside its target.
   *
   * @throws IOException if the folder can not be made or written to, or the target is open in
   *     another program
   */
  void prepare(String name, Content content) throws IOException {
    Files.createDirectories(folder);
    refuseIfOpenElsewhere(name);
    Path target = target(name);
    Path temporary = folder.resolve("." + name + ".new");
    waiting.put(target, temporary);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(temporary))) {
      content.writeTo(out);
    }
  }

  /** Office programs leave a file beside a workbook while they have it open. */
  private void refuseIfOpenElsewhere(String name) throws IOException {
    for (String lock : List.of(".~lock." + name + "#", "~$" + name)) {
      if (Files.exists(folder.resolve(lock))) {
        throw new IOException(
            target(name) + " is open in another program (" + lock + " stands beside it)");
      }
    }
  }

  /** Replaces the targets, in the order of preparation, and returns them. */
  List<Path> replace() throws IOException {
    List<Path> written = new ArrayList<>();
    for (Map.Entry<Path, Path> file : waiting.entrySet()) {
      Path target = file.getKey();
      try {
        Files.move(file.getValue(), target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(file.getValue(), target, StandardCopyOption.REPLACE_EXISTING);
      }
      written.add(target);
    }
    waiting.clear();
    return written;
  }

  /** Removes what was prepared and not put in place. */
  void discard() {
    for (Path temporary : waiting.values()) {
      try {
        Files.deleteIfExists(temporary);
      } catch (IOException e) {
        // A leftover hidden file harms nothing; the reason for giving up is what the user must see.
      }
    }
    waiting.clear();
  }
}
