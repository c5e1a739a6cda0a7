package org.hibernacle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a command writes its files: all of them or none, and never over what was read. Asks first
 * whether anything speaks against it; {@link Replacement} then does it.
 */
final class OutputFolder {
  private final Path folder;
  private final List<Path> inputs;
  private final Map<Path, Optional<String>> remembered = new LinkedHashMap<>();

  /**
   * A folder, which is made when it is first written to.
   *
   * @param inputs files that were read and must not be written to
   */
  OutputFolder(Path folder, List<Path> inputs) {
    this.folder = folder;
    this.inputs = List.copyOf(inputs);
  }

  /** Where a file of that name will stand. */
  Path target(String name) {
    return folder.resolve(name);
  }

  /**
   * Remembers what a file holds that is about to be read and later replaced, or that it is not
   * there. If it is then no longer so, nothing is written.
   */
  void remember(String name) throws IOException {
    remembered.put(target(name), content(target(name)));
  }

  private static Optional<String> content(Path file) throws IOException {
    return Files.isRegularFile(file) ? Optional.of(Digests.of(file).sha256()) : Optional.empty();
  }

  private Optional<Path> changedMeanwhile() throws IOException {
    for (Map.Entry<Path, Optional<String>> file : remembered.entrySet()) {
      if (!content(file.getKey()).equals(file.getValue())) {
        return Optional.of(file.getKey());
      }
    }
    return Optional.empty();
  }

  /** Why files of these names can not be written here; empty if nothing is known against it. */
  Optional<String> objection(List<String> names) {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      return Optional.of(folder + " is a file, not a folder. Give another name.");
    }
    return names.stream().map(this::objection).flatMap(Optional::stream).findFirst();
  }

  private Optional<String> objection(String name) {
    Path target = target(name);
    if (isInput(target)) {
      return Optional.of(target + " is an input. Give another folder to write to.");
    }
    if (Files.isDirectory(target)) {
      return Optional.of(target + " is a folder. Rename it, or write to another folder.");
    }
    for (String lock : List.of(".~lock." + name + "#", "~$" + name)) {
      if (Files.exists(folder.resolve(lock))) {
        return Optional.of(
            target
                + " is open in another program ("
                + lock
                + " stands beside it). Close it there.");
      }
    }
    return Files.exists(target) ? heldElsewhere(target) : Optional.empty();
  }

  private boolean isInput(Path target) {
    return inputs.stream().anyMatch(input -> isSame(input, target));
  }

  private static boolean isSame(Path input, Path target) {
    try {
      return Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input);
    } catch (IOException e) {
      return true;
    }
  }

  /** Some systems refuse to replace what a program has open; asking changes nothing in it. */
  private static Optional<String> heldElsewhere(Path target) {
    try {
      FileChannel.open(target, StandardOpenOption.WRITE).close();
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          target
              + " can not be replaced: it is open in another program, or protected from writing.");
    }
  }

  /**
   * Says so if files of these names can not be written here, before work is spent on them.
   *
   * @return whether there is an objection
   */
  boolean objects(List<String> names, PrintWriter err) {
    Optional<String> objection = objection(names);
    objection.ifPresent(reason -> refuse(reason, err));
    return objection.isPresent();
  }

  /**
   * Writes the files, the first one first.
   *
   * @return their paths; empty, with the reason on {@code err} and every file as it was, if one of
   *     them can not be written; where a file could not be put back, {@code err} names what is kept
   */
  Optional<List<Path>> write(List<OutputFile> files, PrintWriter err) {
    if (objects(files.stream().map(OutputFile::name).toList(), err)) {
      return Optional.empty();
    }
    try {
      return replace(files, contents(files), err);
    } catch (Replacement.NotPutBackException e) {
      err.println("Output could not be written: " + reason(e.cause()));
      err.println(e.getMessage());
      err.flush();
      return Optional.empty();
    } catch (IOException e) {
      refuse(reason(e), err);
      return Optional.empty();
    }
  }

  /** Makes the folder only now that there is something to write. */
  private Optional<List<Path>> replace(
      List<OutputFile> files, List<byte[]> contents, PrintWriter err) throws IOException {
    try (Replacement replacement = new Replacement(folder)) {
      for (int i = 0; i < files.size(); i++) {
        replacement.prepare(files.get(i).name(), contents.get(i));
      }
      Optional<Path> changed = changedMeanwhile();
      if (changed.isPresent()) {
        refuse(changed.get() + " was changed meanwhile; run again.", err);
        return Optional.empty();
      }
      return Optional.of(replacement.replace());
    }
  }

  /** What goes into the files, made at the same time. */
  private static List<byte[]> contents(List<OutputFile> files) throws IOException {
    try {
      return files.parallelStream().map(OutputFolder::content).toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static byte[] content(OutputFile file) {
    try {
      return file.bytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void refuse(String reason, PrintWriter err) {
    err.println("Output could not be written: " + reason);
    err.println("Files that were there are untouched.");
    err.flush();
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException denied) {
      return denied.getFile() + ": this account may not write there.";
    }
    if (e instanceof FileSystemException system && system.getReason() != null) {
      return system.getFile() + ": " + system.getReason();
    }
    return String.valueOf(e.getMessage());
  }
}
