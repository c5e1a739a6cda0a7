package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hibernacle.climate.SeasonSoFar;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings.Units;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.ModelError;
import org.hibernacle.thermal.PlaceBase;

/**
 * Says what the plan assumed and what it had to leave out. Codes are listed in docs/messages.md.
 */
final class PlanNotes {
  /** Days ahead beyond which forecasts of the air tell little; common practice, no source. */
  private static final int LONG_FORECAST_DAYS = 10;

  private final List<Diagnostic> notes = new ArrayList<>();

  void selection(WinterSelection selection) {
    snow(selection.series());
    for (WinterSelection.LeftOut out : selection.leftOut()) {
      String why =
          switch (out.reason()) {
            case FILE_STARTS_TOO_LATE -> "the file starts too late for it";
            case FILE_ENDS_TOO_EARLY -> "the file ends too early for it";
            case GAP_TOO_LONG -> "a gap from " + out.missing().fromInclusive() + " is too long";
            case TOO_MANY_GAPS -> "too many days are missing";
          };
      add(
          Severity.NOTE,
          "PL-401",
          "winter " + out.season(),
          why,
          "every day of the cold months",
          "the winter was left out");
    }
    for (UsableWinter winter : selection.winters()) {
      if (!winter.bridged().isEmpty()) {
        add(
            Severity.WARNING,
            "PL-402",
            "winter " + winter.season(),
            winter.bridged().size()
                + " short gaps, the first on "
                + winter.bridged().get(0).fromInclusive(),
            "every day",
            "they were bridged by straight lines");
      }
    }
  }

  private void snow(TemperatureSeries series) {
    long days = series.snowCm().values().stream().filter(cm -> cm > 0).count();
    boolean told = !series.snowCm().isEmpty();
    add(
        Severity.NOTE,
        told ? "PL-421" : "PL-420",
        "temperatures",
        told ? days + " days with snow on the ground" : "no depth of snow",
        "",
        told
            ? "places on the ground are planned with it as settled snow, days without a figure and"
                + " benches without"
            : "the ground is planned bare in every winter, which is the cold side");
  }

  void winters(WintersOnFile winters) {
    if (Caution.widenedByK(winters.count()) > 0) {
      add(
          Severity.WARNING,
          "PL-403",
          "temperatures",
          winters.count() == 1 ? "one usable winter" : winters.count() + " usable winters",
          "ten or more",
          "the plan knows nothing of other winters, so it keeps more in hand than the safety"
              + " margin; see the overview");
    }
    for (int w = 0; w < winters.count(); w++) {
      if (!PlaceBase.hasWholeYear(winters.winter(w))) {
        add(
            Severity.NOTE,
            "PL-404",
            "winter " + winters.winter(w).season(),
            "temperatures from " + winters.winter(w).first() + " only",
            "a whole year",
            "soil starts from a rule of latitude, plants start unhardened");
      }
    }
  }

  void settings(Inventory inventory, Caution caution) {
    var settings = inventory.settings();
    if (settings.acceptedRiskOfTen() > 0 && caution.failuresAllowed() == 0) {
      add(
          Severity.NOTE,
          "PL-405",
          "Settings, Accepted risk",
          settings.acceptedRiskOfTen() + " of 10 seasons",
          "more winters on file",
          "that is less than one of the winters on file, so no risk is taken");
    }
  }

  void room(List<PlaceForecast> places) {
    for (PlaceForecast place : places) {
      if (place.overfull()) {
        add(
            Severity.WARNING,
            "PL-407",
            "place " + place.place().name(),
            "more floor asked for by the plants at home there than it has",
            "",
            "nobody is sent away from home for want of room; see the place's page");
      }
    }
  }

  /** How far the sharing of room and hands can be from the best. */
  void sharing(Gap gap) {
    if (gap.rows() > 0) {
      String lost = gap.lost() == 0 ? "" : gap.lost() + " rows lost that would be safe alone, ";
      add(
          Severity.NOTE,
          "PL-452",
          "room and hands",
          String.format(
              Locale.ROOT,
              "%d rows gave way: %s%+d moves and %+d nights away from home in all",
              gap.rows(),
              lost,
              gap.moves(),
              gap.nights()),
          "",
          "that is against every plant as if nobody were in its way, which no plan can beat, so the"
              + " best way of sharing saves no more than this");
    }
  }

  /** Pots whose dates were moved for the sake of the helper. */
  void gathered(List<String> ids) {
    if (!ids.isEmpty()) {
      add(
          Severity.NOTE,
          "PL-451",
          "pots for two people",
          String.join(", ", ids) + " carried up to a week earlier or later than they need be",
          "",
          "they share the day with others that want two people, so help is needed on fewer days");
    }
  }

  /** Whether everything was tried that might help. */
  void help(Help help) {
    if (!help.allTried()) {
      add(
          Severity.NOTE,
          "PL-450",
          "what would help",
          "more changes than can be tried in a garden of this size",
          "",
          "the cheapest kinds were tried first, others may help too");
    }
  }

