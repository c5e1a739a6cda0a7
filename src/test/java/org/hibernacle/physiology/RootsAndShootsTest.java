package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.physiology.Acclimation.Phase;
import org.junit.jupiter.api.Test;

/**
 * Roots and shoots of every row that hardens. The days were worked out by hand with the table of
 * docs/models/hardening.md: a Japanese maple, roots from -2 to -9 °C, shoots from -7 °C to zone 5b
 * (-26.111 °C) plus 5 K.
 */
class RootsAndShootsTest extends AcclimationContract {
  private static final Season SEASON = new Season(2020, false);

  private final Plant maple = SomePlant.of("Acer palmatum").plant();
  private final Acclimation roots = Hardening.roots(maple, SEASON);
  private final Acclimation shoots = Hardening.shoots(maple.species());

  @Override
  List<Acclimation> sets() {
    List<Species> hardening =
        SomePlant.CATALOGUE.species().stream().filter(s -> s.group().hardens()).toList();
    return Stream.concat(
            hardening.stream().map(s -> Hardening.roots(SomePlant.of(s).plant(), SEASON)),
            hardening.stream().map(Hardening::shoots).filter(s -> s.mostC() < s.leastC()))
        .toList();
  }

  /** Span of the roots 7 K, of the shoots 14.111 K. */
  @Override
  List<OneDay> knownDays() {
    return List.of(
        new OneDay("roots, first frost: 10 K x 0.012 x 7", roots, -2, 0, false, 1, -2.84),
        new OneDay("roots, half hard: half of it", roots, -5.5, 0, false, 1, -5.92),
        new OneDay(
            "roots, cold day after rest: 5 K x 0.010 x 3.5", roots, -5.5, 0, true, 1, -5.675),
        new OneDay("roots, warm at rest: 10 K x 0.003 x 3.5", roots, -5.5, 20, false, 1, -5.395),
        new OneDay("roots, warm after: 15 K x 0.004 x 7 x 7/8", roots, -5.5, 20, true, 1, -5.1325),
        new OneDay("shoots, long days: nothing", shoots, -7, 2, false, 0, -7),
        new OneDay("shoots, 10 K x 0.018 x 14.111", shoots, -7, 2, false, 1, -9.54),
        new OneDay("shoots, days of 12.5 h: half", shoots, -7, 2, false, 0.5, -8.27),
        new OneDay(
            "shoots, hard and warm: 8 K x 0.003 x 14.111", shoots, -21.111, 20, false, 1, -20.7724),
        new OneDay("shoots, the same after rest", shoots, -21.111, 20, true, 1, -19.841));
  }

  @Override
  double toleranceK() {
    return 2e-4;
  }

  /** Amplitude zero: whatever the day, the limit is the one the plant has. */
  @Test
  void whatDoesNotHardenKeepsItsLimit() {
    Acclimation tropical = new Acclimation(8, 8, new Phase(10, 0, 0), new Phase(5, 0, 0), 3);
    assertEquals(8, tropical.next(8, -30, false, true, 1));
    assertEquals(8, tropical.next(8, 30, true, true, 1));
    assertEquals(1, tropical.hardness(8));
  }
}
