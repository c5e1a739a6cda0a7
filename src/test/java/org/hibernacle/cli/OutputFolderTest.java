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
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files or none, whatever stands in the way. */
class OutputFolderTest {
  private static final List<OutputFile> BOTH = List.of(file("a.xlsx"), file("b.pdf"));

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
  void theFolderIsMadeWhenThereIsSomethingToPutIntoIt() throws IOException {
    Path later = folder.resolve("new").resolve("folder");
    OutputFile file =
        new OutputFile(
            "a.xlsx",
            out ->
                out.write(
                    String.valueOf(Files.exists(later.getParent()))
                        .getBytes(StandardCharsets.UTF_8)));
    new OutputFolder(later, List.of()).write(List.of(file), new PrintWriter(err));
    assertEquals("false", Files.readString(later.resolve("a.xlsx")));
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
      replacement.prepare("a.xlsx", file("a.xlsx").bytes());
      replacement.prepare("new.ics", file("new.ics").bytes());
      replacement.prepare("b.pdf", file("b.pdf").bytes());
      Files.createDirectories(folder.resolve("b.pdf").resolve("full"));
      assertThrows(IOException.class, replacement::replace);
    }
    assertEquals(List.of("a.xlsx", "b.pdf"), names());
    assertEquals("old a.xlsx", Files.readString(folder.resolve("a.xlsx")));
  }

  @Test
  void whatCanNotBePutBackIsKeptAndNamed() throws IOException {
    old("a.xlsx", "b.pdf", "c.ics");
    Replacement.Mover stuck =
        (from, to) -> {
          boolean back = from.toString().endsWith("-old") && to.endsWith("a.xlsx");
          if (back || to.endsWith("c.ics")) {
            throw new IOException("held");
          }
          Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        };
    Path kept = folder.resolve("old-r1-a.xlsx");
    try (Replacement replacement = new Replacement(folder, "r1", stuck)) {
      for (String name : List.of("a.xlsx", "b.pdf", "c.ics")) {
        replacement.prepare(name, file(name).bytes());
      }
      IOException e =
          assertThrows(Replacement.NotPutBackException.class, () -> replacement.replace());
      assertEquals(
          folder.resolve("a.xlsx") + " is new. The old file is kept as " + kept, e.getMessage());
    }
    assertEquals(List.of("a.xlsx", "b.pdf", "c.ics", "old-r1-a.xlsx"), names());
    assertEquals("old a.xlsx", Files.readString(kept));
    assertEquals("old b.pdf", Files.readString(folder.resolve("b.pdf")));
    assertEquals("old c.ics", Files.readString(folder.resolve("c.ics")));
  }

  @Test
  void whatCanNotEvenBeRenamedIsKeptWhereItIs() throws IOException {
    old("a.xlsx");
    Replacement.Mover gone =
        (from, to) -> {
          if (!from.toString().endsWith("-new") || to.endsWith("b.pdf")) {
            throw new IOException("the drive is gone");
          }
          Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        };
    String hidden = ".a.xlsx.r1.hibernacle-old";
    try (Replacement replacement = new Replacement(folder, "r1", gone)) {
      replacement.prepare("a.xlsx", file("a.xlsx").bytes());
      replacement.prepare("b.pdf", file("b.pdf").bytes());
      IOException e = assertThrows(IOException.class, replacement::replace);
      assertTrue(e.getMessage().endsWith("kept as " + folder.resolve(hidden)), e::getMessage);
    }
    assertEquals(List.of(hidden, "a.xlsx"), names());
    assertEquals("old a.xlsx", Files.readString(folder.resolve(hidden)));
  }

  @Test
  void onlyWhatAKilledRunLeftOfTheSameFilesIsRemoved() throws IOException {
    String fresh = ".a.xlsx.r2.hibernacle-new";
    List<String> others =
        List.of(".a.xlsx.4711.old", ".c.xlsx.r1.hibernacle-new", ".photo.12.new", ".b.pdf.r.old");
    List<String> left = List.of(".a.xlsx.r1.hibernacle-new", ".b.pdf.r1.hibernacle-old");
    for (String name : Stream.concat(others.stream(), left.stream()).toList()) {
      old(name);
      Files.setLastModifiedTime(
          folder.resolve(name), FileTime.from(Instant.now().minus(Duration.ofDays(2))));
    }
    old(fresh);
    assertTrue(write(BOTH).isPresent(), err::toString);
    assertEquals(
        Stream.concat(others.stream(), Stream.of(fresh, "a.xlsx", "b.pdf")).sorted().toList(),
        names());
  }

  @Test
  void whatWasChangedSinceItWasReadIsNotReplaced() throws IOException {
    old("a.xlsx");
    OutputFolder output = new OutputFolder(folder, List.of());
    output.remember("a.xlsx");
    output.remember("b.pdf");
    PrintWriter told = new PrintWriter(err);
    Files.writeString(folder.resolve("a.xlsx"), "filled in");
    assertEquals(Optional.empty(), output.write(BOTH, told));
    assertTrue(err.toString().contains("a.xlsx was changed meanwhile; run again"), err::toString);
    assertEquals("filled in", Files.readString(folder.resolve("a.xlsx")));
    old("a.xlsx");
    Files.writeString(folder.resolve("b.pdf"), "came meanwhile");
    assertRefused("b.pdf was changed meanwhile", output.write(BOTH, told));
    Files.delete(folder.resolve("b.pdf"));
    assertTrue(output.write(BOTH, told).isPresent());
  }

  /** The device that is always full. */
  @Test
  void aFullDiskLeavesTheOldFiles() throws IOException {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "only some systems have it");
    old("a.xlsx", "b.pdf");
    Files.createSymbolicLink(folder.resolve(".b.pdf.r1.hibernacle-new"), full);
    try (Replacement replacement = new Replacement(folder, "r1", Files::move)) {
      replacement.prepare("a.xlsx", file("a.xlsx").bytes());
      IOException e =
          assertThrows(
              IOException.class, () -> replacement.prepare("b.pdf", file("b.pdf").bytes()));
      assertTrue(e.getMessage().contains("No space left on device"), e::getMessage);
    }
    assertEquals(List.of("a.xlsx", "b.pdf"), names());
    assertEquals("old a.xlsx", Files.readString(folder.resolve("a.xlsx")));
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
