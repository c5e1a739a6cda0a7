package org.hibernacle.speed;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Runs the program and the {@link Floor} in turns, each in a process of its own, and prints the
 * medians of time and of the most memory, with their ratios.
 */
final class Ratios {
  private static final int LOOK_EVERY_MS = 20;

  private final Path input;
  private final Path scratch;
  private final List<String> options;

  private Ratios(Path input, List<String> options) throws IOException {
    this.input = input;
    this.options = options;
    scratch = Files.createTempDirectory("ratios");
  }

  /**
   * One run.
   *
   * @param seconds from start to end
   * @param peakMb most memory resident, MB; 0 where the system does not tell
   */
  private record Run(double seconds, double peakMb) {}

  /**
   * Measures.
   *
   * @param args folder with {@code inventory.xlsx} and {@code temperatures.csv}; number of runs
   *     each; options of the virtual machine for both
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    List<String> options = Arrays.asList(args).subList(2, args.length);
    new Ratios(Path.of(args[0]), options).measure(Integer.parseInt(args[1]));
  }

  private void measure(int runs) throws IOException, InterruptedException {
    Path plan = scratch.resolve("plan");
    run(program(plan));
    Path dump = scratch.resolve("dump.txt");
    run(
        inThisClassPath(
            "org.hibernacle.speed.Dump",
            plan.resolve("season-plan.xlsx").toString(),
            plan.resolve("season-calendar.pdf").toString(),
            dump.toString()));
    List<Run> floors = new ArrayList<>();
    List<Run> programs = new ArrayList<>();
    for (int i = 0; i < runs; i++) {
      delete(plan);
      floors.add(
          run(
              inThisClassPath(
                  "org.hibernacle.speed.Floor",
                  input.resolve("inventory.xlsx").toString(),
                  input.resolve("temperatures.csv").toString(),
                  dump.toString(),
                  scratch.resolve("floor").toString())));
      programs.add(run(program(plan)));
    }
    print("floor", floors);
    print("program", programs);
    System.out.printf(
        Locale.ROOT,
        "ratio    time %.2f, memory %.2f, of %d runs each%n",
        median(programs.stream().map(Run::seconds)) / median(floors.stream().map(Run::seconds)),
        median(programs.stream().map(Run::peakMb)) / median(floors.stream().map(Run::peakMb)),
        runs);
    delete(scratch);
  }

  private List<String> program(Path folder) {
    return inThisClassPath(
        "org.hibernacle.cli.Hibernacle",
        "plan",
        input.resolve("inventory.xlsx").toString(),
        input.resolve("temperatures.csv").toString(),
        "--without-remedies",
        "--suspect",
        "keep",
        "-o",
        folder.toString());
  }

  private List<String> inThisClassPath(String main, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Djava.awt.headless=true");
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
    command.addAll(List.of(args));
    return command;
  }

  /** Ends with an error if the process does; code 4 tells of plants that can not be protected. */
  private Run run(List<String> command) throws IOException, InterruptedException {
    File log = scratch.resolve("log.txt").toFile();
    long before = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log).start();
    double peakMb = 0;
    while (!process.waitFor(LOOK_EVERY_MS, java.util.concurrent.TimeUnit.MILLISECONDS)) {
      peakMb = Math.max(peakMb, peakMb(process.pid()));
    }
    double seconds = Duration.ofNanos(System.nanoTime() - before).toMillis() / 1000.0;
    if (process.exitValue() != 0 && process.exitValue() != 4) {
      throw new IOException(String.join(" ", command) + "\n" + Files.readString(log.toPath()));
    }
    return new Run(seconds, peakMb);
  }

  /** The high-water mark that Linux keeps of a process. */
  private static double peakMb(long pid) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D+", "")) / 1024)
          .findFirst()
          .orElse(0);
    } catch (IOException e) {
      return 0;
    }
  }

  private static void print(String name, List<Run> runs) {
    System.out.printf(
        Locale.ROOT,
        "%-8s %.2f s (%.2f to %.2f), at most %.0f MB%n",
        name,
        median(runs.stream().map(Run::seconds)),
        runs.stream().mapToDouble(Run::seconds).min().orElseThrow(),
        runs.stream().mapToDouble(Run::seconds).max().orElseThrow(),
        median(runs.stream().map(Run::peakMb)));
  }

  private static double median(Stream<Double> values) {
    List<Double> sorted = values.sorted().toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
