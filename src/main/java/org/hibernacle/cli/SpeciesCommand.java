package org.hibernacle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.SpeciesMatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the species table, or one species with all its figures. */
@Command(
    name = "species",
    mixinStandardHelpOptions = true,
    description = "Shows the built-in species table, or every figure of one species and its basis.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  hibernacle species",
      "  hibernacle species Acer palmatum",
      "  hibernacle species \"Acer sp.\""
    })
final class SpeciesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "NAME",
      description = "Scientific or common name, genus (Acer sp.) or group (hardy conifer).")
  private List<String> name = List.of();

  @Override
  public Integer call() {
    SpeciesCatalogue catalogue = SpeciesCatalogue.builtIn();
    PrintWriter out = spec.commandLine().getOut();
    String wanted = String.join(" ", name).strip();
    if (wanted.isEmpty()) {
      SpeciesList.lines(catalogue.species()).forEach(out::println);
      return ExitCode.DONE;
    }
    SpeciesMatch match = catalogue.match(wanted);
    if (match instanceof SpeciesMatch.Named named) {
      SpeciesSheet.lines(named.species()).forEach(out::println);
      return ExitCode.DONE;
    }
    if (match instanceof SpeciesMatch.GenusOnly genus) {
      SpeciesSheet.lines(genus.cautious()).forEach(out::println);
      out.println();
      out.println("The most cautious figures of: " + String.join(", ", genus.standingFor()) + ".");
      return ExitCode.DONE;
    }
    return unknown(wanted, ((SpeciesMatch.Unknown) match).nearest());
  }

  private int unknown(String wanted, List<String> nearest) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("The species table has no \"" + wanted + "\".");
    if (!nearest.isEmpty()) {
      err.println("Nearest: " + String.join(", ", nearest) + ".");
    }
    err.println("\"hibernacle species\" without a name lists the whole table.");
    return ExitCode.WRONG_USE;
  }
}
