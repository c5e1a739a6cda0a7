package org.hibernacle.report;

import static org.hibernacle.report.Fixtures.BED;
import static org.hibernacle.report.Fixtures.BENCH;
import static org.hibernacle.report.Fixtures.GLASS;
import static org.hibernacle.report.Fixtures.HALL;
import static org.hibernacle.report.Fixtures.ROOM;
import static org.hibernacle.report.Fixtures.SEASON;
import static org.hibernacle.report.Fixtures.SHED;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.model.Container;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Group;
import org.hibernacle.model.HardinessZone;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.RootKill;
import org.hibernacle.model.Species.Toxicity;
import org.hibernacle.planning.Displaced;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Tightest;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Shuttle;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Violation;

/** The plants of {@link Fixtures}, each there for the reason its line gives. */
final class FixturePlants {
  private static final Season COLD = new Season(2024, false);
  private static final LocalDate COLD_DAY = LocalDate.of(2025, 1, 22);

  private FixturePlants() {}

  static List<PlantPlan> all() {
    List<PlantPlan> all = new ArrayList<>();
    // Hardy: no move at all.
    all.add(new Row("P-01", "", "Larix decidua").stays(BENCH, -7.2));
    // Down to the ground and back; a label that a spreadsheet might take for a formula.
    all.add(
        new Row("P-02", "=Old pine", "Pinus thunbergii")
            .published()
            .move(Move.Kind.MOVE_DOWN, 2026, 11, 14, BED, violation(Rule.ROOT_BALL, BENCH, -6.1))
            .move(Move.Kind.RETURN, 2027, 3, 13, BENCH, violation(Rule.ROOT_BALL, BENCH, -5.3))
            .moves());
    // All four kinds of move; heavy, but not too heavy for one.
    all.add(
        new Row("P-03", "Small trident", "Acer buergerianum")
            .pot(18, true)
            .move(Move.Kind.MOVE_DOWN, 2026, 10, 24, BED, violation(Rule.ROOT_BALL, BENCH, -2.4))
            .move(Move.Kind.MOVE_IN, 2026, 12, 5, SHED, violation(Rule.SHOOTS, BED, -14))
            .move(Move.Kind.STEP_OUT, 2027, 3, 6, BED, violation(Rule.BALL_FROZEN, BED, -1))
            .move(Move.Kind.RETURN, 2027, 4, 3, BENCH, violation(Rule.WOKEN_GROWTH, BENCH, -1.4))
            .moves());
    // Never hardens, poisonous.
    all.add(
        new Row("P-04", "", "Ficus microcarpa")
            .toxic(Toxicity.YES)
            .move(Move.Kind.MOVE_IN, 2026, 9, 19, HALL, violation(Rule.CHILLING, BENCH, 9.5))
            .move(Move.Kind.RETURN, 2027, 6, 5, BENCH, violation(Rule.CHILLING, BENCH, 10.5))
            .moves());
    // No place is good enough: bare roots too cold in three winters.
    all.add(
        new Row("P-05", "", "Punica granatum")
            .worth(240)
            .move(Move.Kind.MOVE_DOWN, 2026, 11, 7, BED, violation(Rule.ROOT_BALL, BENCH, -5))
            .move(Move.Kind.RETURN, 2027, 4, 10, BENCH, on(2025, 3, 20, Rule.ROOT_BALL, -3))
            .unprotected(
                violation(Rule.ROOT_BALL, BED, -7.5),
                in(2018, Rule.ROOT_BALL, BED, -5.5),
                in(2021, Rule.ROOT_BALL, BED, -6)));
    // Kept too warm.
    all.add(
        new Row("P-06", "", "Juniperus chinensis")
            .toxic(Toxicity.YES)
            .moveUnasked(Move.Kind.MOVE_IN, 2026, 11, 21, SHED)
            .moveUnasked(Move.Kind.STEP_OUT, 2027, 3, 6, BED)
            .moveUnasked(Move.Kind.RETURN, 2027, 3, 20, BENCH)
            .unprotected(in(2019, Rule.TOO_WARM_AT_REST, SHED, 5.03)));
    // Wakes where it is dark.
    all.add(
        new Row("P-07", "", "Prunus mume")
            .displaced(Displaced.Kind.ROOM, GLASS, LocalDate.of(2026, 11, 28))
            .moveUnasked(Move.Kind.MOVE_IN, 2026, 11, 21, SHED)
            .moveUnasked(Move.Kind.RETURN, 2027, 4, 3, BENCH)
            .unprotected(in(2019, Rule.WAKES_IN_THE_DARK, SHED, 6)));
    // A pot that frost cracks, too heavy for one.
    all.add(
        new Row("P-08", "", "Quercus suber")
            .pot(45, false)
            .move(Move.Kind.MOVE_IN, 2026, 10, 31, GLASS, violation(Rule.BALL_FROZEN, BENCH, -0.2))
            .move(Move.Kind.RETURN, 2027, 4, 17, BENCH, violation(Rule.BALL_FROZEN, BENCH, -0.01))
            .moves());
    // A figure of the keeper's own.
    all.add(
        new Row("P-09", "Camellia by the door", "Camellia japonica")
            .ownLimit(-4)
            .toxic(Toxicity.NO)
            .move(Move.Kind.MOVE_IN, 2026, 11, 28, GLASS, violation(Rule.ROOT_BALL, BENCH, -4.6))
            .move(Move.Kind.RETURN, 2027, 3, 20, BENCH, on(2025, 4, 25, Rule.SHOOTS, -6))
            .moves());
    // One winter in ten fails, which the keeper accepts.
    all.add(
        new Row("P-10", "", "Acer palmatum")
            .move(Move.Kind.MOVE_DOWN, 2026, 11, 14, BED, on(2025, 1, 21, Rule.ROOT_BALL, -6.6))
            .move(Move.Kind.RETURN, 2027, 3, 20, BENCH, violation(Rule.ROOT_BALL, BENCH, -2.02))
            .verdict(Verdict.MOVES, List.of(violation(Rule.ROOT_BALL, BED, -6.4))));
    // Home before it wakes, back for frosty nights.
    all.add(
        new Row("P-14", "", "Carpinus betulus")
            .move(Move.Kind.MOVE_DOWN, 2026, 11, 7, BED, on(2025, 1, 21, Rule.ROOT_BALL, -6.6))
            .moveUnasked(Move.Kind.RETURN, 2027, 4, 10, BENCH)
            .shuttle(
                BED,
                LocalDate.of(2027, 4, 10),
                LocalDate.of(2027, 4, 23),
                LocalDate.of(2027, 4, 12))
            .moves());
    // Nobody carries it.
    Place wrapped = BENCH.wrapped("Bench, wrapped", Place.Cover.FLEECE, 0);
    all.add(
        new Row("P-15", "The tub", "Quercus ilex")
            .pot(80, true)
            .move(Move.Kind.WRAP, 2026, 11, 28, wrapped, violation(Rule.ROOT_BALL, BENCH, -7.4))
            .move(Move.Kind.UNWRAP, 2027, 2, 20, BENCH, on(2025, 2, 14, Rule.ROOT_BALL, -5.4))
            .moves());
    // Lives indoors.
    all.add(new Row("P-11", "+ Aunt", "Ficus retusa").stays(HALL, 15));
    // Wished into a room; six in one row.
    all.add(
        new Row("P-12", "", "Olea europaea")
            .count(6)
            .displaced(Displaced.Kind.HANDS, ROOM, LocalDate.of(2026, 11, 21))
            .wish(ROOM)
            .moveUnasked(Move.Kind.MOVE_IN, 2026, 11, 14, ROOM)
            .moveUnasked(Move.Kind.RETURN, 2027, 1, 30, BENCH)
            .moves());
    // Still in leaf in a dark store.
    all.add(
        new Row("P-13", "", "Ulmus parvifolia")
            .moveUnasked(Move.Kind.MOVE_IN, 2026, 10, 24, SHED)
            .moveUnasked(Move.Kind.RETURN, 2027, 4, 3, BENCH)
            .unprotected(in(2020, Rule.TOO_DARK, SHED, 4)));
    return all;
  }

