package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Group;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.KnownWinter;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Violation;
import org.hibernacle.review.Cause;
import org.hibernacle.review.Chill;
import org.hibernacle.review.Cold;
import org.hibernacle.review.Correction;
import org.hibernacle.review.DoseResponse;
import org.hibernacle.review.Exposure;
import org.hibernacle.review.FrozenSpell;
import org.hibernacle.review.MoveCompared;
import org.hibernacle.review.NewGrowth;
import org.hibernacle.review.PlaceReview;
import org.hibernacle.review.PlanVerdict;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.Prevention;
import org.hibernacle.review.Proportion;
import org.hibernacle.review.Punctuality;
import org.hibernacle.review.ScoredCause;
import org.hibernacle.review.SeasonReview;
import org.hibernacle.review.StoreWarmth;
import org.hibernacle.review.Survival;
import org.hibernacle.review.WinterCompared;
import org.hibernacle.thermal.ModelError;

/**
 * A review made up by hand, not computed, that holds every cause, verdict and kind of correction
 * once at least. Its numbers are invented and do not go together.
 */
public final class ReviewFixtures {
  private static final Season SEASON = Fixtures.SEASON;
  private static final Place BENCH = Fixtures.BENCH;
  private static final Place SHED = Fixtures.SHED;

  private ReviewFixtures() {}

  /** The whole of it, in metric units and British English. */
  public static SeasonReview review() {
    return review(Fixtures.settings(Settings.Units.METRIC, Locale.UK));
  }

  /** The same under other settings. */
  public static SeasonReview review(Settings settings) {
    Inventory inventory = Fixtures.plan(settings).inventory();
    return of(inventory, winter(3, true), plants(inventory), corrections());
  }

