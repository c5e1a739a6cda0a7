package org.hibernacle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.hibernacle.model.Settings.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the blank inventory workbook. */
@Command(
    name = "blank",
    mixinStandardHelpOptions = true,
    description = "Writes a blank inventory workbook to fill in; never over one that is there.",
    footerHeading = "%nExamples:%n",
    footer = {"  hibernacle blank my-garden", "  hibernacle blank my-garden --units us"})
final class BlankCommand implements Callable<Integer> {
  static final String FILE = "inventory.xlsx";

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "Folder to write to; made if it is not there.")
  private Path folder;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units of the headings: cm, L, °C, or inches, gal, °F; metric if not given.")
  private Units units = Units.METRIC;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    OutputFolder output = new OutputFolder(folder, List.of());
    Path target = output.target(FILE);
    if (Files.exists(target)) {
      err.println(target + " is there already and was left as it is.");
      err.println("Name another folder, or move that file away first.");
      return ExitCode.NOT_WRITTEN;
    }
    if (output.write(List.of(new OutputFile(FILE, this::copyForm)), err).isEmpty()) {
      return ExitCode.NOT_WRITTEN;
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("Wrote " + target);
    out.println("Fill it in (its sheet Guide tells how), then give it to the command plan.");
    return ExitCode.DONE;
  }

  private void copyForm(OutputStream out) throws IOException {
    String name = units == Units.US ? "inventory-us.xlsx" : FILE;
    String resource = "/templates/" + name;
    try (InputStream form =
        Objects.requireNonNull(BlankCommand.class.getResourceAsStream(resource), resource)) {
      form.transferTo(out);
    }
  }
}
