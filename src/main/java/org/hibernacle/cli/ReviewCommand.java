package org.hibernacle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.hibernacle.input.FilledLog;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.NextInventory;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Season;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.model.SheetTable;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.report.ReviewAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.hibernacle.review.ReviewQuestion;
import org.hibernacle.review.Reviewer;
import org.hibernacle.review.SeasonReview;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** After the winter: a filled-in plan and real temperatures in, losses and next inventory out. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Reviews a winter from the filled-in season plan: likely causes of losses, what to change,"
            + " and the inventory for the next plan.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  hibernacle review winter/season-plan.xlsx temperatures.csv winter-2026-27.csv -o review",
      "  hibernacle review season-plan.xlsx 2026.csv --place-temperatures \"Shed=shed.csv\"",
      "",
      "Files of earlier years may come first: the soil remembers them."
    })
final class ReviewCommand implements Callable<Integer> {
  static final String REVIEW = "losses-review.xlsx";
  static final String PAPER = "losses-review.pdf";
  static final String INVENTORY = "next-inventory.xlsx";

  @Spec private CommandSpec spec;

  @ParentCommand private Hibernacle program;

  @Parameters(
      index = "0",
      paramLabel = "SEASON-PLAN.xlsx",
      description = "The season plan with its sheet Log filled in.")
  private Path planFile;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "ACTUAL.csv",
      description = "Temperatures that the season really had, read as one series.")
  private List<Path> temperatureFiles;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "DIR",
      description = "Folder to write to; the plan's own folder if not given.")
  private Optional<Path> output = Optional.empty();

  @Mixin private TemperatureOptions temperatures = new TemperatureOptions();

  @Mixin private PlaceTemperatureOptions loggers = new PlaceTemperatureOptions();

  @Mixin private LookOptions looks = new LookOptions();

  @Option(names = "--dry-run", description = "Reviews and prints the summary, writes nothing.")
  private boolean dryRun;

  @Option(
      names = {"-q", "--quiet"},
      description = "Prints errors only.")
  private boolean quiet;

  @Override
  public Integer call() throws IOException {
    OutputFolder folder = new OutputFolder(folder(), inputs());
    if (!dryRun && folder.objects(List.of(REVIEW, INVENTORY, PAPER), err())) {
      return ExitCode.NOT_WRITTEN;
    }
    progress().tell("reading the files");
    Problems problems = new Problems();
    Optional<Inventory> inventory =
        InventoryWorkbook.read(planFile, SpeciesCatalogue.builtIn(), problems);
    String inAndOut = Words.of(Locale.ENGLISH).text("task.IN_AND_OUT");
    Optional<SeasonLog> log =
        inventory.flatMap(i -> FilledLog.read(planFile, i, inAndOut, problems));
    Optional<TemperatureSeries> series =
        TemperatureCsv.read(temperatureFiles, temperatures.forReading(), problems);
    Map<String, TemperatureSeries> logged =
        inventory.isPresent()
            ? loggers.read(inventory.get(), temperatures.forReading().unit(), problems)
            : Map.of();
    Look look = looks.read(problems);
    if (log.isEmpty() || series.isEmpty() || problems.hasErrors()) {
      ProblemPrinter.printForStop(problems, err());
      return ExitCode.BAD_INPUT;
    }
    progress().tell("reviewing the winter");
    Optional<SeasonReview> review =
        Reviewer.review(
            new ReviewQuestion(inventory.orElseThrow(), log.get(), series.get(), logged));
    if (review.isEmpty()) {
      return seasonMissing(log.get().season(), problems);
    }
    if (!quiet) {
      ProblemPrinter.printBriefly(
          Stream.concat(problems.sorted().stream(), review.get().notes().stream()).toList(), err());
    }
    return report(review.get(), problems, folder, look);
  }

  private List<Path> inputs() {
    List<Path> inputs = new ArrayList<>();
    inputs.add(planFile);
    inputs.addAll(temperatureFiles);
    inputs.addAll(loggers.files());
    inputs.addAll(looks.files());
    return inputs;
  }

  private int seasonMissing(Season season, Problems problems) {
    problems.error(
        "RV-550",
        String.join(
            ", ", temperatureFiles.stream().map(f -> String.valueOf(f.getFileName())).toList()),
        season);
    ProblemPrinter.printForStop(problems, err());
    return ExitCode.BAD_INPUT;
  }

  private int report(SeasonReview review, Problems problems, OutputFolder folder, Look look)
      throws IOException {
    progress().tell("writing the review");
    Words words = Words.of(review.inventory().settings().language());
    RunFacts facts = facts(review, problems);
    SeasonReport report = ReviewAuthor.write(review, facts, words);
    List<SheetTable> sheets =
        NextInventory.sheets(
            review.inventory(),
            ReviewAuthor.revision(review, facts, words),
            SpeciesCatalogue.builtIn());
    List<SeasonReport.Asked> asked =
        NextInventory.questions(sheets).stream()
            .map(q -> new SeasonReport.Asked(q.sheet(), q.heading(), q.beside(), q.answers()))
            .toList();
    SeasonReport inventory = ReviewAuthor.inventory(review, facts, words, sheets, asked);
    Optional<List<Path>> written =
        dryRun
            ? Optional.of(List.of())
            : folder.write(
                List.of(
                    look.workbook(REVIEW, report),
                    look.workbook(INVENTORY, inventory),
                    look.paper(PAPER, report)),
                err());
    if (written.isEmpty()) {
      return ExitCode.NOT_WRITTEN;
    }
    if (!quiet) {
      ProblemPrinter.print(look.warnings(), err());
      Summary.print(report, written.get(), spec.commandLine().getOut());
    }
    return ExitCode.DONE;
  }

  private RunFacts facts(SeasonReview review, Problems problems) throws IOException {
    List<RunFacts.InputFile> inputs = new ArrayList<>();
    for (Path file : inputs()) {
      inputs.add(Digests.of(file));
    }
    List<String> options = new ArrayList<>();
    options.add("review=" + review.season());
    options.addAll(temperatures.texts());
    options.addAll(loggers.texts());
    return new RunFacts(
        Hibernacle.Version.text(), inputs, problems.sorted(), options, List.of(), Optional.empty());
  }

  private Path folder() {
    return output.orElseGet(
        () -> Optional.ofNullable(planFile.toAbsolutePath().getParent()).orElse(Path.of(".")));
  }

  private ProgressLine progress() {
    return quiet ? ProgressLine.silent() : program.progress();
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
