package org.hibernacle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.hibernacle.input.EarlierPlan;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.Explanation;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Progress;
import org.hibernacle.planning.Question;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.hibernacle.planning.WinterJudged;
import org.hibernacle.report.Hindsight;
import org.hibernacle.report.PlantStory;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The main job: inventory and temperatures in, season plan and calendar out. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Writes the season plan workbook and the printable calendar.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  hibernacle plan inventory.xlsx temperatures.csv -o winter",
      "  hibernacle plan inventory.xlsx 2014.csv 2015.csv --season 2016 --unit C",
      "  hibernacle plan inventory.xlsx to-date-and-forecast.csv --as-of 2026-11-10 -o winter",
      "  hibernacle plan garden.xlsx station.csv --place-temperatures \"Shed=shed.csv\"",
      "  hibernacle plan inventory.xlsx temperatures.csv --ics --labels",
      "  hibernacle plan garden.xlsx station.csv --template my-look.xlsx",
      "",
      "Exit code 4 means: done, but some plants can not be protected; the summary names them."
    })
final class PlanCommand implements Callable<Integer> {
  static final String WORKBOOK = "season-plan.xlsx";
  static final String CALENDAR = "season-calendar.pdf";

  @Spec private CommandSpec spec;

  @ParentCommand private Hibernacle program;

