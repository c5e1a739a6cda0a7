package org.hibernacle.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts new files in the place of old ones. All are written beside their targets first; then each
 * target is replaced in one step, so that a program that is killed leaves it as the old file or the
 * new one, whole. If one can not be replaced, those before it get their old content back.
 */
final class Replacement implements AutoCloseable {
  /** {@code .season-plan.xlsx.4711.new}, with the number of the process that writes it. */
  private static final Pattern TEMPORARY = Pattern.compile("\\..+\\.(\\d{1,18})\\.(?:new|old)");

  private final Path folder;
  private final Map<Path, Path> waiting = new LinkedHashMap<>();
  private final List<Path> temporary = new ArrayList<>();

  /** Makes the folder if it is not there, and removes what killed runs left in it. */
  Replacement(Path folder) throws IOException {
    this.folder = folder;
    Files.createDirectories(folder);
    sweep();
  }

  private void sweep() throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".*.{new,old}")) {
      for (Path file : files) {
        Matcher name = TEMPORARY.matcher(file.getFileName().toString());
        if (name.matches() && !isRunning(Long.parseLong(name.group(1)))) {
          discard(file);
        }
      }
    }
  }

  private static boolean isRunning(long process) {
    return process == ProcessHandle.current().pid()
        || ProcessHandle.of(process).filter(ProcessHandle::isAlive).isPresent();
  }

  /** Writes one file beside its target, through to the disk, so that a full one shows here. */
  void prepare(OutputFile file) throws IOException {
    byte[] bytes = file.bytes();
    Path target = folder.resolve(file.name());
    Path beside = beside(target, "new");
    try (FileChannel channel =
        FileChannel.open(
            beside,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
    waiting.put(target, beside);
  }

  private Path beside(Path target, String what) {
    long process = ProcessHandle.current().pid();
    Path beside = target.resolveSibling("." + target.getFileName() + "." + process + "." + what);
    temporary.add(beside);
    return beside;
  }

  /** Replaces the targets, in the order of preparation, and returns them. */
  List<Path> replace() throws IOException {
    Map<Path, Path> kept = new LinkedHashMap<>();
    for (Path target : waiting.keySet()) {
      if (Files.exists(target)) {
        Path old = beside(target, "old");
        Files.copy(target, old, StandardCopyOption.REPLACE_EXISTING);
        kept.put(target, old);
      }
    }
    List<Path> replaced = new ArrayList<>();
    try {
      for (Map.Entry<Path, Path> file : waiting.entrySet()) {
        move(file.getValue(), file.getKey());
        replaced.add(file.getKey());
      }
      return replaced;
    } catch (IOException e) {
      putBack(replaced, kept);
      throw e;
    }
  }

  private static void putBack(List<Path> replaced, Map<Path, Path> kept) throws IOException {
    for (Path target : replaced) {
      Path old = kept.get(target);
      if (old == null) {
        Files.deleteIfExists(target);
      } else {
        move(old, target);
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Removes what was written beside the targets and is not in place. */
  @Override
  public void close() {
    temporary.forEach(Replacement::discard);
  }

  private static void discard(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // A leftover hidden file harms nothing, and the next run removes it.
    }
  }
}
