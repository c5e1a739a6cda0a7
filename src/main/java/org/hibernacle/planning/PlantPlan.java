package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;

/**
 * What one plant does this season, and why.
 *
 * @param plant which
 * @param stays from the first to the last day of the season, without gaps
 * @param moves one between each two stays
 * @param verdict in short
 * @param tightest where the plan comes closest to a limit, over all winters on file
 * @param broken what the plan can not keep, the first one a winter at least; where the verdict is
 *     not {@link Verdict#UNPROTECTED} these are the winters that the accepted risk allows to fail
 * @param withoutMoves the worst that would happen if the plant stayed at home
 * @param displaced why it does not get the places and dates that would suit it best; empty if it
 *     does
 * @param shuttle nights on which it is carried back in spring
 * @param nightTriggersC one a stay: forecast lowest at the station below which the plant must not
 *     be left as it stands, °C
 * @param estimatedMassKg of the heaviest single pot, wet
 */
public record PlantPlan(
    Plant plant,
    List<Stay> stays,
    List<Move> moves,
    Verdict verdict,
    Tightest tightest,
    List<Violation> broken,
    Optional<Violation> withoutMoves,
    Optional<Displaced> displaced,
    Optional<Shuttle> shuttle,
    List<Double> nightTriggersC,
    double estimatedMassKg) {

  /** In short. */
  public enum Verdict {
    /** Nothing threatens it at home: a result, not a gap. */
    STAYS_HOME,
    MOVES,
    /** No stays were found that keep every rule. */
    UNPROTECTED
  }

  /**
   * The closest approach to a root limit.
   *
   * @param winter on file
   * @param day in that winter
   * @param place name of the place
   * @param rootBallC lowest root-ball temperature of that day, °C
   * @param rootLimitC root limit of that day, °C
   */
  public record Tightest(
      Season winter, LocalDate day, String place, double rootBallC, double rootLimitC) {
    /** Root ball minus limit, K. */
    public double marginK() {
      return rootBallC - rootLimitC;
    }
  }

  public PlantPlan {
    stays = List.copyOf(stays);
    moves = List.copyOf(moves);
    broken = List.copyOf(broken);
    nightTriggersC = List.copyOf(nightTriggersC);
    if (nightTriggersC.size() != stays.size()) {
      throw new IllegalArgumentException("one trigger a stay");
    }
  }

  /** The first move of that kind. */
  public Optional<Move> move(Move.Kind kind) {
    return moves.stream().filter(m -> m.kind() == kind).findFirst();
  }
}