  @Parameters(
      index = "0",
      paramLabel = "INVENTORY.xlsx",
      description = "The inventory workbook; \"hibernacle blank\" writes one to fill in.")
  private Path inventoryFile;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "TEMPERATURES.csv",
      description = "Temperature files of one station, read as one series.")
  private List<Path> temperatureFiles;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "DIR",
      description = "Folder to write to; the inventory's own folder if not given.")
  private Optional<Path> output = Optional.empty();

  @Option(
      names = "--season",
      paramLabel = "YEAR",
      description =
          "Year in whose autumn the season begins; the season after the last whole winter on file"
              + " if not given.")
  private Optional<Integer> season = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      converter = AsOfDay.Converter.class,
      description =
          "Plans from that day of the season on, such as 2026-11-10: rows up to it are what"
              + " happened, later rows are the forecast, earlier winters follow. Moves made are"
              + " read from the Log of the season plan that is given or replaced.")
  private Optional<AsOfDay> asOf = Optional.empty();

  @Mixin private TemperatureOptions temperatures = new TemperatureOptions();

  @Mixin private PlaceTemperatureOptions loggers = new PlaceTemperatureOptions();

  @Mixin private ExtraFiles extras = new ExtraFiles();

  @Mixin private LookOptions looks = new LookOptions();

  @Mixin private HandOutOption handOut = new HandOutOption();

  @ArgGroup private AnswerOptions answer = new AnswerOptions();

  @Option(
      names = "--without-remedies",
      description =
          "Does not look for what would help plants that can not be protected: quicker, since"
              + " that plans the garden many times.")
  private boolean withoutRemedies;

  @Option(names = "--dry-run", description = "Plans and prints the summary, writes nothing.")
  private boolean dryRun;

  @Option(
      names = {"-q", "--quiet"},
      description = "Prints errors only.")
  private boolean quiet;

  @Override
  public Integer call() throws IOException {
    OutputFolder folder = new OutputFolder(folder(), inputs());
    Problems problems = new Problems();
    boolean writes = !dryRun && answer.writes();
    if (writes && folder.objects(List.of(WORKBOOK, CALENDAR), err())) {
      return stopped(ExitCode.NOT_WRITTEN, problems);
    }
    ProgressLine line = progress();
    line.tell("reading the files");
    Optional<Inventory> inventory =
        InventoryWorkbook.read(inventoryFile, SpeciesCatalogue.builtIn(), problems);
    Optional<TemperatureSeries> series =
        TemperatureCsv.read(temperatureFiles, temperatures.forReading(), problems);
    Map<String, TemperatureSeries> logged =
        inventory.isPresent()
            ? loggers.read(inventory.get(), temperatures.forReading().unit(), problems)
            : Map.of();
    Look look = looks.read(problems);
    Problems earlierProblems = new Problems();
    folder.remember(WORKBOOK);
    EarlierPlans earlier =
        EarlierPlans.read(folder.target(WORKBOOK), inventoryFile, earlierProblems);
    if (inventory.isEmpty() || series.isEmpty() || problems.hasErrors()) {
      return stopped(ExitCode.BAD_INPUT, problems);
    }
    if (earlierProblems.hasErrors()) {
      int code = stopped(ExitCode.NOT_WRITTEN, earlierProblems);
      err().println("It may hold a filled-in log, so it is not replaced. Move it away first.");
      return code;
    }
    boolean southern = inventory.get().settings().southern();
    Optional<String> wrongUse =
        asOf.flatMap(day -> day.wrongUse(season, southern, answer.leaveOneOut()))
            .or(() -> season.flatMap(year -> handOut.outside(new Season(year, southern))));
    if (wrongUse.isPresent()) {
      err().println(wrongUse.get());
      return stopped(ExitCode.WRONG_USE, problems);
    }
    Optional<Progress> progress = asOf.map(day -> day.progress(inventory.get(), earlier, problems));
    if (problems.hasErrors()) {
      return stopped(ExitCode.BAD_INPUT, problems);
    }
    Question question =
        new Question(inventory.get(), series.get(), logged, seasonYear(), progress, line);
    if (answer.explain().isPresent()) {
      return explain(question, problems);
    }
    if (answer.leaveOneOut()) {
      return leaveOneOut(question, problems);
    }
    Optional<SeasonPlan> plan =
        withoutRemedies ? SeasonPlanner.planOnly(question) : SeasonPlanner.plan(question);
    if (plan.isEmpty()) {
      return noWinter(problems);
    }
    earlier.tellTicksWithoutWork(plan.get(), problems);
    earlier.tellOtherPlants(plan.get(), problems);
    Season planned = plan.get().season();
    boolean anotherLog = earlier.wouldLoseALog(planned);
    Optional<String> outside = handOut.outside(planned);
    Optional<OutputFile> kept =
        anotherLog || outside.isPresent()
            ? Optional.empty()
            : KeptPlan.of(folder, earlier, planned, dryRun, problems);
    if (!quiet && !answer.json()) {
      ProblemPrinter.printBriefly(
          Stream.concat(problems.sorted().stream(), plan.get().notes().stream()).toList(), err());
    }
    if (anotherLog) {
      err()
          .println(
              folder.target(WORKBOOK)
                  + " holds the filled-in log of another winter, so it is not replaced;"
                  + " this plan is for winter "
                  + planned
                  + ". Give another folder with -o.");
      return stopped(ExitCode.NOT_WRITTEN, problems);
    }
    if (outside.isPresent()) {
      err().println(outside.get());
      return stopped(ExitCode.WRONG_USE, problems);
    }
    return report(plan.get(), problems, folder, earlier, look, kept);
  }

  /** Tells the problems known by then, to a script on the output that it reads. */
  private int stopped(int code, Problems problems) {
    if (answer.json()) {
      PrintWriter out = spec.commandLine().getOut();
      out.println(Json.of(ProblemsAsJson.counted(problems)));
      out.flush();
    } else if (problems.hasErrors()) {
      ProblemPrinter.printForStop(problems, err());
    }
    return code;
  }

  private OptionalInt seasonYear() {
    return season.isPresent() ? OptionalInt.of(season.get()) : OptionalInt.empty();
  }

  private int noWinter(Problems problems) {
    asOf.ifPresentOrElse(
        day -> problems.error("PL-400.before", names(temperatureFiles), day.day()),
        () -> problems.error("PL-400", names(temperatureFiles)));
    return stopped(ExitCode.BAD_INPUT, problems);
  }

  private int explain(Question question, Problems problems) throws IOException {
    String id = answer.explain().orElseThrow();
    if (question.inventory().plants().stream().noneMatch(p -> p.id().equals(id))) {
      err().println("No plant has the Id \"" + id + "\"; the Ids stand in the sheet Plants.");
      return ExitCode.WRONG_USE;
    }
    Optional<Explanation> told = SeasonPlanner.explain(question, id);
    if (told.isEmpty()) {
      return noWinter(problems);
    }
    Words words = Words.of(question.inventory().settings().language());
    RunFacts facts =
        facts(told.get().season(), problems, new EarlierPlans(Optional.empty(), Optional.empty()));
    PrintWriter out = spec.commandLine().getOut();
    PlantStory.write(told.get(), facts, words).forEach(out::println);
    out.flush();
    return told.get().plan().verdict() == PlantPlan.Verdict.UNPROTECTED
        ? ExitCode.UNPROTECTED
        : ExitCode.DONE;
  }

  private int leaveOneOut(Question question, Problems problems) {
    List<WinterJudged> judged = SeasonPlanner.leaveOneOut(question);
    if (judged.isEmpty()) {
      return noWinter(problems);
    }
    PrintWriter out = spec.commandLine().getOut();
    Words words = Words.of(question.inventory().settings().language());
    Hindsight.write(judged, words).forEach(out::println);
    out.flush();
    return ExitCode.DONE;
  }

  private List<Path> inputs() {
    List<Path> inputs = new ArrayList<>();
    inputs.add(inventoryFile);
    inputs.addAll(temperatureFiles);
    inputs.addAll(loggers.files());
    inputs.addAll(looks.files());
    return inputs;
  }

  private RunFacts facts(SeasonPlan plan, Problems problems, EarlierPlans earlier)
      throws IOException {
    List<RunFacts.InputFile> inputs = new ArrayList<>();
    for (Path file : inputs()) {
      inputs.add(Digests.of(file));
    }
    return new RunFacts(
        Hibernacle.Version.text(),
        inputs,
        problems.sorted(),
        options(plan),
        List.of(),
        earlier.withLog(plan.season()).map(EarlierPlan::log),
        earlier.asPlanned(plan.season()));
  }

  private int report(
      SeasonPlan plan,
      Problems problems,
      OutputFolder folder,
      EarlierPlans earlier,
      Look look,
      Optional<OutputFile> kept)
      throws IOException {
    progress().tell("writing the plan");
    Words words = Words.of(plan.inventory().settings().language());
    RunFacts facts = facts(plan, problems, earlier);
    SeasonReport report = ReportAuthor.write(plan, facts, words);
    List<OutputFile> files = new ArrayList<>(kept.stream().toList());
    files.add(look.workbook(WORKBOOK, report));
    files.add(look.paper(CALENDAR, report));
    files.addAll(extras.files(plan, facts, words, report, look, problems));
    files.addAll(handOut.files(plan, facts, words, look));
    if (problems.hasErrors()) {
      return stopped(ExitCode.BAD_INPUT, problems);
    }
    Optional<List<Path>> written = dryRun ? Optional.of(List.of()) : folder.write(files, err());
    if (written.isEmpty()) {
      return stopped(ExitCode.NOT_WRITTEN, problems);
    }
    List<Path> wouldWrite =
        files.stream().filter(f -> dryRun).map(f -> folder.target(f.name())).toList();
    Problems warnings = look.warnings();
    PrintWriter out = spec.commandLine().getOut();
    if (answer.json()) {
      List<Diagnostic> all =
          Stream.of(problems.sorted(), plan.notes(), warnings.sorted())
              .flatMap(List::stream)
              .toList();
      out.println(Json.of(PlanAsJson.of(plan, report.digest(), all, written.get(), wouldWrite)));
    } else if (!quiet) {
      ProblemPrinter.print(warnings, err());
      Summary.print(report, written.get(), out);
      Summary.wouldWrite(wouldWrite, out);
    }
    return plan.unprotected().findAny().isPresent() ? ExitCode.UNPROTECTED : ExitCode.DONE;
  }

  private List<String> options(SeasonPlan plan) {
    List<String> options = new ArrayList<>();
    options.add("season=" + plan.season());
    asOf.ifPresent(day -> options.add("as-of=" + day.day()));
    options.addAll(temperatures.texts());
    options.addAll(loggers.texts());
    return options;
  }

  private Path folder() {
    return output.orElseGet(
        () -> Optional.ofNullable(inventoryFile.toAbsolutePath().getParent()).orElse(Path.of(".")));
  }

  private static String names(List<Path> files) {
    return String.join(", ", files.stream().map(f -> String.valueOf(f.getFileName())).toList());
  }

  private ProgressLine progress() {
    return quiet ? ProgressLine.silent() : program.progress();
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }
}
