package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files or none, whatever stands in the way. */
class OutputFolderTest {
  private static final List<OutputFile> BOTH = List.of(file("a.xlsx"), file("b.pdf"));

  /** A process number that no system gives out. */
  private static final long NOBODY = 999_999_999_999L;

  @TempDir Path folder;

  private final StringWriter err = new StringWriter();

  private static OutputFile file(String name) {
    return new OutputFile(name, out -> out.write(("new " + name).getBytes(StandardCharsets.UTF_8)));
  }

  private Optional<List<Path>> write(List<OutputFile> files, Path... inputs) {
    return new OutputFolder(folder, List.of(inputs)).write(files, new PrintWriter(err));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private void old(String... names) throws IOException {
    for (String name : names) {
      Files.writeString(folder.resolve(name), "old " + name);
    }
  }

  private void assertRefused(String reason, Optional<List<Path>> written) throws IOException {
    assertEquals(Optional.empty(), written);
    assertTrue(err.toString().contains(reason), err::toString);
    assertTrue(err.toString().contains("Files that were there are untouched."), err::toString);
    assertEquals("old a.xlsx", Files.readString(folder.resolve("a.xlsx")));
  }

  @Test
  void filesAreReplacedAndNothingElseIsLeft() throws IOException {
    old("a.xlsx");
    assertEquals(
        Optional.of(List.of(folder.resolve("a.xlsx"), folder.resolve("b.pdf"))), write(BOTH));
    assertEquals(List.of("a.xlsx", "b.pdf"), names());
    assertEquals("new a.xlsx", Files.readString(folder.resolve("a.xlsx")));
    assertEquals("", err.toString());
  }

  @Test
  void aWriterThatBreaksOffLeavesTheOldFiles() throws IOException {
    old("a.xlsx", "b.pdf");
    OutputFile broken =
        new OutputFile(
            "b.pdf",
            out -> {
              out.write(1);
              throw new IOException("no more paper");
            });
    assertRefused("no more paper", write(List.of(file("a.xlsx"), broken)));
    assertEquals(List.of("a.xlsx", "b.pdf"), names());
  }

  @Test
  void whatIsOpenElsewhereIsLeftAloneBeforeAnythingMoves() throws IOException {
    for (String lock : List.of("~$b.pdf", ".~lock.b.pdf#")) {
      old("a.xlsx");
      Files.createFile(folder.resolve(lock));
      assertRefused("is open in another program (" + lock, write(BOTH));
      Files.delete(folder.resolve(lock));
    }
  }

  @Test
  void aFolderInTheWayIsNamed() throws IOException {
    old("a.xlsx");
    Files.createDirectory(folder.resolve("b.pdf"));
    assertRefused("b.pdf is a folder", write(BOTH));
  }

  @Test
  void anInputIsNeverWrittenTo() throws IOException {
    old("a.xlsx");
    assertRefused("a.xlsx is an input", write(BOTH, folder.resolve("x/../a.xlsx").normalize()));
    Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), folder.resolve("a.xlsx"));
    assertRefused("a.xlsx is an input", write(BOTH, link));
  }

  @Test
  void whatCanNotBeReplacedPutsTheOthersBack() throws IOException {
    old("a.xlsx");
    try (Replacement replacement = new Replacement(folder)) {
      replacement.prepare(file("a.xlsx"));
      replacement.prepare(file("new.ics"));
      replacement.prepare(file("b.pdf"));
      Files.createDirectories(folder.resolve("b.pdf").resolve("full"));
      assertThrows(IOException.class, replacement::replace);
    }
    assertEquals(List.of("a.xlsx", "b.pdf"), names());
    assertEquals("old a.xlsx", Files.readString(folder.resolve("a.xlsx")));
  }

  @Test
  void whatAKilledRunLeftIsRemovedAndWhatAnotherRunWritesIsNot() throws IOException {
    Process sleeper = new ProcessBuilder("sleep", "60").start();
    try {
      String theirs = ".b.pdf." + sleeper.pid() + ".new";
      old(".a.xlsx." + NOBODY + ".new", ".b.pdf." + NOBODY + ".old", theirs, ".mine.new");
      assertTrue(write(BOTH).isPresent(), err::toString);
      assertEquals(List.of(theirs, ".mine.new", "a.xlsx", "b.pdf"), names());
    } finally {
      sleeper.destroyForcibly();
    }
  }

  /** The device that is always full. */
  @Test
  void aFullDiskLeavesTheOldFiles() throws IOException {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "only some systems have it");
    old("a.xlsx", "b.pdf");
    long process = ProcessHandle.current().pid();
    Files.createSymbolicLink(folder.resolve(".b.pdf." + process + ".new"), full);
    assertRefused("No space left on device", write(BOTH));
    assertEquals(List.of("a.xlsx", "b.pdf"), names());
  }

  @Test
  void aFolderThatMayNotBeWrittenToIsNamed() throws IOException {
    old("a.xlsx");
    Files.createFile(folder.resolve("file"));
    Path below = folder.resolve("file").resolve("below");
    OutputFolder output = new OutputFolder(below, List.of());
    assertRefused(folder.resolve("file").toString(), output.write(BOTH, new PrintWriter(err)));
    assumeTrue(folder.toFile().setWritable(false) && !Files.isWritable(folder));
    assertRefused("this account may not write there", write(BOTH));
    assertTrue(folder.toFile().setWritable(true));
  }
}
