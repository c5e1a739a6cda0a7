package org.hibernacle.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.Plant;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.planning.Life;
import org.hibernacle.planning.OneWinter;
import org.hibernacle.planning.OneWinter.NightsBack;
import org.hibernacle.planning.Stay;

/** Reviews one plant after the other. Safe for several threads. */
final class PlantReviewer {
  private final ReviewQuestion question;
  private final OneWinter one;

  PlantReviewer(ReviewQuestion question, OneWinter one) {
    this.question = question;
    this.one = one;
  }

  /**
   * A plant's review and what the collection is judged by.
   *
   * @param review of the plant
   * @param homeDangerFrom first day on which home would have broken the safety margin
   * @param dropped moves that could not be placed
   * @param backAssumed whether nights in and out are taken to have been kept
   */
  record Reviewed(
      PlantReview review,
      Optional<LocalDate> homeDangerFrom,
      List<RealStays.Step> dropped,
      boolean backAssumed) {}

  Reviewed review(Plant plant) {
    SeasonLog log = question.log();
    LogEntry entry =
        log.entries().stream()
            .filter(e -> e.id().equals(plant.id()))
            .findFirst()
            .orElseGet(() -> LogEntry.blank(plant.id()));
    List<PlannedMove> plan = log.moves().stream().filter(m -> m.id().equals(plant.id())).toList();
    RealStays stays = RealStays.of(plant, plan, entry, question.inventory(), log.season());
    Optional<NightsBack> back = nightsBack(plant);
    boolean backKept = back.filter(b -> isHomeFor(stays.real(), b, plant)).isPresent();
    Life atHome = one.standing(plant, question.inventory().place(plant.home()));
    Life planned = one.live(plant, stays.planned(), back);
    boolean asPlanned = stays.real().equals(stays.planned());
    Life real =
        asPlanned ? planned : one.live(plant, stays.real(), backKept ? back : Optional.empty());
    Outcome outcome = entry.outcome().orElse(Outcome.NO_DAMAGE);
    Optional<LocalDate> noticed = outcome.harmed() ? entry.noticed() : Optional.empty();
    Exposure lived = Exposures.of(one, plant, real, atHome, noticed);
    Exposure asPlan = Exposures.of(one, plant, planned, atHome, Optional.empty());
    Causes weighed = Exposures.causes(one, plant, real, atHome, noticed);
    List<ScoredCause> causes =
        outcome.harmed() ? weighed.of(outcome, one.winter().first()) : List.of();
    Optional<ScoredCause> likeliest = causes.stream().findFirst();
    PlantReview review =
        new PlantReview(
            plant,
            outcome,
            entry.outcome().isEmpty(),
            entry.noticed(),
            entry.remark(),
            stays.real(),
            stays.planned(),
            compared(stays, likeliest.flatMap(ScoredCause::day)),
            lived,
            asPlan,
            verdict(planned),
            causes,
            likeliest.map(
                c ->
                    prevention(
                        c.cause(),
                        weighed,
                        Exposures.causes(one, plant, planned, atHome, Optional.empty()),
                        asPlanned)));
    return new Reviewed(
        review, atHome.firstDanger(one.winter().first()), stays.dropped(), backKept);
  }

  private Optional<NightsBack> nightsBack(Plant plant) {
    return question.log().inAndOut().stream()
        .filter(n -> n.id().equals(plant.id()))
        .findFirst()
        .map(n -> new NightsBack(question.inventory().place(n.refuge()), n.from(), n.to()));
  }

  /** Nights back make sense only for a pot that is home by then. */
  private static boolean isHomeFor(List<Stay> stays, NightsBack back, Plant plant) {
    Stay last = stays.get(stays.size() - 1);
    return last.place().name().equals(plant.home()) && !last.fromInclusive().isAfter(back.to());
  }

  private static List<MoveCompared> compared(RealStays stays, Optional<LocalDate> worst) {
    return stays.moves().stream()
        .map(
            s ->
                new MoveCompared(
                    s.kind(),
                    s.planned(),
                    s.day(),
                    s.assumed(),
                    worst.filter(day -> isBetween(day, s)).isPresent()))
        .toList();
  }

  private static boolean isBetween(LocalDate day, RealStays.Step step) {
    if (step.planned().isEmpty()) {
      return false;
    }
    LocalDate planned = step.planned().get();
    LocalDate real = step.day().orElse(LocalDate.MAX);
    LocalDate first = planned.isBefore(real) ? planned : real;
    LocalDate last = planned.isBefore(real) ? real : planned;
    return !day.isBefore(first) && !day.isAfter(last) && !first.equals(last);
  }

  private PlanVerdict verdict(Life planned) {
    if (planned.limitsBroken().stream().anyMatch(Life.OnNight::ofLimit)) {
      return PlanVerdict.FAILED;
    }
    return planned.marginsBroken().isEmpty() ? PlanVerdict.HELD : PlanVerdict.MARGIN_USED;
  }

  /** The plan would have prevented what it makes less than half as likely. */
  private static Prevention prevention(
      Cause likeliest, Causes real, Causes planned, boolean asPlanned) {
    if (likeliest == Cause.NOT_TEMPERATURE) {
      return Prevention.NOT_A_MATTER_OF_PLACE;
    }
    if (asPlanned) {
      return Prevention.LIVED_AS_PLANNED;
    }
    return planned.strength(likeliest) < real.strength(likeliest) / 2
        ? Prevention.WOULD_HAVE_PREVENTED
        : Prevention.WOULD_NOT_HAVE_PREVENTED;
  }
}
