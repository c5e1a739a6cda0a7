package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hibernacle.climate.SeasonSoFar;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings.Units;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.ModelError;
import org.hibernacle.thermal.PlaceBase;

/**
 * Says what the plan assumed and what it had to leave out. Codes are listed in docs/messages.md,
 * their texts stand in messages.properties.
 */
final class PlanNotes {
  /** Days ahead beyond which forecasts of the air tell little; common practice, no source. */
  private static final int LONG_FORECAST_DAYS = 10;

  private static final Phrase TEMPERATURES = Phrase.of("where.temperatures");

  private final List<Diagnostic> notes = new ArrayList<>();

  void selection(WinterSelection selection) {
    snow(selection.series());
    for (WinterSelection.LeftOut out : selection.leftOut()) {
      Phrase where = winter(out.season());
      switch (out.reason()) {
        case FILE_STARTS_TOO_LATE -> note("PL-401.starts-late", where);
        case FILE_ENDS_TOO_EARLY -> note("PL-401.ends-early", where);
        case GAP_TOO_LONG -> note("PL-401.gap", where, out.missing().fromInclusive());
        case TOO_MANY_GAPS -> note("PL-401.gaps", where);
      }
    }
    for (UsableWinter winter : selection.winters()) {
      List<DateSpan> bridged = winter.bridged();
      if (!bridged.isEmpty()) {
        LocalDate first = bridged.get(0).fromInclusive();
        warning("PL-402", winter(winter.season()), bridged.size(), first);
      }
    }
  }

  private static Phrase winter(Season season) {
    return Phrase.of("where.winter", season);
  }

  private static Phrase place(PlaceForecast place) {
    return Phrase.of("where.place", place.place().name());
  }

  private void snow(TemperatureSeries series) {
    long days = series.snowCm().values().stream().filter(cm -> cm > 0).count();
    if (series.snowCm().isEmpty()) {
      note("PL-420", TEMPERATURES);
    } else {
      note("PL-421", TEMPERATURES, days);
    }
  }

  void winters(WintersOnFile winters) {
    if (Caution.widenedByK(winters.count()) > 0) {
      warning("PL-403", TEMPERATURES, winters.count());
    }
    for (int w = 0; w < winters.count(); w++) {
      if (!PlaceBase.hasWholeYear(winters.winter(w))) {
        note("PL-404", winter(winters.winter(w).season()), winters.winter(w).first());
      }
    }
  }

  void settings(Inventory inventory, Caution caution) {
    var settings = inventory.settings();
    if (settings.acceptedRiskOfTen() > 0 && caution.failuresAllowed() == 0) {
      note("PL-405", Phrase.of("where.accepted-risk"), settings.acceptedRiskOfTen());
    }
  }

  void room(List<PlaceForecast> places) {
    for (PlaceForecast place : places) {
      if (place.overfull()) {
        warning("PL-407", place(place));
      }
    }
  }

  /** How far the sharing of room and hands can be from the best. */
  void sharing(Gap gap) {
    if (gap.rows() > 0) {
      note(
          "PL-452",
          Phrase.of("where.room-and-hands"),
          gap.rows(),
          gap.lost(),
          gap.moves(),
          gap.nights());
    }
  }

  /** Pots whose dates were moved for the sake of the helper. */
  void gathered(List<String> ids) {
    if (!ids.isEmpty()) {
      note("PL-451", Phrase.of("where.pots-for-two"), ids);
    }
  }

  /** Whether everything was tried that might help. */
  void help(Help help) {
    if (!help.allTried()) {
      note("PL-450", Phrase.of("where.what-would-help"));
    }
  }

  /** What loggers said of the model, and which of them said nothing. */
  void loggers(Question question, List<PlaceForecast> places, int winters) {
    Map<String, TemperatureSeries> loggers = question.loggers();
    boolean metric = question.inventory().settings().units() == Units.METRIC;
    double perK = metric ? 1 : 1.8;
    String unit = metric ? "K" : "°F";
    for (PlaceForecast place : places) {
      TemperatureSeries logger = loggers.get(place.place().name());
      if (logger == null) {
        continue;
      }
      if (place.modelError().isEmpty()) {
        warning("PL-431", place(place), logger.days().firstKey(), logger.days().lastKey());
        continue;
      }
      ModelError error = place.modelError().get();
      note(
          "PL-430",
          place(place),
          error.hours(),
          off(perK * error.meanK(), unit),
          perK * error.rmsK(),
          unit,
          off(perK * error.largestK(), unit),
          error.largestOn(),
          error.winters(),
          winters);
    }
  }

  /** A difference in the keeper's unit, with its direction. */
  private static Phrase off(double difference, String unit) {
    return Phrase.of(difference < 0 ? "too-cold" : "too-warm", Math.abs(difference), unit);
  }

  /** What is known of a season that has begun, and what was taken to have been done in it. */
  void progress(Progress progress, Outlook outlook, Inventory inventory) {
    SeasonSoFar soFar = outlook.soFar().orElseThrow();
    Phrase where = Phrase.of("where.as-of", soFar.asOf());
    if (soFar.leadDays() == 0) {
      note("PL-440.no-forecast", where, soFar.season());
    } else {
      note("PL-440.forecast", where, soFar.season(), soFar.leadDays(), soFar.knownTo());
    }
    if (soFar.missingDays() > 0) {
      warning("PL-441", where, soFar.missingDays(), soFar.season());
    }
    if (soFar.forecastDropped() > 0) {
      warning("PL-442", where, soFar.forecastDropped());
    }
    if (soFar.leadDays() > LONG_FORECAST_DAYS) {
      warning("PL-443", where, soFar.leadDays(), LONG_FORECAST_DAYS);
    }
    moves(progress, where, inventory);
  }

  private void moves(Progress progress, Phrase where, Inventory inventory) {
    long plants = progress.made().stream().map(MoveMade::plantId).distinct().count();
    note("PL-444", where, progress.made().size(), plants);
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
    List<String> ticked = behind.stream().filter(progress.ticked()::contains).toList();
    if (!ticked.isEmpty()) {
      warning("PL-445.ticked", where, behind, ticked);
    } else if (!behind.isEmpty()) {
      warning("PL-445", where, behind);
    }
  }

  List<Diagnostic> sorted() {
    return notes.stream().sorted(Diagnostic.ORDER).toList();
  }

  private void note(String key, Phrase where, Object... arguments) {
    notes.add(new Diagnostic(Severity.NOTE, key, where, List.of(arguments)));
  }

  private void warning(String key, Phrase where, Object... arguments) {
    notes.add(new Diagnostic(Severity.WARNING, key, where, List.of(arguments)));
  }
}
