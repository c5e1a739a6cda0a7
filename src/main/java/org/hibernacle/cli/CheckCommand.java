package org.hibernacle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.MarkedCopy;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells everything that is wrong with the input, without planning anything. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Tells every problem of an inventory and of temperature files, with cell or line; plans"
            + " nothing and changes nothing.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  hibernacle check inventory.xlsx",
      "  hibernacle check inventory.xlsx 2014.csv 2015.csv --unit C",
      "  hibernacle check inventory.xlsx --mark inventory-marked.xlsx",
      "",
      "Exit code 3 means: there are errors. Notes and warnings alone give 0."
    })
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INVENTORY.xlsx",
      description = "The inventory workbook, or a season plan, which is one too.")
  private Path inventoryFile;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "TEMPERATURES.csv",
      description = "Temperature files of one station, read as one series.")
  private List<Path> temperatureFiles = List.of();

  @Mixin private TemperatureOptions temperatures = new TemperatureOptions();

  @Mixin private PlaceTemperatureOptions loggers = new PlaceTemperatureOptions();

  @Option(
      names = "--mark",
      paramLabel = "FILE",
      description =
          "Writes a copy of the workbook in which the cells with errors and warnings are hatched,"
              + " each with a comment; never over a file that is there.")
  private Optional<Path> mark = Optional.empty();

  @Option(names = "--json", description = "Prints the problems for scripts, as JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    if (mark.isPresent() && Files.exists(mark.get())) {
      err().println(mark.get() + " is there already and was left as it is.");
      err().println("Name another file, or move that one away first.");
      return ExitCode.NOT_WRITTEN;
    }
    Problems problems = new Problems();
    Optional<Inventory> inventory =
        InventoryWorkbook.read(inventoryFile, SpeciesCatalogue.builtIn(), problems);
    Optional<TemperatureSeries> series =
        temperatureFiles.isEmpty()
            ? Optional.empty()
            : TemperatureCsv.read(temperatureFiles, temperatures.forReading(), problems);
    checkTogether(inventory, series, problems);
    if (mark.isEmpty()) {
      print(problems, Optional.empty());
      return problems.hasErrors() ? ExitCode.BAD_INPUT : ExitCode.DONE;
    }
    Optional<MarkedCopy> copy = markedCopy(problems);
    boolean named = copy.filter(c -> !isNamedFor(c)).isEmpty();
    Optional<Path> marked = named ? copy.flatMap(c -> write(c.bytes())) : Optional.empty();
    print(problems, marked);
    if (copy.isEmpty()) {
      err().println("No marked copy was written, since the workbook can not be opened.");
    } else if (!named) {
      err().println("--mark: a workbook with macros needs a name that ends in .xlsm, others");
      err().println("one that ends in .xlsx, or no program opens it.");
      return ExitCode.WRONG_USE;
    } else if (marked.isEmpty()) {
      return ExitCode.NOT_WRITTEN;
    }
    return problems.hasErrors() ? ExitCode.BAD_INPUT : ExitCode.DONE;
  }

  private boolean isNamedFor(MarkedCopy copy) {
    String name = mark.orElseThrow().toString().toLowerCase(Locale.ROOT);
    return copy.hasMacros() == name.endsWith(".xlsm");
  }

  /** What needs the inventory and the temperatures both. */
  private void checkTogether(
      Optional<Inventory> inventory, Optional<TemperatureSeries> series, Problems problems) {
    if (inventory.isPresent()) {
      loggers.read(inventory.get(), temperatures.forReading().unit(), problems);
    } else if (!loggers.files().isEmpty()) {
      problems.note("CK-700", "--place-temperatures");
    }
    if (inventory.isPresent() && series.isPresent()) {
      boolean southern = inventory.get().settings().southern();
      if (WinterSelection.of(series.get(), southern).winters().isEmpty()) {
        problems.error("CK-701", names(temperatureFiles));
      }
    }
  }

  private Optional<MarkedCopy> markedCopy(Problems problems) throws IOException {
    return Files.isRegularFile(inventoryFile)
        ? MarkedCopy.of(inventoryFile, problems.sorted())
        : Optional.empty();
  }

  private Optional<Path> write(byte[] copy) {
    Path file = mark.orElseThrow().toAbsolutePath();
    Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of("."));
    List<Path> inputs = new ArrayList<>(temperatureFiles);
    inputs.add(inventoryFile);
    inputs.addAll(loggers.files());
    return new OutputFolder(folder, inputs)
        .write(
            List.of(new OutputFile(String.valueOf(file.getFileName()), out -> out.write(copy))),
            err())
        .map(written -> mark.orElseThrow());
  }

  private void print(Problems problems, Optional<Path> marked) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Map<String, Object> all = ProblemsAsJson.counted(problems);
      all.put("written", marked.map(Path::toString).stream().toList());
      out.println(Json.of(all));
    } else {
      ProblemPrinter.print(problems, out);
      out.println(
          String.join(
              ", ",
              counted(ProblemsAsJson.count(problems, Severity.ERROR), "error"),
              counted(ProblemsAsJson.count(problems, Severity.WARNING), "warning"),
              counted(ProblemsAsJson.count(problems, Severity.NOTE), "note")));
      marked.ifPresent(file -> out.println("Wrote " + file));
    }
    out.flush();
  }

  private static String counted(long count, String noun) {
    return String.format(Locale.ROOT, "%d %s%s", count, noun, count == 1 ? "" : "s");
  }

  private static String names(List<Path> files) {
    return String.join(", ", files.stream().map(f -> String.valueOf(f.getFileName())).toList());
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
