package org.hibernacle.oracle;

import java.time.LocalDate;
import java.util.Optional;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Group;
import org.hibernacle.model.Species;

/** Leaf fall, rest and waking, night by night; docs/models/rest.md. */
final class Buds {
  private final Species species;
  private final Outside outside;
  private final Chill chill = new Chill();
  private boolean dormant;
  private boolean rested;
  private boolean broken;
  private Optional<LocalDate> sharpFrost = Optional.empty();
  private double coldKd;
  private double warmthKh;

  Buds(Species species, Outside outside) {
    this.species = species;
    this.outside = outside;
  }

  /** Whether the tree has finished growing and its buds have not opened. */
  boolean dormant() {
    return dormant && !broken;
  }

  /** Whether rest still holds the buds back. */
  boolean atRest() {
    return !rested;
  }

  boolean broken() {
    return broken;
  }

  boolean inLeaf() {
    return species.foliage() != Foliage.DECIDUOUS || !dormant();
  }

  /** Lets a night pass. Subtropical and tropical plants lose leaves but do not rest. */
  void night(LocalDate day, double[] airC) {
    leafFall(day, airC);
    if (!species.group().hardens()) {
      return;
    }
    if (rested) {
      for (double air : airC) {
        warmthKh += Chill.warmth(air);
      }
      broken |= warmthKh >= warmthToBudBreakKh();
    } else {
      rest(day, airC);
    }
  }

  private void leafFall(LocalDate day, double[] airC) {
    if (day.isAfter(outside.season().midwinter()) || outside.dayLengthHours(day) >= 12) {
      return;
    }
    if (sharpFrost.isEmpty() && Nights.lowest(airC) <= -4) {
      sharpFrost = Optional.of(day);
    }
    coldKd += Math.max(0, 12 - Nights.mean(airC));
    dormant |= coldKd >= 60 || sharpFrost.filter(d -> !day.isBefore(d.plusDays(7))).isPresent();
  }

  private void rest(LocalDate day, double[] airC) {
    LocalDate first = outside.season().coreStart();
    if (day.isBefore(first)) {
      return;
    }
    for (double air : airC) {
      chill.hour(air);
    }
    rested =
        chill.portions() >= species.chillPortionsLow().orElse(chillNeed(25, 50, 75))
            || chill.coldHours() >= chillNeed(400, 1000, 1500)
            || !day.isBefore(first.plusMonths(4));
  }

  private double chillNeed(double low, double medium, double high) {
    return switch (species.chillNeed()) {
      case NONE -> 0;
      case LOW -> low;
      case MEDIUM -> medium;
      case HIGH -> high;
    };
  }

  private double warmthToBudBreakKh() {
    if (species.foliage() != Foliage.DECIDUOUS || species.group() == Group.MEDITERRANEAN) {
      return 6500;
    }
    return species.newGrowthLimitC() <= -3 ? 3600 : 5000;
  }
}
