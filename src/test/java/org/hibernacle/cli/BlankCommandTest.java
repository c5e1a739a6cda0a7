package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BlankCommandTest {
  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  @Test
  void writesTheFormIntoAFolderItMakes() throws IOException {
    Path target = folder.resolve("new").resolve("inventory.xlsx");
    assertEquals(ExitCode.DONE, run("blank", target.getParent().toString()), err::toString);
    assertArrayEquals(
        Files.readAllBytes(Path.of("templates/inventory.xlsx")), Files.readAllBytes(target));
    assertTrue(out.toString().contains("Wrote " + target), out::toString);
    assertEquals("", err.toString());
  }

  @Test
  void writesTheFormInUsUnits() throws IOException {
    assertEquals(ExitCode.DONE, run("blank", folder.toString(), "--units", "us"));
    assertArrayEquals(
        Files.readAllBytes(Path.of("templates/inventory-us.xlsx")),
        Files.readAllBytes(folder.resolve("inventory.xlsx")));
  }

  @Test
  void neverWritesOverAnInventory() throws IOException {
    Path target = folder.resolve("inventory.xlsx");
    Files.writeString(target, "a summer's work");
    assertEquals(ExitCode.NOT_WRITTEN, run("blank", folder.toString()));
    assertEquals("a summer's work", Files.readString(target));
    assertTrue(
        err.toString().startsWith(target + " is there already and was left as it is."),
        err::toString);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    Path file = Files.writeString(folder.resolve("garden"), "");
    assertEquals(ExitCode.NOT_WRITTEN, run("blank", file.toString()));
    assertTrue(err.toString().contains("is a file, not a folder"), err::toString);
    assertEquals(ExitCode.NOT_WRITTEN, run("blank", file.resolve("below").toString()));
    assertTrue(err.toString().contains("could not be written"), err::toString);
  }

  @Test
  void theFolderHasToBeNamed() {
    assertEquals(ExitCode.WRONG_USE, run("blank"));
    assertEquals(ExitCode.WRONG_USE, run("blank", folder.toString(), "--units", "furlongs"));
  }
}