  /** A winter without any harm, nothing to change, and nothing known of others. */
  public static SeasonReview quiet(Settings settings) {
    Inventory inventory = Fixtures.plan(settings).inventory();
    List<PlantReview> plants =
        List.of(plant(inventory, 0, Outcome.NO_DAMAGE, List.of(), PlanVerdict.HELD));
    SeasonReview full = of(inventory, winter(1, false), plants, List.of());
    return new SeasonReview(
        full.season(),
        full.inventory(),
        full.winter(),
        plants,
        full.places().subList(0, 1),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /** The same review of the hardest winter of all. */
  public static SeasonReview record() {
    Inventory inventory =
        Fixtures.plan(Fixtures.settings(Settings.Units.METRIC, Locale.UK)).inventory();
    return of(inventory, winter(1, true), plants(inventory), corrections());
  }

  private static SeasonReview of(
      Inventory inventory,
      WinterCompared winter,
      List<PlantReview> plants,
      List<Correction> corrections) {
    return new SeasonReview(
        SEASON,
        inventory,
        winter,
        plants,
        places(),
        punctuality(),
        survival(),
        doses(),
        corrections,
        List.of(
            new Diagnostic(
                Diagnostic.Severity.NOTE, "RV-504", Phrase.of("where.log"), List.of(1))));
  }

  private static WinterCompared winter(int rank, boolean known) {
    List<KnownWinter> winters =
        known
            ? List.of(
                new KnownWinter(new Season(2020, false), -17.6, LocalDate.of(2021, 2, 10)),
                new KnownWinter(new Season(2025, false), -16.2, LocalDate.of(2026, 1, 5)),
                new KnownWinter(new Season(2019, false), -8.0, LocalDate.of(2020, 1, 21)))
            : List.of();
    return new WinterCompared(Fixtures.winters().get(5), winters, rank);
  }

  private static List<PlantReview> plants(Inventory inventory) {
    List<PlantReview> plants = new ArrayList<>();
    List<Outcome> harms = List.of(Outcome.DEAD, Outcome.BRANCHES, Outcome.TIPS);
    int n = 0;
    for (Cause cause : Cause.values()) {
      boolean clear = n % 3 != 1;
      ScoredCause first =
          new ScoredCause(cause, 0.9, clear ? 0.8 : 0.5, Optional.of(LocalDate.of(2027, 1, 20)));
      ScoredCause second =
          new ScoredCause(
              cause == Cause.NOT_TEMPERATURE ? Cause.CHILLED : Cause.NOT_TEMPERATURE,
              0.2,
              clear ? 0.2 : 0.4,
              Optional.empty());
      plants.add(
          plant(
              inventory,
              n,
              harms.get(n == 4 ? 0 : n % 3),
              List.of(first, second),
              PlanVerdict.values()[n % 3]));
      n++;
    }
    plants.add(plant(inventory, n++, Outcome.GONE, List.of(), PlanVerdict.HELD));
    plants.add(plant(inventory, n, Outcome.NO_DAMAGE, List.of(), PlanVerdict.MARGIN_USED));
    return plants;
  }

  private static PlantReview plant(
      Inventory inventory, int n, Outcome outcome, List<ScoredCause> causes, PlanVerdict verdict) {
    Plant plant = inventory.plants().get(n);
    Prevention prevention = Prevention.values()[n % 4];
    boolean asPlanned = prevention == Prevention.LIVED_AS_PLANNED;
    List<Stay> planned = stays(LocalDate.of(2026, 11, 14));
    return new PlantReview(
        plant,
        outcome,
        outcome == Outcome.NO_DAMAGE && n > 0,
        outcome.harmed() ? Optional.of(LocalDate.of(2027, 3, 6)) : Optional.empty(),
        n == 2 ? "=pale leaves" : "",
        asPlanned ? planned : stays(LocalDate.of(2026, 12, 5)),
        planned,
        moves(n),
        exposure(n, List.of()),
        exposure(n + 3, broken(n, verdict)),
        verdict,
        causes,
        outcome.harmed() ? Optional.of(prevention) : Optional.empty());
  }

  private static List<Violation> broken(int n, PlanVerdict verdict) {
    return verdict == PlanVerdict.FAILED && n < 6
        ? List.of(
            new Violation(
                Rule.ROOT_BALL, SEASON, LocalDate.of(2027, 1, 20), "Bench", -9.5, -8.0, 1.5))
        : List.of();
  }

  private static List<Stay> stays(LocalDate in) {
    return List.of(
        new Stay(BENCH, SEASON.start(), in),
        new Stay(SHED, in, LocalDate.of(2027, 3, 20)),
        new Stay(BENCH, LocalDate.of(2027, 3, 20), SEASON.endExclusive()));
  }

  private static List<MoveCompared> moves(int n) {
    Optional<LocalDate> in = Optional.of(LocalDate.of(2026, 11, 14));
    Optional<LocalDate> back = Optional.of(LocalDate.of(2027, 3, 20));
    Optional<LocalDate> late = Optional.of(LocalDate.of(2026, 12, 5));
    Optional<LocalDate> early = Optional.of(LocalDate.of(2027, 3, 6));
    return switch (n % 3) {
      case 0 ->
          List.of(
              new MoveCompared(Move.Kind.MOVE_IN, in, late, false, true),
              new MoveCompared(Move.Kind.RETURN, back, back, true, false));
      case 1 ->
          List.of(
              new MoveCompared(Move.Kind.MOVE_IN, in, Optional.empty(), false, true),
              new MoveCompared(Move.Kind.MOVE_DOWN, Optional.empty(), late, false, false));
      default -> List.of(new MoveCompared(Move.Kind.RETURN, back, early, false, true));
    };
  }

  private static Exposure exposure(int n, List<Violation> broken) {
    LocalDate day = LocalDate.of(2027, 1, 20);
    double marginK = List.of(-1.5, 0.0, 2.25).get(n % 3);
    Cold cold = new Cold(day, "Bench", -8 + marginK, -8, -9, 0.9, n, 6);
    boolean woke = n % 2 == 0;
    return new Exposure(
        SEASON.endExclusive(),
        cold,
        Optional.of(cold),
        Optional.of(new Cold(day, "Bench", -18 + marginK, -18, -20, 0.9, n, 6)),
        Optional.of(new Cold(day, "Bench", -18 + marginK, -18, -20, 0.9, n, 6)),
        Optional.of(new Cold(day.minusMonths(2), "Bench", -4.5, -4, -9, 0.3, 2, 9)),
        Optional.of(new FrozenSpell(day.minusDays(30), 41, "North bed", 1.4, 41)),
        Optional.of(
            new StoreWarmth(
                12,
                18.5,
                8.2,
                day,
                "Shed",
                woke ? 4 : 0,
                n == 5 ? Optional.of(LocalDate.of(2027, 2, 19)) : Optional.empty(),
                OptionalInt.of(12))),
        Optional.of(
            new NewGrowth(
                LocalDate.of(2027, 3, 2), woke, LocalDate.of(2027, 3, 9), "Bench", -3, -1, 2)),
        Optional.of(new Chill(LocalDate.of(2026, 10, 20), "Bench", 35, 1.5, 8)),
        n == 7 ? Optional.of(day) : Optional.empty(),
        broken);
  }

  private static List<PlaceReview> places() {
    ModelError error = new ModelError(1, 2160, -1.7, 1.9, -3.9, LocalDate.of(2027, 1, 22));
    return List.of(
        new PlaceReview(BENCH, -18.6, LocalDate.of(2027, 1, 20), 2, 0, Optional.empty()),
        new PlaceReview(SHED, -4.04, LocalDate.of(2027, 1, 21), 9, 9, Optional.of(error)),
        new PlaceReview(
            BENCH.wrapped("Bench" + Place.WRAPPED, Place.Cover.FLEECE, 0),
            -18.6,
            LocalDate.of(2027, 1, 20),
            0,
            0,
            Optional.empty()));
  }

  private static List<Punctuality> punctuality() {
    return List.of(
        new Punctuality(Move.Kind.MOVE_DOWN, 0, 0, 0, 4, 0, 0, Optional.empty()),
        new Punctuality(Move.Kind.MOVE_IN, 8, 4, 4, 0, 21, 21, Optional.of("P-07")));
  }

  private static List<Survival> survival() {
    List<Survival> all = new ArrayList<>();
    all.add(survival(Survival.By.ALL, ""));
    all.add(survival(Survival.By.SPECIES, "Larix decidua"));
    Stream.of(Group.values()).forEach(g -> all.add(survival(Survival.By.GROUP, g.name())));
    all.add(survival(Survival.By.PLACE, "Shed"));
    Stream.of(Survival.PotSize.values())
        .forEach(s -> all.add(survival(Survival.By.POT_SIZE, s.name())));
    Stream.of(Survival.RootWork.values())
        .forEach(r -> all.add(survival(Survival.By.ROOT_WORK, r.name())));
    return all;
  }

  private static Survival survival(Survival.By by, String key) {
    boolean one = by == Survival.By.SPECIES;
    return new Survival(
        by,
        key,
        one ? Proportion.of(1, 1) : Proportion.of(7, 10),
        one ? Proportion.of(1, 1) : Proportion.of(1, 10),
        one ? 1 : 12,
        one ? 0 : 4,
        one ? 0 : 1,
        one ? OptionalDouble.empty() : OptionalDouble.of(415));
  }

  private static List<DoseResponse> doses() {
    List<DoseResponse.Point> points =
        List.of(
            new DoseResponse.Point("P-02", -11.25, true),
            new DoseResponse.Point("P-01", -8, false));
    List<DoseResponse> doses = new ArrayList<>();
    doses.add(
        new DoseResponse("Acer palmatum", points, new DoseResponse.Lt50(-9.6, 0.8, -12.1, -8.4)));
    Arrays.stream(DoseResponse.Why.values())
        .forEach(
            why ->
                doses.add(
                    new DoseResponse(
                        "Quercus " + why.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        why == DoseResponse.Why.NONE_HARMED ? points.subList(1, 2) : points,
                        new DoseResponse.Bounds(why, 1, -8, 1, -11.25))));
    return doses;
  }

  private static List<Correction> corrections() {
    LocalDate planned = LocalDate.of(2026, 11, 7);
    return List.of(
        new Correction.RootLimit("Larix decidua", -10, -11, -12.5, 9, 3, 2, -11.5, -9.5),
        new Correction.RootLimit("Pinus thunbergii", -9, -9.6, -9.6, 4, 1, 0, -9.8, Double.NaN),
        new Correction.RootLimit("Acer sp.", -7, -6.5, -6.5, 4, 0, 1, Double.NaN, -6.2),
        new Correction.PlaceWarmth("Bench", 0, -0.8, 0.8, 900),
        new Correction.PlaceWarmth("Shed", 3, 4.7, -1.7, 2160),
        new Correction.LaterMove(
            "P-01", Move.Kind.MOVE_DOWN, planned, planned.plusDays(7), planned.plusDays(20), 3),
        new Correction.LaterMove(
            "P-03", Move.Kind.MOVE_DOWN, planned, planned.plusDays(7), planned.plusDays(9), 3),
        new Correction.LaterMove(
            "P-02", Move.Kind.MOVE_IN, planned, planned.plusDays(7), SEASON.endExclusive(), 3));
  }
}
