package org.hibernacle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hibernacle.climate.DayWindow;
import org.hibernacle.climate.FreezeDates;
import org.hibernacle.climate.PlottingPosition;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.climate.WinterSummaries;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.input.Problems;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.TemperatureSeries;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what each winter on file was like. */
@Command(
    name = "winters",
    mixinStandardHelpOptions = true,
    description =
        "Tells what each winter in temperature files was like: frosts, chill, gaps; and when its"
            + " first and last frost come, by chance.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  hibernacle winters station.csv --latitude 48.1",
      "  hibernacle winters 2019.csv 2020.csv --from 10-01 --to 03-31 --csv"
    })
final class WintersCommand implements Callable<Integer> {
  private static final double DEFAULT_LATITUDE_DEG = 45;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "TEMPERATURES.csv",
      description = "Files of one station, read as one series.")
  private List<Path> files;

  @Mixin private TemperatureOptions temperatures = new TemperatureOptions();

  @Option(
      names = "--latitude",
      paramLabel = "DEGREES",
      description =
          "Latitude of the station, -66 to 66, south negative; 45 if not given. Decides the length"
              + " of days and when a winter begins.")
  private Optional<Double> latitude = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "MM-DD",
      converter = MonthDayConverter.class,
      description = "First day over which chill and warmth are summed.")
  private Optional<MonthDay> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "MM-DD",
      converter = MonthDayConverter.class,
      description = "Last day over which chill and warmth are summed.")
  private Optional<MonthDay> to = Optional.empty();

  @Option(
      names = "--positions",
      paramLabel = "NAME",
      description =
          "How frost dates on file are spread over chances: weibull (the default) or hazen, which"
              + " tells dates from six winters on and draws them closer together.")
  private PlottingPosition position = PlottingPosition.WEIBULL;

  @Option(
      names = "--csv",
      description = "Prints one row a winter for a spreadsheet, and no frost dates by chance.")
  private boolean csv;

  @Override
  public Integer call() {
    double latitudeDeg = latitude.orElse(DEFAULT_LATITUDE_DEG);
    DayWindow window = window(latitudeDeg);
    Problems problems = new Problems();
    if (latitude.isEmpty()) {
      problems.note("IN-331", "--latitude");
    }
    Optional<TemperatureSeries> series =
        TemperatureCsv.read(files, temperatures.forReading(), problems);
    ProblemPrinter.print(problems, spec.commandLine().getErr());
    if (series.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    print(series.get(), latitudeDeg, window);
    return ExitCode.DONE;
  }

  private void print(TemperatureSeries series, double latitudeDeg, DayWindow window) {
    WinterSelection selection = WinterSelection.of(series, latitudeDeg < 0);
    PrintWriter out = spec.commandLine().getOut();
    out.println(csv ? WinterRow.headings() : "Station " + series.station());
    List<WinterSummary> winters = WinterSummaries.of(series, latitudeDeg, window);
    for (WinterSummary winter : winters) {
      WinterFitness fitness = WinterFitness.of(winter.season(), selection);
      if (csv) {
        out.println(WinterRow.of(series.station(), winter, fitness));
      } else {
        out.println();
        WinterBlock.lines(winter, fitness).forEach(out::println);
      }
    }
    if (!csv) {
      out.println();
      SeriesBlock.lines(series).forEach(out::println);
      out.println();
      List<FreezeDates> frosts = FreezeDates.of(winters, series, position);
      FreezeDateBlock.lines(frosts, position, latitudeDeg < 0).forEach(out::println);
    }
    out.flush();
  }

  private DayWindow window(double latitudeDeg) {
    if (!(latitudeDeg >= -66 && latitudeDeg <= 66)) {
      throw new ParameterException(
          spec.commandLine(), "--latitude must be -66 to 66 but is " + latitudeDeg);
    }
    boolean southern = latitudeDeg < 0;
    DayWindow season = DayWindow.wholeSeason(southern);
    DayWindow window = new DayWindow(from.orElse(season.first()), to.orElse(season.last()));
    if (!window.fits(southern)) {
      throw new ParameterException(
          spec.commandLine(),
          "--from must not be later than --to in a winter that begins on "
              + (southern ? "1 January" : "1 July"));
    }
    return window;
  }
}
