package org.hibernacle.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hibernacle.planning.Move;

/** Sets the real days of moves beside the planned ones. */
final class Punctualities {
  private Punctualities() {}

  /** One entry a kind of move that was planned or happened. */
  static List<Punctuality> of(List<PlantReview> plants) {
    List<Punctuality> all = new ArrayList<>();
    for (Move.Kind kind : Move.Kind.values()) {
      Punctuality one = of(plants, kind);
      if (one.planned() + one.unplanned() > 0) {
        all.add(one);
      }
    }
    return all;
  }

  private record Late(String id, int days) {}

  private static Punctuality of(List<PlantReview> plants, Move.Kind kind) {
    int planned = 0;
    int skipped = 0;
    int unplanned = 0;
    List<Late> told = new ArrayList<>();
    for (PlantReview plant : plants) {
      for (MoveCompared move : plant.moves()) {
        if (move.kind() == kind) {
          planned += move.planned().isPresent() ? 1 : 0;
          skipped += move.planned().isPresent() && move.real().isEmpty() ? 1 : 0;
          unplanned += move.planned().isEmpty() ? 1 : 0;
          move.daysLate().ifPresent(days -> told.add(new Late(plant.plant().id(), days)));
        }
      }
    }
    Optional<Late> latest =
        told.stream().max(Comparator.comparingInt(Late::days).thenComparing(Late::id));
    return new Punctuality(
        kind,
        planned,
        told.size(),
        skipped,
        unplanned,
        told.stream().mapToInt(Late::days).average().orElse(0),
        latest.map(Late::days).orElse(0),
        latest.map(Late::id));
  }
}
