package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.hibernacle.thermal.BallTrace;
import org.hibernacle.thermal.ThermalClass;

/** Works out how full and how cold each place gets, and the traces for the chart. */
final class PlaceForecasts {
  private static final double WARM_C = 5;

  private final WintersOnFile winters;
  private final List<PlantPlan> plans;

  PlaceForecasts(WintersOnFile winters, List<PlantPlan> plans) {
    this.winters = winters;
    this.plans = plans;
  }

  List<PlaceForecast> forecasts() {
    List<PlaceForecast> forecasts = new ArrayList<>();
    for (int p = 0; p < winters.places().size(); p++) {
      if (winters.places().get(p).wrapOf().isEmpty()) {
        forecasts.add(forecast(p));
      }
    }
    return forecasts;
  }

  private PlaceForecast forecast(int p) {
    Place place = winters.places().get(p);
    double coldest = Double.POSITIVE_INFINITY;
    int coldestWinter = 0;
    int coldestHour = 0;
    double warmest = Double.NEGATIVE_INFINITY;
    LocalDate warmestDay = winters.season().start();
    List<Integer> warmDays = new ArrayList<>();
    for (int w = 0; w < winters.count(); w++) {
      double[] airC = winters.simulator(w).climate(p).airC();
      for (int hour = 0; hour < airC.length; hour++) {
        if (airC[hour] < coldest) {
          coldest = airC[hour];
          coldestHour = hour;
          coldestWinter = w;
        }
      }
      Winter winter = winters.winter(w);
      for (int hour = 24 * winterFrom(winter); hour < 24 * winterTo(winter); hour++) {
        if (airC[hour] > warmest) {
          warmest = airC[hour];
          warmestDay = winters.measuredOn(w, hour / 24);
        }
      }
      warmDays.add(warmDays(winter, airC));
    }
    warmDays.sort(null);
    return new PlaceForecast(
        place,
        weeks(place),
        coldest,
        winters.winter(coldestWinter).season(),
        winters.measuredOn(coldestWinter, coldestHour / 24),
        warmDays.get(warmDays.size() / 2),
        winters.modelError(p),
        warmest,
        warmestDay);
  }

  private static int warmDays(Winter winter, double[] airC) {
    int warm = 0;
    for (int day = winterFrom(winter); day < winterTo(winter); day++) {
      double sum = 0;
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        sum += airC[hour];
      }
      warm += sum / 24 > WARM_C ? 1 : 0;
    }
    return warm;
  }

  /** Index of the first day of the five winter months. */
  private static int winterFrom(Winter winter) {
    return winter.index(winter.season().coreStart().plusMonths(1));
  }

  /** Index of the day after the last of them. */
  private static int winterTo(Winter winter) {
    LocalDate end = winter.season().coreEndExclusive().minusMonths(1);
    return Math.min(winter.days(), winter.index(end));
  }

  private List<PlaceForecast.Week> weeks(Place place) {
    List<PlaceForecast.Week> weeks = new ArrayList<>();
    Season season = winters.season();
    List<PlantPlan> guests = plans.stream().filter(plan -> everStands(plan, place)).toList();
    for (LocalDate start = season.start();
        start.isBefore(season.endExclusive());
        start = start.plusDays(7)) {
      weeks.add(fullestDay(place, guests, start));
    }
    return weeks;
  }

  private static PlaceForecast.Week fullestDay(
      Place place, List<PlantPlan> guests, LocalDate start) {
    PlaceForecast.Week fullest = new PlaceForecast.Week(start, 0, 0, List.of());
    for (int i = 0; i < 7; i++) {
      LocalDate day = start.plusDays(i);
      int pots = 0;
      double usedM2 = 0;
      List<String> ids = new ArrayList<>();
      for (PlantPlan plan : guests) {
        if (stands(plan, place, day)) {
          pots += plan.plant().count();
          usedM2 += plan.plant().floorM2();
          ids.add(plan.plant().id());
        }
      }
      if (usedM2 > fullest.usedM2()) {
        ids.sort(null);
        fullest = new PlaceForecast.Week(start, pots, usedM2, ids);
      }
    }
    return fullest;
  }

  private static boolean everStands(PlantPlan plan, Place place) {
    return plan.stays().stream().anyMatch(s -> s.place().floorOf().equals(place.name()));
  }

  private static boolean stands(PlantPlan plan, Place place, LocalDate day) {
    return plan.stays().stream()
        .anyMatch(
            s ->
                s.place().floorOf().equals(place.name())
                    && !day.isBefore(s.fromInclusive())
                    && day.isBefore(s.toExclusive()));
  }

  /** How a reference pot fares in each place in the winter with the coldest night. */
  TraceTable traces(ThermalClass pot, double potL) {
    int coldest = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (int w = 0; w < winters.count(); w++) {
      for (double t : winters.winter(w).airC()) {
        if (t < lowest) {
          lowest = t;
          coldest = w;
        }
      }
    }
    Winter winter = winters.winter(coldest);
    List<BallTrace> traces = new ArrayList<>();
    List<String> names =
        winters.places().stream().filter(p -> p.wrapOf().isEmpty()).map(Place::name).toList();
    for (int p = 0; p < names.size(); p++) {
      traces.add(winters.standing(pot, coldest, p));
    }
    List<TraceTable.Day> days = new ArrayList<>();
    for (int n = 0; n < winter.nights(); n++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int hour = 24 * n + 12; hour < 24 * n + 36; hour++) {
        low = Math.min(low, winter.airC()[hour]);
        high = Math.max(high, winter.airC()[hour]);
      }
      List<Double> balls = new ArrayList<>();
      for (BallTrace trace : traces) {
        balls.add(trace.ballMinC()[n]);
      }
      days.add(new TraceTable.Day(winter.first().plusDays(n), low, high, balls));
    }
    return new TraceTable(winter.season(), potL, names, days);
  }
}
