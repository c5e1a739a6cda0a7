package org.hibernacle.physiology;

import org.hibernacle.model.Foliage;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;

/**
 * What one plant can take, night by night, along one path through one winter.
 *
 * @param rootLimitC root-ball temperature at which damage begins, °C
 * @param shootLimitC air temperature at which shoots are damaged, °C
 * @param rootHardness 0 unhardened to 1 fully hard
 * @param dormant whether growth has stopped for the winter and no bud has broken since
 * @param bare whether a deciduous plant carries no leaf
 * @param restEnd first night after rest was complete; the number of nights if never
 * @param budBreak first night after buds have broken; the number of nights if never
 */
public record PlantState(
    double[] rootLimitC,
    double[] shootLimitC,
    double[] rootHardness,
    boolean[] dormant,
    boolean[] bare,
    int restEnd,
    int budBreak) {

  /**
   * Lives a plant through its winter, unhardened and in leaf at the start.
   *
   * @param plant which
   * @param season for the age of root work
   * @param around what it feels
   */
  public static PlantState live(Plant plant, Season season, Surroundings around) {
    int nights = around.rootMeanC().length;
    Acclimation roots = Hardening.roots(plant, season);
    Acclimation shoots = Hardening.shoots(plant.species());
    Rest rest = Rest.of(plant.species());
    boolean rests = Rest.rests(plant.species());
    LeafFall leafFall = new LeafFall();
    double[] rootLimitC = new double[nights];
    double[] shootLimitC = new double[nights];
    double[] hardness = new double[nights];
    boolean[] dormant = new boolean[nights];
    boolean[] bare = new boolean[nights];
    double root = roots.leastC();
    double shoot = shoots.leastC();
    boolean rootsFeltCold = false;
    boolean shootsFeltCold = false;
    double portions = 0;
    double hours = 0;
    double heat = 0;
    int restEnd = nights;
    int budBreak = nights;
    for (int n = 0; n < nights; n++) {
      boolean complete = rests ? restEnd < nights : n >= around.restCap();
      rootLimitC[n] = root;
      shootLimitC[n] = shoot;
      hardness[n] = roots.hardness(root);
      dormant[n] = leafFall.dormant() && budBreak == nights;
      bare[n] = leafFall.bare(plant.species().foliage()) && budBreak == nights;
      double readiness = Hardening.shortDayReadiness(around.dayLengthH()[n]);
      root = roots.next(root, around.rootMeanC()[n], complete, rootsFeltCold, 1);
      shoot = shoots.next(shoot, around.airMeanC()[n], complete, shootsFeltCold, readiness);
      rootsFeltCold |= around.rootMeanC()[n] < roots.atRest().thresholdC();
      shootsFeltCold |= around.airMeanC()[n] < shoots.atRest().thresholdC();
      leafFall.day(
          around.airMeanC()[n],
          around.airMinC()[n],
          around.dayLengthH()[n],
          n > around.midwinter());
      if (n >= around.coreStart() && restEnd == nights) {
        portions += around.chillPortions()[n];
        hours += around.chillHours()[n];
        boolean enough = portions >= rest.portions() || hours >= rest.hours();
        if (n >= around.restCap() || (rests && enough)) {
          restEnd = n + 1;
        }
      } else if (restEnd < nights && budBreak == nights) {
        heat += around.growingDegreeHours()[n];
        if (heat >= rest.growingDegreeHours()) {
          budBreak = n + 1;
        }
      }
    }
    return new PlantState(rootLimitC, shootLimitC, hardness, dormant, bare, restEnd, budBreak);
  }

  /** Whether the plant carries leaves that want light on that night. */
  public boolean inLeaf(int night, Foliage foliage) {
    return foliage != Foliage.DECIDUOUS || !bare[night];
  }
}
