package org.hibernacle.planning;

import static java.lang.Math.PI;
import static java.lang.Math.asin;
import static java.lang.Math.cos;
import static java.lang.Math.exp;
import static java.lang.Math.log;
import static java.lang.Math.min;
import static java.lang.Math.pow;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;

/** The arithmetic of {@code docs/by-hand.md}, step by step, for the two nights in November 2021. */
final class HandArithmetic {
  static final double SUNRISE_H = 7.2;
  static final double DAY_H = 9.6;
  static final double NIGHT_H = 14.4;
  static final double TO_MIDNIGHT_H = 7.2;

  /** Air at sunset and what its fall is measured in, of the 6th and of the 7th. */
  static final double SUNSET_6TH_C = sunsetC(-0.6, 8.5);

  static final double SUNSET_7TH_C = sunsetC(-4.0, 2.2);

  /** The ball: round, 36 cm wide, 14.72 cm deep, a wall of 8 % of the width. */
  static final double SIDE_M2 = PI * 0.36 * 0.1472;

  static final double FOOT_M2 = PI * 0.18 * 0.18;
  static final double VOLUME_M3 = FOOT_M2 * 0.92 * 0.92 * 0.1472;

  static final double SURFACE_W_PER_M2K = 5.7 + 3.8 * 2;
  static final double SIDE_W_PER_K = SIDE_M2 / (1 / SURFACE_W_PER_M2K + 0.015);
  static final double TOP_W_PER_K = FOOT_M2 * SURFACE_W_PER_M2K;
  static final double FLOOR_W_PER_K = FOOT_M2 / (1 / SURFACE_W_PER_M2K + 0.015);
  static final double AROUND_W_PER_K = SIDE_W_PER_K + TOP_W_PER_K + FLOOR_W_PER_K;
  static final double FELT_OF_SKY = (TOP_W_PER_K + SIDE_W_PER_K / 2) / AROUND_W_PER_K;

  static final double SHELL_W_PER_K = 0.8 * pow(SIDE_M2 + 2 * FOOT_M2, 2) / (2 * VOLUME_M3);
  static final double FROZEN_SHELL_W_PER_K = SHELL_W_PER_K * pow(2.2 / 0.57, 0.27);
  static final double TO_EDGE_W_PER_K = 1 / (1 / AROUND_W_PER_K + 0.096 / FROZEN_SHELL_W_PER_K);

  /** Latent heat of edge and core at 27 % water, kJ. */
  static final double EDGE_KJ = 0.35 * VOLUME_M3 * 0.27 * 334e3;

  static final double CORE_KJ = 0.65 * VOLUME_M3 * 0.27 * 334e3;

  static final double UNFROZEN_TO_EDGE_W_PER_K = 1 / (1 / AROUND_W_PER_K + 0.096 / SHELL_W_PER_K);

  private HandArithmetic() {}

  // Air.

  static double sunsetC(double lowC, double highC) {
    return lowC + (highC - lowC) * sin(PI * DAY_H / (DAY_H + 4));
  }

  static double fallK(double sunsetC, double nextLowC) {
    return (sunsetC - nextLowC) / log(NIGHT_H + 1);
  }

  static double fallenC(double sunsetC, double nextLowC, double hours) {
    return sunsetC - fallK(sunsetC, nextLowC) * log(hours + 1);
  }

  /** Kelvin-hours of a night from one hour after sunset to another, with so much taken off. */
  static double nightKh(double sunsetC, double nextLowC, double fromH, double toH, double colderK) {
    double logarithms = (toH + 1) * log(toH + 1) - toH - (fromH + 1) * log(fromH + 1) + fromH;
    return (sunsetC - colderK) * (toH - fromH) - fallK(sunsetC, nextLowC) * logarithms;
  }

  static double sineKh(double lowC, double highC, double fromH, double toH) {
    double wave = DAY_H + 4;
    double cosines = cos(PI * fromH / wave) - cos(PI * toH / wave);
    return lowC * (toH - fromH) + (highC - lowC) * wave / PI * cosines;
  }

  static double thawsAfterH() {
    return asin(4.0 / 6.2) * (DAY_H + 4) / PI;
  }

  // Sky.

  static double clouds(double rangeK) {
    return 1.35 * 0.16 * sqrt(rangeK) / 0.75 - 0.35;
  }

  static double vapourHPa(double lowC) {
    return 6.108 * exp(17.27 * lowC / (lowC + 237.3));
  }

  static double clearSky(double lowC, double airC) {
    return 1.24 * pow(vapourHPa(lowC) / (airC + 273), 1.0 / 7);
  }

  static double lossWPerM2(double lowC, double rangeK, double airC) {
    double seen = 0.25 * clouds(rangeK);
    return seen * (1 - clearSky(lowC, airC)) * 0.95 * 5.67e-8 * pow(airC + 273, 4);
  }

