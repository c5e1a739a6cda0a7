package org.hibernacle.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;

/** What a keeper does with the package. Not part of the build; the profile {@code dist} runs it. */
class PackageCheck extends UnpackedPackage {
  @Test
  void theDemoIsPlanned() throws IOException, InterruptedException {
    Path demo = home.resolve("demo-data");
    Path to = here.resolve("plan");
    Ended ended =
        run(
            launcher(),
            "plan",
            demo.resolve("inventory.xlsx"),
            demo.resolve("temperatures.csv"),
            "-o",
            to,
            "-q");
    assertEquals(new Ended(0, "", ""), ended);
    assertEquals(List.of("season-calendar.pdf", "season-plan.xlsx"), names(to));
    assertEquals(List.of("plan"), names(here));
  }

  @Test
  void versionAndExitCodesComeThrough() throws IOException, InterruptedException {
    assertEquals(new Ended(0, "hibernacle " + VERSION + "\n", ""), run(launcher(), "--version"));
    assertEquals(2, run(launcher(), "plan").code());
    assertEquals(3, run(launcher(), "check", inventory, inventory).code());
  }

  @Test
  void aLinkAndEveryShellWillDo() throws IOException, InterruptedException {
    Path link = here.resolve("link");
    Files.createSymbolicLink(link, Path.of("second"));
    Files.createSymbolicLink(here.resolve("second"), launcher());
    assertEquals(0, run(link, "--version").code());
    for (String shell : List.of("dash", "bash")) {
      Ended ended = run(onPath(shell), "link", "--version");
      assertEquals(new Ended(0, "hibernacle " + VERSION + "\n", ""), ended, shell);
    }
  }

  @Test
  void withoutAJavaItSaysWhatIsMissing() throws IOException, InterruptedException {
    assumeFalse(bringsJava());
    environment.remove("JAVA_HOME");
    Ended none = run(launcher(), "--version");
    assertEquals(1, none.code());
    assertTrue(none.err().startsWith("Hibernacle needs Java 17 or newer, and none"), none.err());
    Path old = Files.createDirectories(folder.resolve("old").resolve("bin"));
    Files.writeString(old.resolve("java"), "#!/bin/sh\necho 'openjdk version \"1.8.0_392\"' >&2\n");
    Files.setPosixFilePermissions(
        old.resolve("java"), PosixFilePermissions.fromString("rwxr-xr-x"));
    environment.put("JAVA_HOME", old.getParent().toString());
    assertTrue(run(launcher(), "--version").err().contains("is 1.8.0_392."));
    Files.writeString(old.resolveSibling("release"), "JAVA_VERSION=\"11.0.2\"\n");
    Ended eleven = run(launcher(), "--version");
    assertEquals(1, eleven.code());
    assertTrue(eleven.err().contains("is 11.0.2."), eleven.err());
  }

  @Test
  void aJavaOnThePathWillDo() throws IOException, InterruptedException {
    assumeFalse(bringsJava());
    environment.remove("JAVA_HOME");
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    Files.createSymbolicLink(bin.resolve("java"), java);
    environment.merge("PATH", bin.toString(), (path, dir) -> path + File.pathSeparator + dir);
    assertEquals(0, run(launcher(), "--version").code());
  }

  @Test
  void droppedFilesArePlannedIntoTheirFolder() throws IOException, InterruptedException {
    Path garden = Files.createDirectories(folder.resolve("my garden & yours"));
    Files.copy(inventory, garden.resolve("plants 2026.xlsx"));
    Files.copy(weather, garden.resolve("station.csv"));
    Ended ended =
        run(launcher(), garden.resolve("station.csv"), garden.resolve("plants 2026.xlsx"));
    assertEquals(0, ended.code(), ended.err());
    assertTrue(ended.out().startsWith("No command given: plants 2026.xlsx is planned with"));
    assertTrue(ended.out().contains("Wrote " + garden.resolve("season-plan.xlsx")), ended.out());
  }

  @Test
  void otherWordsEncodingsAndZonesCameAlong() throws IOException, InterruptedException {
    Path japanese = folder.resolve("japanese.csv");
    Files.write(
        japanese,
        weather()
            .replace("date,tmin_c,tmax_c", "年月日,最低気温(℃),最高気温(℃)")
            .getBytes(Charset.forName("Shift_JIS")));
    environment.put("TZ", "Asia/Tokyo");
    Ended ended =
        run(
            launcher(),
            "plan",
            inventory("de-AT"),
            japanese,
            "--encoding",
            "Shift_JIS",
            "--columns",
            "date,lowest,highest",
            "--zone",
            "Asia/Tokyo",
            "--unit",
            "C",
            "-o",
            here.resolve("plan"),
            "--without-remedies",
            "--ics");
    assertEquals(0, ended.code(), ended.err());
    byte[] calendar = Files.readAllBytes(here.resolve("plan").resolve("season-calendar.pdf"));
    try (PDDocument document = Loader.loadPDF(calendar)) {
      String text = new PDFTextStripper().getText(document);
      // "January" and "December" of Austria in the locale data of Unicode.
      assertTrue(text.contains("Jänner") && text.contains("Dezember"), text);
    }
  }

  @Test
  void anEncryptedWorkbookIsToldNotStumbledOver() throws Exception {
    Path locked = folder.resolve("locked.xlsx");
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      var encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (var out = encryptor.getDataStream(files)) {
        out.write(Files.readAllBytes(inventory));
      }
      try (var out = Files.newOutputStream(locked)) {
        files.writeFilesystem(out);
      }
    }
    Ended ended = run(launcher(), "check", locked, weather);
    assertEquals(3, ended.code(), ended.err());
    assertTrue((ended.out() + ended.err()).contains("locked.xlsx"), ended.err());
  }

  @Test
  void everyLibraryHasItsLicence() throws IOException {
    List<String> libraries =
        names(home.resolve("lib")).stream()
            .map(name -> name.replace(".jar", ""))
            .filter(name -> !name.equals("hibernacle"))
            .toList();
    assertTrue(libraries.size() > 20, libraries::toString);
    for (String library : libraries) {
      List<String> texts = names(home.resolve("licences").resolve(library));
      assertTrue(texts.stream().anyMatch(text -> !text.startsWith("NOTICE")), library);
    }
    assertTrue(
        names(home.resolve("licences")).containsAll(List.of("bom.json", "bom.xml", "fonts")));
  }

  @Test
  void theManualAndTheCompletionAreUnderstood() throws IOException, InterruptedException {
    Path script = home.resolve("completion").resolve("hibernacle");
    Ended completion = run(onPath("bash"), "-c", ". \"$0\" && complete -p hibernacle", script);
    assertEquals(0, completion.code(), completion.err());
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/groff")));
    Path pages = home.resolve("man").resolve("man1");
    for (String page : names(pages)) {
      environment.put("PATH", "/usr/bin:/bin");
      Ended ended = run("groff", "-man", "-Tutf8", "-P-cbou", "-ww", pages.resolve(page));
      assertEquals("", ended.err(), page);
      assertTrue(ended.out().contains("EXIT STATUS"), page);
    }
  }
}
