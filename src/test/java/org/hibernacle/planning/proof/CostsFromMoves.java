package org.hibernacle.planning.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;
import org.hibernacle.oracle.JudgedPlan;
import org.hibernacle.oracle.Night;
import org.hibernacle.planning.Explanation;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Stay;

/** What a plan costs its keeper, counted from its moves by the words of docs/planning.md. */
final class CostsFromMoves {
  /** Week means of plan and oracle lie a few hundredths of a kelvin apart; whole degrees count. */
  private static final double STORAGE_SHARE = 0.05;

  private final JudgedPlan garden;
  private final PlantPlan plant;

  private CostsFromMoves(JudgedPlan garden, PlantPlan plant) {
    this.garden = garden;
    this.plant = plant;
  }

  static List<String> complaints(JudgedPlan garden, Explanation told) {
    return new CostsFromMoves(garden, told.plan()).complaints(told.ease());
  }

  private List<String> complaints(Explanation.Ease told) {
    Season season = garden.plan().season();
    int autumn = 0;
    int roof = 0;
    int spring = 0;
    for (Stay stay : plant.stays()) {
      if (stay.place().name().equals(plant.plant().home())) {
        continue;
      }
      for (LocalDate day = stay.fromInclusive();
          day.isBefore(stay.toExclusive());
          day = day.plusDays(1)) {
        autumn += day.isBefore(season.midwinter()) ? 1 : 0;
        spring += day.isBefore(season.midwinter()) ? 0 : 1;
        roof += stay.place().roofed() ? 1 : 0;
      }
    }
    int nightsBack = plant.shuttle().map(s -> s.mostInAWinter()).orElse(0);
    List<String> complaints = new ArrayList<>();
    expect("moves", plant.moves().size() + nightsBack, told.moves(), 0, complaints);
    expect("nights away before midwinter", autumn, told.autumnNightsAway(), 0, complaints);
    expect("nights under a roof", roof, told.roofNights(), 0, complaints);
    expect("nights away after midwinter", spring, told.springNightsAway(), 0, complaints);
    long degreeDays = storageDegreeDays();
    int few = (int) Math.ceil(STORAGE_SHARE * (degreeDays + roof));
    expect("degree-days", degreeDays, told.storageDegreeDays(), few, complaints);
    return complaints;
  }

  private void expect(String what, long counted, long told, int most, List<String> complaints) {
    if (Math.abs(counted - told) > most) {
      complaints.add(plant.plant().id() + " costs " + told + " " + what + ", counted " + counted);
    }
  }

  /** Of the winters' mean, in whole degrees, ten a night at most. */
  private long storageDegreeDays() {
    Season season = garden.plan().season();
    Species species = plant.plant().species();
    double[] sumC = new double[season.days()];
    int[] count = new int[season.days()];
    boolean[] roofed = new boolean[season.days()];
    for (Season winter : garden.winters()) {
      for (Night night : garden.nightsOfTheStays(plant, winter)) {
        int i = season.index(season.sameDay(night.day()));
        sumC[i] += night.weekMeanC();
        count[i]++;
        roofed[i] |= night.place().roofed() && !night.place().name().equals(plant.plant().home());
      }
    }
    long sum = 0;
    for (int i = 0; i < sumC.length; i++) {
      double airC = count[i] == 0 ? 0 : sumC[i] / count[i];
      double outsideK = Math.max(species.minStoreC() - airC, airC - species.maxStoreC());
      sum += roofed[i] ? Math.round(Math.max(0, Math.min(10, outsideK))) : 0;
    }
    return sum;
  }
}