  private static Violation violation(Rule rule, Place place, double foundC) {
    double limitC = rule == Rule.BALL_FROZEN ? 0 : rule == Rule.CHILLING ? 12 : -4;
    return new Violation(rule, COLD, COLD_DAY, place.name(), foundC, limitC, Math.abs(foundC) - 2);
  }

  private static Violation on(int year, int month, int day, Rule rule, double foundC) {
    LocalDate date = LocalDate.of(year, month, day);
    return new Violation(rule, COLD, date, BENCH.name(), foundC, -4, Math.abs(foundC) - 2);
  }

  private static Violation in(int year, Rule rule, Place place, double foundC) {
    Season winter = new Season(year, false);
    LocalDate day = LocalDate.of(year, 12, 8);
    return new Violation(rule, winter, day, place.name(), foundC, 5, 1.25);
  }

  /** One plant and its plan, from its id up. */
  private static final class Row {
    private final String id;
    private final String label;
    private final String taxon;
    private final List<Move> moves = new ArrayList<>();
    private String basis = "rule:zone-fit";
    private Optional<RootKill> kill = Optional.empty();
    private Toxicity toxic = Toxicity.UNKNOWN;
    private OptionalDouble own = OptionalDouble.empty();
    private OptionalDouble value = OptionalDouble.empty();
    private Optional<String> wish = Optional.empty();
    private Optional<Displaced> displaced = Optional.empty();
    private Optional<Shuttle> shuttle = Optional.empty();
    private double volumeL = 8;
    private boolean frostProof = true;
    private int count = 1;

    Row(String id, String label, String taxon) {
      this.id = id;
      this.label = label;
      this.taxon = taxon;
    }

    Row published() {
      basis = "published";
      kill = Optional.of(new RootKill(-8, "whole", RootKill.Relation.LT50, "studer1978", true));
      return this;
    }

    Row toxic(Toxicity is) {
      toxic = is;
      return this;
    }

    Row ownLimit(double limitC) {
      own = OptionalDouble.of(limitC);
      return this;
    }

