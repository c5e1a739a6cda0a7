package org.hibernacle.cli;

import java.io.BufferedWriter;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
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
      "5:output could not be written; files that were there are untouched",
      "130:stopped with Ctrl-C; the files are all old or all new"
    },
    footer = {
      "",
      "An inventory workbook and its temperature files, given or dropped without a command, are"
          + " planned into the workbook's own folder.",
      "Where there is no launcher, \"hibernacle\" stands for \"java -jar hibernacle.jar\"."
    })
public final class Hibernacle implements Runnable {
  @Spec private CommandSpec spec;

  private final ProgressLine progress;

  private Hibernacle(ProgressLine progress) {
    this.progress = progress;
  }

  /** Runs the program and ends the process with its exit code. */
  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    ProgressLine progress =
        Terminal.isWatched()
            ? ProgressLine.drawn(new PrintWriter(System.err, true, StandardCharsets.UTF_8))
            : ProgressLine.silent();
    PrintWriter out = writer(System.out, progress);
    PrintWriter err = writer(System.err, progress);
    System.exit(run(out, err, progress, args));
  }

  private static PrintWriter writer(OutputStream stream, ProgressLine progress) {
    OutputStreamWriter plain = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
    return new PrintWriter(new BufferedWriter(progress.makingWay(plain)), true);
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
    return run(out, err, ProgressLine.silent(), args);
  }

  private static int run(PrintWriter out, PrintWriter err, ProgressLine progress, String... args) {
    CommandLine line = commandLine(progress);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(Hibernacle::explainWrongUse);
    line.setExecutionExceptionHandler(Hibernacle::explainFailure);
    Optional<DroppedFiles> dropped = DroppedFiles.of(args, line.getSubcommands().keySet());
    int code = dropped.isPresent() ? dropped.get().plan(line) : line.execute(args);
    progress.wipe();
    out.flush();
    err.flush();
    return code;
  }

  /** All commands with their options. */
  static CommandLine commandLine(ProgressLine progress) {
    return new CommandLine(new Hibernacle(progress));
  }

  /** Where a command tells what takes so long. */
  ProgressLine progress() {
    return progress;
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
