package org.hibernacle.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * Files given without a command, as when they are dropped on the program: the workbook among them
 * is planned with the others, into the workbook's own folder.
 *
 * @param workbooks in the order given
 * @param others in the order given
 */
record DroppedFiles(List<Path> workbooks, List<Path> others) {
  DroppedFiles {
    workbooks = List.copyOf(workbooks);
    others = List.copyOf(others);
  }

  /** Empty if a command is named, or if not all that is given are files. */
  static Optional<DroppedFiles> of(String[] args, Set<String> commands) {
    List<Path> files = new ArrayList<>();
    for (String arg : args) {
      Optional<Path> file = file(arg);
      if (commands.contains(args[0]) || file.isEmpty()) {
        return Optional.empty();
      }
      files.add(file.get());
    }
    return files.isEmpty() ? Optional.empty() : Optional.of(of(files));
  }

  private static DroppedFiles of(List<Path> files) {
    return new DroppedFiles(
        files.stream().filter(DroppedFiles::isWorkbook).toList(),
        files.stream().filter(file -> !isWorkbook(file)).toList());
  }

  private static Optional<Path> file(String arg) {
    try {
      return Optional.of(Path.of(arg).toAbsolutePath()).filter(Files::isRegularFile);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static boolean isWorkbook(Path file) {
    String name = name(file).toLowerCase(Locale.ROOT);
    return name.endsWith(".xlsx") || name.endsWith(".xlsm");
  }

  /** Plans, and says so. */
  int plan(CommandLine line) {
    if (workbooks.size() != 1 || others.isEmpty()) {
      line.getErr().println(objection());
      line.getErr().println("Try \"" + line.getCommandName() + " --help\".");
      return ExitCode.WRONG_USE;
    }
    Path workbook = workbooks.get(0);
    line.getOut()
        .println("No command given: " + name(workbook) + " is planned with " + names(others) + ".");
    int code = line.execute(words().toArray(String[]::new));
    if (code == ExitCode.NOT_WRITTEN && name(workbook).equalsIgnoreCase(PlanCommand.WORKBOOK)) {
      line.getErr()
          .println(
              "The plan goes into the workbook's own folder. To plan from a season plan, copy it"
                  + " there under another name, such as inventory.xlsx, and give that.");
    }
    return code;
  }

  /** The command line that says the same. */
  List<String> words() {
    Path workbook = workbooks.get(0);
    Path folder = Optional.ofNullable(workbook.getParent()).orElse(workbook);
    List<String> words = new ArrayList<>(List.of("plan", "-o", folder.toString()));
    Stream.concat(workbooks.stream(), others.stream()).map(Path::toString).forEach(words::add);
    return words;
  }

  private String objection() {
    String asked = "without a command, one inventory workbook and its temperature files are asked";
    if (workbooks.isEmpty()) {
      return "No workbook (.xlsx) among " + names(others) + "; " + asked + ".";
    }
    return workbooks.size() > 1
        ? workbooks.size() + " workbooks given, " + names(workbooks) + "; " + asked + "."
        : "No temperature file (.csv) beside " + names(workbooks) + "; " + asked + ".";
  }

  private static String names(List<Path> files) {
    return files.stream().map(DroppedFiles::name).collect(Collectors.joining(", "));
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }
}