  static double skyK(double lowC, double rangeK, double airC) {
    return lossWPerM2(lowC, rangeK, airC) / SURFACE_W_PER_M2K;
  }

  // Ball.

  static double coreWPerK(double coreIceShare) {
    return FROZEN_SHELL_W_PER_K / (0.119 + min(0.5, -log(1 - coreIceShare) / 2));
  }

  static double inSeries(double coreWPerK) {
    return 1 / (1 / TO_EDGE_W_PER_K + 1 / coreWPerK);
  }

  /** A frozen edge between air felt at -4.4 °C and a core at 0 °C that has frozen so far. */
  static double edgeC(double coreIceShare) {
    return -4.4 * TO_EDGE_W_PER_K / (TO_EDGE_W_PER_K + coreWPerK(coreIceShare));
  }

  /** Hours after sunset at which the bench passes 0 °C on the 6th. */
  static double benchFreezesH() {
    return exp((SUNSET_6TH_C - 1.5) / fallK(SUNSET_6TH_C, -4.0)) - 1;
  }

  /** By how much an unfrozen ball follows the air later. */
  static double ballFollowsH() {
    return VOLUME_M3 * 2.03e6 / UNFROZEN_TO_EDGE_W_PER_K / 3600;
  }

  static double eveningKh() {
    return nightKh(SUNSET_6TH_C, -4.0, benchFreezesH() + 1.8, TO_MIDNIGHT_H, 1.5);
  }

  static double ledgerInTheMorningKj() {
    double nightKh = nightKh(SUNSET_6TH_C, -4.0, TO_MIDNIGHT_H, NIGHT_H, 0.42);
    return 4.0 * 3.6 * (eveningKh() + nightKh);
  }

  static double ledgerAtSunsetKj() {
    double morning = 3.8 * 3.6 * sineKh(-4.0, 2.2, 0, thawsAfterH());
    double thaw = 4.0 * 3.6 * sineKh(-4.0, 2.2, thawsAfterH(), DAY_H);
    return ledgerInTheMorningKj() + morning + thaw;
  }

  static double frozenAfterKh() {
    double edgeKj = 4.0 * 3.6 * sineKh(-4.0, 2.2, thawsAfterH(), DAY_H);
    double restKj = EDGE_KJ + CORE_KJ + ledgerAtSunsetKj() - edgeKj;
    return edgeKj / (4.0 * 3.6) + restKj / (3.1 * 3.6);
  }

  static double secondNightKh(double toH) {
    return nightKh(SUNSET_7TH_C, -8.2, 0, TO_MIDNIGHT_H, 0.42)
        + nightKh(SUNSET_7TH_C, -8.2, TO_MIDNIGHT_H, toH, 0.25);
  }

  static double frozenAfterH() {
    double hours = TO_MIDNIGHT_H;
    while (-secondNightKh(hours) < frozenAfterKh()) {
      hours += 0.01;
    }
    return hours;
  }

  /** Air felt from then to sunrise, on average. */
  static double lastFeltC() {
    double kelvinHours = nightKh(SUNSET_7TH_C, -8.2, frozenAfterH(), NIGHT_H, 0.25);
    return kelvinHours / (NIGHT_H - frozenAfterH());
  }

  /** Hours in which a frozen ball comes to all but 1/e of what it feels. */
  static double frozenBallFollowsH() {
    return VOLUME_M3 * 1.413e6 / TO_EDGE_W_PER_K / 3600;
  }

  /** Part of the way to it that is done by sunrise. */
  static double wayDone() {
    return 1 - exp(-(NIGHT_H - frozenAfterH()) / frozenBallFollowsH());
  }

  static double sunriseOfTheEighthC() {
    return lastFeltC() * wayDone();
  }

  // Limit.

  /** Share of the way from low to high at which the mean from noon to noon lies, same days. */
  static double shareOfTheDay(double dayH) {
    double wave = dayH + 4;
    double nightH = 24 - dayH;
    double half = PI * dayH / 2 / wave;
    double byDay = wave / PI * (1 - cos(2 * half));
    double falls = ((nightH + 1) * log(nightH + 1) - nightH) / (nightH * log(nightH + 1));
    return (byDay + nightH * sin(2 * half) * (1 - falls)) / 24;
  }

  /** Mean from noon to noon of a night between two rows of lowest and highest, °C. */
  static double meanC(double highC, double nextLowC, double nextHighC) {
    double colderK = nextHighC - nextLowC > 8 ? 1.5 : 0;
    return 0.45 * highC + 0.55 * (nextLowC - colderK);
  }

  static double limitC(double coldKd) {
    return -9 + 7 * exp(-0.012 * coldKd);
  }
}