    Row worth(double money) {
      value = OptionalDouble.of(money);
      return this;
    }

    Row wish(Place place) {
      wish = Optional.of(place.name());
      return this;
    }

    Row pot(double litres, boolean proof) {
      volumeL = litres;
      frostProof = proof;
      return this;
    }

    Row displaced(Displaced.Kind kind, Place place, LocalDate day) {
      displaced = Optional.of(new Displaced(kind, place, day));
      return this;
    }

    Row shuttle(Place refuge, LocalDate from, LocalDate to, LocalDate waking) {
      List<Shuttle.Night> nights =
          List.of(
              new Shuttle.Night(new Season(2016, false), LocalDate.of(2017, 4, 19)),
              new Shuttle.Night(new Season(2016, false), LocalDate.of(2017, 4, 20)),
              new Shuttle.Night(new Season(2023, false), LocalDate.of(2024, 4, 23)));
      shuttle = Optional.of(new Shuttle(refuge, from, to, waking, nights, -1.4));
      return this;
    }

    Row count(int plants) {
      count = plants;
      return this;
    }

    /** A reason of the coldest day is taken as one that the next moving day would have met. */
    Row move(Move.Kind kind, int year, int month, int day, Place to, Violation v) {
      LocalDate date = LocalDate.of(year, month, day);
      boolean back = kind == Move.Kind.STEP_OUT || kind == Move.Kind.RETURN;
      LocalDate met = COLD.sameDay(date.plusDays(back ? -5 : 1));
      LocalDate when = v.day().equals(COLD_DAY) ? met : v.day();
      return add(
          kind,
          date,
          to,
          Optional.of(
              new Violation(
                  v.rule(), COLD, when, v.place(), v.foundC(), v.limitC(), v.deficitK())));
    }

    Row moveUnasked(Move.Kind kind, int year, int month, int day, Place to) {
      return add(kind, LocalDate.of(year, month, day), to, Optional.empty());
    }

    private Row add(Move.Kind kind, LocalDate date, Place to, Optional<Violation> because) {
      Place from = moves.isEmpty() ? BENCH : moves.get(moves.size() - 1).to();
      int way = kind.homeward() ? -1 : 1;
      List<LocalDate> ownDays =
          List.of(
              date, date.plusDays(way * 9L), date.plusDays(way * 16L), date.plusDays(way * 40L));
      moves.add(new Move(kind, date, from, to, because, ownDays));
      return this;
    }

    PlantPlan stays(Place home, double ballC) {
      Stay stay = new Stay(home, SEASON.start(), SEASON.endExclusive());
      Tightest tightest = new Tightest(COLD, COLD_DAY, home.name(), ballC, -11);
      return new PlantPlan(
          plant(home),
          List.of(stay),
          List.of(),
          Verdict.STAYS_HOME,
          tightest,
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(-16.1),
          7.6);
    }

    PlantPlan moves() {
      return verdict(Verdict.MOVES, List.of());
    }

    PlantPlan unprotected(Violation... broken) {
      return verdict(Verdict.UNPROTECTED, List.of(broken));
    }

    PlantPlan verdict(Verdict verdict, List<Violation> broken) {
      List<Stay> stays = new ArrayList<>();
      LocalDate from = SEASON.start();
      Place place = BENCH;
      for (Move move : moves) {
        stays.add(new Stay(place, from, move.date()));
        from = move.date();
        place = move.to();
      }
      stays.add(new Stay(place, from, SEASON.endExclusive()));
      double ballC = verdict == Verdict.MOVES ? -1.75 : -7.5;
      return new PlantPlan(
          plant(BENCH),
          stays,
          moves,
          verdict,
          new Tightest(COLD, COLD_DAY, moves.get(0).to().name(), ballC, -4),
          broken,
          Optional.of(violation(Rule.ROOT_BALL, BENCH, -12.3)),
          displaced,
          shuttle,
          stays.stream().map(stay -> stay.place().equals(BENCH) ? -2.5 : -12.0).toList(),
          volumeL * 0.95);
    }

    private Plant plant(Place home) {
      return new Plant(
          id,
          label,
          species(),
          taxon,
          "",
          home.name(),
          new Container(Container.Shape.ROUND, 30, 30, 20, volumeL, Container.Material.TERRACOTTA),
          Optional.empty(),
          Plant.Vigour.NORMAL,
          3,
          value,
          own,
          wish,
          Optional.empty(),
          Optional.empty(),
          count,
          OptionalDouble.of(60),
          OptionalDouble.of(55),
          frostProof,
          Optional.empty(),
          Optional.empty(),
          Plant.Trust.NAMED,
          "");
    }

    private Species species() {
      return new Species(
          taxon,
          List.of(),
          List.of(),
          Group.HARDY_DECIDUOUS,
          Foliage.DECIDUOUS,
          HardinessZone.parse("6a"),
          kill,
          -6,
          basis,
          -2,
          -2,
          Species.ChillNeed.MEDIUM,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          -3,
          5,
          Light.DARK,
          false,
          Species.DryingRisk.LOW,
          toxic,
          "",
          "",
          List.of("studer1978"),
          true);
    }
  }
}
