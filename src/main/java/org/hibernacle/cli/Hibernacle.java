package org.hibernacle.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The program: parses the command line, runs one command, returns its exit code. */
@Command(
    name = "hibernacle",
    mixinStandardHelpOptions = true,
    versionProvider = Hibernacle.Version.class,
    description = "Plans the winter of a collection of container-grown trees.",
    subcommands = {
      PlanCommand.class,
      CheckCommand.class,
      ReviewCommand.class,
      BlankCommand.class,
      SpeciesCommand.class,
      WintersCommand.class,
      CommandLine.HelpCommand.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:unexpected failure; the message says how to report it",
      "2:wrong use of the command line",
      "3:the input has errors; nothing was written",
      "4:done, but some plants can not be protected",
      "5:output could not be written; files that were there are untouched"
    },
    footer = {"", "In examples \"hibernacle\" stands for \"java -jar hibernacle.jar\"."})
public final class Hibernacle implements Runnable {
  @Spec private CommandSpec spec;

  private Hibernacle() {}

  /** Runs the program and ends the process with its exit code. */
  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /**
   * Runs one command without ending the process.
   *
   * @param out for summaries and paths
   * @param err for problems
   * @param args the command line
   * @return exit code
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = new CommandLine(new Hibernacle());
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(Hibernacle::explainWrongUse);
    line.setExecutionExceptionHandler(Hibernacle::explainFailure);
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explainWrongUse(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    PrintWriter err = line.getErr();
    err.println(e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
    err.println("Try \"" + line.getCommandSpec().qualifiedName() + " --help\".");
    return ExitCode.WRONG_USE;
  }

  private static int explainFailure(Exception e, CommandLine line, ParseResult result) {
    PrintWriter err = line.getErr();
    err.println(
        "Unexpected failure. Please report it with the command line and the lines below;"
            + " no output file was changed.");
    e.printStackTrace(err);
    return ExitCode.UNEXPECTED;
  }

  /** Tells the version from the jar's manifest. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"hibernacle " + text()};
    }

    static String text() {
      String version = Hibernacle.class.getPackage().getImplementationVersion();
      return version == null ? "development" : version;
    }
  }
}
