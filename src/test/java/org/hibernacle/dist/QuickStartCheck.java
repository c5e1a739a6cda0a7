package org.hibernacle.dist;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The file from which Java starts quicker: made beside the first plan, and never in its way. Not
 * part of the build; the profile {@code dist} runs it.
 */
class QuickStartCheck extends UnpackedPackage {
  private Path cache;

  @BeforeEach
  void giveItACache() {
    cache = folder.resolve("cache").resolve("hibernacle");
    environment.put("XDG_CACHE_HOME", cache.getParent().toString());
  }

  @AfterEach
  void everyRunHasEnded() throws InterruptedException {
    await("no run goes on", () -> ProcessHandle.allProcesses().noneMatch(QuickStartCheck::isOurs));
  }

  private static boolean isOurs(ProcessHandle process) {
    return process.info().commandLine().filter(l -> l.contains(home.toString())).isPresent();
  }

  private static void await(String what, BooleanSupplier reached) throws InterruptedException {
    Instant latest = Instant.now().plus(Duration.ofMinutes(5));
    while (!reached.getAsBoolean()) {
      assertTrue(Instant.now().isBefore(latest), what);
      Thread.sleep(50);
    }
  }

  /** The one that is there when all runs have ended; its name tells its length. */
  private Path quickStart() throws IOException, InterruptedException {
    everyRunHasEnded();
    List<String> names = names(cache);
    assertEquals(1, names.size(), names::toString);
    Path file = cache.resolve(names.get(0));
    assertTrue(names.get(0).endsWith("-" + Files.size(file) + ".jsa"), names::toString);
    return file;
  }

  private boolean isBeingMade() {
    String[] names = cache.toFile().list((folder, name) -> name.endsWith(".new"));
    return names != null && names.length > 0;
  }

  private Process startDemo(Path to) throws IOException {
    Path demo = home.resolve("demo-data");
    return start(
        folder.resolve("log"),
        launcher(),
        "plan",
        demo.resolve("inventory.xlsx"),
        demo.resolve("temperatures.csv"),
        "-o",
        to);
  }

  @Test
  void onlyAPlanIsWorthIt() throws IOException, InterruptedException {
    assertEquals(0, run(launcher(), "--version").code());
    assertEquals(0, run(launcher(), "plan", "--help").code());
    assertEquals(3, run(launcher(), "check", inventory, inventory).code());
    assertFalse(Files.exists(cache));
  }

  @Test
  void aDamagedQuickStartHarmsNothing() throws IOException, InterruptedException {
    Ended first = plan(here.resolve("first"));
    assertEquals(0, first.code(), first.err());
    Path file = quickStart();
    byte[] whole = Files.readAllBytes(file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    byte[] flipped = whole.clone();
    for (int i = whole.length / 2; i < whole.length / 2 + 4096; i++) {
      flipped[i] ^= 0x5a;
    }
    byte[] noise = "no archive ".repeat(whole.length / 11 + 1).getBytes(StandardCharsets.US_ASCII);
    for (byte[] damaged : List.of(flipped, Arrays.copyOf(noise, whole.length))) {
      Files.write(file, damaged);
      Ended ended = run(launcher(), "species", "Acer palmatum");
      assertEquals(0, ended.code());
      assertEquals("", ended.err());
      assertTrue(ended.out().startsWith("Acer palmatum"), ended.out());
    }
    Files.write(file, Arrays.copyOf(whole, whole.length / 3));
    Ended second = plan(here.resolve("second"));
    assertEquals(0, second.code(), second.err());
    quickStart();
    assertSame(here.resolve("first"), here.resolve("second"));
  }

  private static void assertSame(Path one, Path other) throws IOException {
    for (String name : List.of("season-plan.xlsx", "season-calendar.pdf")) {
      assertArrayEquals(
          Files.readAllBytes(one.resolve(name)), Files.readAllBytes(other.resolve(name)), name);
    }
  }

  @Test
  void twoFirstRunsAtOnceLeaveOneQuickStart() throws IOException, InterruptedException {
    List<Process> both = new ArrayList<>();
    for (String name : List.of("one", "two")) {
      both.add(
          start(
              folder.resolve(name),
              launcher(),
              "plan",
              inventory,
              weather,
              "-o",
              here.resolve(name),
              "--without-remedies"));
    }
    for (Process process : both) {
      assertEquals(0, process.waitFor());
    }
    assertSame(here.resolve("one"), here.resolve("two"));
    quickStart();
    assertEquals(0, run(launcher(), "species").code());
  }

  @Test
  void whereNothingCanBeKeptItPlansAllTheSame() throws IOException, InterruptedException {
    Files.writeString(cache.getParent(), "a file stands where the folder would be");
    assertEquals(new Ended(0, "", ""), quietPlan(here.resolve("plan")));
    environment.put("XDG_CACHE_HOME", folder.resolve("a:colon").toString());
    assertEquals(new Ended(0, "", ""), quietPlan(here.resolve("colon")));
    assertFalse(Files.exists(folder.resolve("a:colon")));
  }

  private Ended quietPlan(Path to) throws IOException, InterruptedException {
    return run(launcher(), "plan", inventory, weather, "-o", to, "--without-remedies", "-q");
  }

  @Test
  void aCacheThatIsLostMeanwhileHarmsNothing() throws IOException, InterruptedException {
    Path garden = Files.createDirectories(folder.resolve("dropped"));
    Path plants = Files.copy(inventory, garden.resolve("plants.xlsx"));
    Process process =
        start(
            folder.resolve("log"),
            launcher(),
            plants,
            Files.copy(weather, garden.resolve("station.csv")));
    await("a quick start is made", this::isBeingMade);
    Files.move(cache, folder.resolve("elsewhere"));
    Files.writeString(cache, "no folder any more");
    assertEquals(0, process.waitFor());
    assertTrue(names(garden).contains("season-plan.xlsx"));
    everyRunHasEnded();
    assertTrue(Files.isRegularFile(cache));
  }

  @Test
  void signalsReachTheRunAndNotWhatIsMadeBesideIt() throws IOException, InterruptedException {
    Process killed = startDemo(here.resolve("plan"));
    await("a quick start is made", this::isBeingMade);
    killed.destroyForcibly();
    assertEquals(128 + 9, killed.waitFor());
    Process asked = startDemo(here.resolve("plan"));
    Thread.sleep(2000);
    asked.destroy();
    assertEquals(128 + 15, asked.waitFor());
    assertEquals(List.of(), names(here.resolve("plan")));
    quickStart();
  }
}