  /** What loggers said of the model, and which of them said nothing. */
  void loggers(Question question, List<PlaceForecast> places, int winters) {
    Map<String, TemperatureSeries> loggers = question.loggers();
    boolean metric = question.inventory().settings().units() == Units.METRIC;
    double perK = metric ? 1 : 1.8;
    String unit = metric ? "K" : "°F";
    for (PlaceForecast place : places) {
      String where = "place " + place.place().name();
      TemperatureSeries logger = loggers.get(place.place().name());
      if (logger == null) {
        continue;
      }
      if (place.modelError().isEmpty()) {
        add(
            Severity.WARNING,
            "PL-431",
            where,
            "a logger from " + logger.days().firstKey() + " to " + logger.days().lastKey(),
            "days in one of the winters used",
            "the model stands, as if there were no logger");
        continue;
      }
      ModelError error = place.modelError().get();
      add(
          Severity.NOTE,
          "PL-430",
          where,
          String.format(
              Locale.ROOT,
              "over %d hours of its logger the model was %.1f %s too %s on average, %.1f %s off as a"
                  + " root mean square, at most %.1f %s too %s on %s",
              error.hours(),
              perK * Math.abs(error.meanK()),
              unit,
              error.meanK() < 0 ? "cold" : "warm",
              perK * error.rmsK(),
              unit,
              perK * Math.abs(error.largestK()),
              unit,
              error.largestK() < 0 ? "cold" : "warm",
              error.largestOn()),
          "",
          String.format(
              Locale.ROOT,
              "in these hours, which lie in %d of %d winters used, the logger's air is used",
              error.winters(),
              winters));
    }
  }

  /** What is known of a season that has begun, and what was taken to have been done in it. */
  void progress(Progress progress, Outlook outlook, Inventory inventory) {
    SeasonSoFar soFar = outlook.soFar().orElseThrow();
    LocalDate asOf = soFar.asOf();
    String where = "as of " + asOf;
    add(
        Severity.NOTE,
        "PL-440",
        where,
        soFar.leadDays() == 0
            ? "no forecast after that day"
            : soFar.leadDays() + " days of forecast, to " + soFar.knownTo(),
        "",
        "earlier nights were lived through and are not judged; what is not known of winter "
            + soFar.season()
            + " is taken from each of the earlier winters in turn");
    if (soFar.missingDays() > 0) {
      add(
          Severity.WARNING,
          "PL-441",
          where,
          soFar.missingDays() + " days of winter " + soFar.season() + " up to then are not on file",
          "every day up to then",
          "earlier winters stand in for them");
    }
    if (soFar.forecastDropped() > 0) {
      add(
          Severity.WARNING,
          "PL-442",
          where,
          soFar.forecastDropped() + " days of forecast lie beyond a gap",
          "a forecast without gaps from the day after",
          "they are not used");
    }
    if (soFar.leadDays() > LONG_FORECAST_DAYS) {
      add(
          Severity.WARNING,
          "PL-443",
          where,
          soFar.leadDays() + " days of forecast",
          "about " + LONG_FORECAST_DAYS + " at most",
          "all of them are taken for true, within the margin; forecasts so far ahead tell little");
    }
    moves(progress, where, inventory);
  }

  private void moves(Progress progress, String where, Inventory inventory) {
    long plants = progress.made().stream().map(MoveMade::plantId).distinct().count();
    add(
        Severity.NOTE,
        "PL-444",
        where,
        progress.made().size() + " moves of " + plants + " plants in the log up to then",
        "",
        "each plant is taken to stand where its last real date put it, without one at home");
    Set<String> known = inventory.plants().stream().map(Plant::id).collect(Collectors.toSet());
    Map<String, Long> made =
        progress.made().stream()
            .collect(Collectors.groupingBy(MoveMade::plantId, Collectors.counting()));
    Map<String, Long> due =
        progress.planned().stream()
            .filter(move -> move.date().isBefore(progress.asOf()))
            .filter(move -> known.contains(move.plantId()))
            .collect(
                Collectors.groupingBy(MovePlanned::plantId, TreeMap::new, Collectors.counting()));
    List<String> behind =
        due.entrySet().stream()
            .filter(plant -> plant.getValue() > made.getOrDefault(plant.getKey(), 0L))
            .map(Map.Entry::getKey)
            .toList();
    if (!behind.isEmpty()) {
      add(
          Severity.WARNING,
          "PL-445",
          where,
          "the plan had moves before then that have no real date in the log: "
              + String.join(", ", behind),
          "a real date for each move made",
          "these plants are taken as not carried");
    }
  }

  List<Diagnostic> sorted() {
    return notes.stream().sorted(Diagnostic.ORDER).toList();
  }

  private void add(
      Severity severity,
      String code,
      String where,
      String found,
      String expected,
      String consequence) {
    notes.add(new Diagnostic(severity, code, where, found, expected, consequence));
  }
}
