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
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Puts new files in the place of old ones. All are written beside their targets first; then each
 * target is replaced in one step, so that a program that is killed leaves it as the old file or the
 * new one, whole. If one can not be replaced, those before it get their old content back. A program
 * that is asked to end, as by Ctrl-C, replaces either all of them or none and leaves nothing beside
 * them.
 */
final class Replacement implements AutoCloseable {
  /** Ends the names of files written beside their targets: a word that nobody else uses. */
  private static final String NEW = ".hibernacle-new";

  private static final String OLD = ".hibernacle-old";

  /** Age from which on a file beside a target is what a killed run left, on whatever computer. */
  private static final Duration LEFT_BEHIND = Duration.ofDays(1);

  /** Gives a file another name in its folder, over one that has it. */
  @FunctionalInterface
  interface Mover {
    void move(Path from, Path to) throws IOException;
  }

  /** Says which files could not be given their old content back, and where that is kept. */
  static final class NotPutBackException extends IOException {
    private static final long serialVersionUID = 1;

    private final IOException cause;

    NotPutBackException(IOException cause, List<String> lines) {
      super(String.join(System.lineSeparator(), lines), cause);
      this.cause = cause;
    }

    /** Why not all files could be replaced. */
    IOException cause() {
      return cause;
    }
  }

  private final Path folder;
  private final String run;
  private final Mover mover;
  private final Map<Path, Path> waiting = new LinkedHashMap<>();
  private final List<Path> temporary = new ArrayList<>();
  private final ReentrantLock disk = new ReentrantLock();
  private final Thread whenAskedToEnd = new Thread(this::abandon, "replacement");

  /** Makes the folder if it is not there. */
  Replacement(Path folder) throws IOException {
    this(folder, thisRun(), Replacement::rename);
  }

  /**
   * The same with another way to move files.
   *
   * @param run tells files of this run from those of others, which may run on other computers
   */
  Replacement(Path folder, String run, Mover mover) throws IOException {
    this.folder = folder;
    this.run = run;
    this.mover = mover;
    Files.createDirectories(folder);
    Runtime.getRuntime().addShutdownHook(whenAskedToEnd);
  }

  /**
   * Removes what is not in place, once a file is written or all are replaced. The disk is not given
   * back: what this run would still write waits until the program has ended.
   */
  private void abandon() {
    disk.lock();
    temporary.forEach(Replacement::discard);
  }

  /** Number and start of the process, which no other computer's is likely to share both. */
  private static String thisRun() {
    ProcessHandle process = ProcessHandle.current();
    long startMillis = process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    return process.pid() + "-" + startMillis;
  }

  /** Writes one file beside its target, through to the disk, so that a full one shows here. */
  void prepare(String name, byte[] bytes) throws IOException {
    disk.lock();
    try {
      write(name, bytes);
    } finally {
      disk.unlock();
    }
  }

  private void write(String name, byte[] bytes) throws IOException {
    Path target = folder.resolve(name);
    Path beside = beside(target, NEW);
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
    sweep(name, Files.getLastModifiedTime(beside).toInstant());
  }

  private Path beside(Path target, String ending) {
    Path beside = target.resolveSibling("." + target.getFileName() + "." + run + ending);
    temporary.add(beside);
    return beside;
  }

  /** Removes what killed runs left of one file; its folder's clock tells what is old. */
  private void sweep(String name, Instant now) throws IOException {
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(folder, file -> isLeftOf(name, file))) {
      for (Path file : files) {
        if (Files.getLastModifiedTime(file).toInstant().isBefore(now.minus(LEFT_BEHIND))) {
          discard(file);
        }
      }
    }
  }

  private static boolean isLeftOf(String name, Path file) {
    String found = file.getFileName().toString();
    return found.startsWith("." + name + ".") && (found.endsWith(NEW) || found.endsWith(OLD));
  }

  /**
   * Replaces the targets, in the order of preparation, and returns them.
   *
   * @throws NotPutBackException if a target can not be replaced and one before it can not be given
   *     back what it held
   */
  List<Path> replace() throws IOException {
    disk.lock();
    try {
      return replaceAll();
    } finally {
      disk.unlock();
    }
  }

  private List<Path> replaceAll() throws IOException {
    Map<Path, Path> kept = new LinkedHashMap<>();
    for (Path target : waiting.keySet()) {
      if (Files.exists(target)) {
        Path old = beside(target, OLD);
        Files.copy(target, old, StandardCopyOption.REPLACE_EXISTING);
        kept.put(target, old);
      }
    }
    List<Path> replaced = new ArrayList<>();
    try {
      for (Map.Entry<Path, Path> file : waiting.entrySet()) {
        mover.move(file.getValue(), file.getKey());
        replaced.add(file.getKey());
      }
      return replaced;
    } catch (IOException e) {
      putBack(replaced, kept, e);
      throw e;
    }
  }

  private void putBack(List<Path> replaced, Map<Path, Path> kept, IOException cause)
      throws NotPutBackException {
    List<String> lines = new ArrayList<>();
    for (Path target : replaced) {
      Path old = kept.get(target);
      try {
        if (old == null) {
          Files.deleteIfExists(target);
        } else {
          mover.move(old, target);
        }
      } catch (IOException e) {
        lines.add(
            old == null
                ? target + " is new and could not be removed."
                : target + " is new. The old file is kept as " + keep(old, target));
      }
    }
    if (!lines.isEmpty()) {
      throw new NotPutBackException(cause, lines);
    }
  }

  /** Keeps an old file for good, under a name that shows in the folder if it can have one. */
  private Path keep(Path old, Path target) {
    temporary.remove(old);
    Path shown = target.resolveSibling("old-" + run + "-" + target.getFileName());
    try {
      mover.move(old, shown);
      return shown;
    } catch (IOException e) {
      return old;
    }
  }

  private static void rename(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Removes what was written beside the targets and is not in place. */
  @Override
  public void close() {
    disk.lock();
    try {
      temporary.forEach(Replacement::discard);
      Runtime.getRuntime().removeShutdownHook(whenAskedToEnd);
    } catch (IllegalStateException e) {
      // The program is ending already, and the hook finds nothing to remove.
    } finally {
      disk.unlock();
    }
  }

  private static void discard(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // A leftover hidden file harms nothing, and a later run removes it.
    }
  }
}
