package org.hibernacle.planning.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.Lifting;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Stay;

/**
 * Whether a plan can be carried out: days, wishes, floor, hands, counted from the stays alone by
 * the words of docs/planning.md.
 */
final class CanBeDone {
  private static final int MINUTES_A_POT = 5;
  private static final int MINUTES_FOR_TWO = 20;
  private static final double CRUMB_M2 = 1e-6;

  private final SeasonPlan plan;
  private final Settings settings;
  private final List<String> complaints = new ArrayList<>();

  private CanBeDone(SeasonPlan plan) {
    this.plan = plan;
    this.settings = plan.inventory().settings();
  }

  static List<String> complaints(SeasonPlan plan) {
    CanBeDone judge = new CanBeDone(plan);
    plan.plants().forEach(judge::plant);
    judge.room();
    judge.hands();
    return judge.complaints;
  }

  private void expect(boolean holds, String id, Object what) {
    if (!holds) {
      complaints.add(id + ": " + what);
    }
  }

  private void plant(PlantPlan one) {
    Plant plant = one.plant();
    String id = plant.id();
    List<Stay> stays = one.stays();
    expect(stays.get(0).fromInclusive().equals(plan.season().start()), id, "starts late");
    expect(stays.get(0).place().name().equals(plant.home()), id, "does not start at home");
    Stay last = stays.get(stays.size() - 1);
    expect(last.toExclusive().equals(plan.season().endExclusive()), id, "ends early");
    expect(last.place().name().equals(plant.home()), id, "does not end at home");
    expect(one.moves().size() == stays.size() - 1, id, "moves do not join stays");
    expect(one.moves().size() <= 4, id, "is carried more than four times");
    for (int i = 0; i < one.moves().size(); i++) {
      Move move = one.moves().get(i);
      expect(stays.get(i).place().equals(move.from()), id, move + " starts elsewhere");
      expect(stays.get(i).toExclusive().equals(move.date()), id, move + " is not on its day");
      expect(stays.get(i + 1).fromInclusive().equals(move.date()), id, move + " leaves a gap");
      expect(stays.get(i + 1).place().equals(move.to()), id, move + " ends elsewhere");
      boolean rested = i == 0 || !move.date().isBefore(one.moves().get(i - 1).date().plusDays(14));
      expect(rested, id, move + " within 14 nights of the move before");
      move(plant, move);
    }
    boolean told = one.nightTriggers().stream().allMatch(t -> Double.isFinite(t.stationC()));
    expect(told, id, "has a night without a forecast to act at");
    boolean midwinter = one.nightTrigger(plan.season().midwinter()).isPresent();
    expect(midwinter, id, "has no forecast to act at in midwinter");
    stays.forEach(stay -> expect(suits(plant, stay.place()), id, "may not stand in " + stay));
  }

  private void move(Plant plant, Move move) {
    LocalDate day = move.date();
    expect(settings.movingDays().contains(day.getDayOfWeek()), plant.id(), "no moving day " + day);
    boolean away =
        settings.away().stream()
            .anyMatch(s -> !day.isBefore(s.fromInclusive()) && day.isBefore(s.toExclusive()));
    expect(!away, plant.id(), "nobody there on " + day);
    expect(plant.notBefore().filter(day::isBefore).isEmpty(), plant.id(), day + " is too early");
    boolean leaves = move.from().name().equals(plant.home());
    boolean late = plant.notAfter().filter(day::isAfter).isPresent();
    expect(!leaves || !late, plant.id(), day + " is too late");
    LocalDate fortnightPastMidwinter =
        plan.season().sameDay(LocalDate.of(2001, settings.southern() ? 7 : 1, 29));
    boolean home = move.to().name().equals(plant.home());
    expect(!home || !day.isBefore(fortnightPastMidwinter), plant.id(), "is home early, " + day);
  }

  private static boolean suits(Plant plant, Place place) {
    if (place.name().equals(plant.home())) {
      return true;
    }
    Optional<String> wish = plant.stayIn();
    if (place.wrapOf().isPresent()) {
      return place.wrapOf().get().equals(plant.home());
    }
    if (wish.isPresent()) {
      return place.name().equals(wish.get());
    }
    return switch (place.kind()) {
      case BENCH -> false;
      case GROUND -> true;
      default -> suitsUnderRoof(plant, place);
    };
  }

  private static boolean suitsUnderRoof(Plant plant, Place place) {
    boolean fits = plant.heightCm().orElse(0) <= place.clearHeightCm().orElse(Double.MAX_VALUE);
    boolean leafless = plant.species().foliage() == Foliage.DECIDUOUS;
    Light wanted = plant.species().lightInStore();
    boolean light =
        switch (place.light()) {
          case DARK -> wanted == Light.DARK && leafless;
          case LOW -> wanted != Light.BRIGHT;
          case BRIGHT -> true;
        };
    boolean cool = place.kind() != PlaceKind.WARM_ROOM || !plant.species().group().restsCold();
    return fits && light && cool;
  }

  /** Floor on every evening, nights back in spring included. */
  private void room() {
    for (Place place : plan.inventory().places()) {
      double floorM2 = place.floorM2().orElse(Double.POSITIVE_INFINITY);
      LocalDate day = plan.season().start();
      for (; day.isBefore(plan.season().endExclusive()); day = day.plusDays(1)) {
        LocalDate on = day;
        double takenM2 =
            plan.plants().stream()
                .filter(p -> isGuest(p, place, on) || isBackForTheNight(p, place, on))
                .mapToDouble(p -> floorM2(p.plant()))
                .sum();
        expect(takenM2 <= floorM2 + CRUMB_M2, place.name(), takenM2 + " m2 taken on " + on);
      }
    }
  }

  private static boolean isGuest(PlantPlan one, Place place, LocalDate day) {
    return !place.name().equals(one.plant().home())
        && one.stays().stream()
            .anyMatch(
                s ->
                    s.place().equals(place)
                        && !day.isBefore(s.fromInclusive())
                        && day.isBefore(s.toExclusive()));
  }

  private boolean isBackForTheNight(PlantPlan one, Place place, LocalDate day) {
    return one.shuttle()
        .filter(s -> s.refuge().equals(place))
        .filter(s -> s.nights().stream().anyMatch(n -> plan.season().sameDay(n.day()).equals(day)))
        .isPresent();
  }

  private static double floorM2(Plant plant) {
    double pot = plant.container().lengthCm() * plant.container().widthCm();
    double crown = plant.spreadCm().orElse(0) * plant.spreadCm().orElse(0);
    return plant.count() * Math.max(pot, crown) / 10_000;
  }

  private void hands() {
    Map<LocalDate, List<PlantPlan>> carried = new TreeMap<>();
    plan.movesByDate()
        .forEach(
            m -> carried.computeIfAbsent(m.move().date(), d -> new ArrayList<>()).add(m.plan()));
    carried.forEach(
        (day, plants) -> {
          int pots = plants.stream().mapToInt(p -> p.plant().count()).sum();
          int minutes = plants.stream().mapToInt(CanBeDone::minutes).sum();
          boolean most =
              pots <= settings.plantsPerMovingDay().orElse(pots)
                  && minutes <= settings.minutesPerMovingDay().orElse(minutes);
          expect(most || plants.size() == 1, "work", pots + " pots, " + minutes + " min on " + day);
        });
  }

  private static int minutes(PlantPlan one) {
    boolean forTwo = one.estimatedMassKg() > Lifting.aloneKg(one.plant().container());
    return one.plant().count() * (forTwo ? MINUTES_FOR_TWO : MINUTES_A_POT);
  }
}
