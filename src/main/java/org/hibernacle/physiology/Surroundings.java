package org.hibernacle.physiology;

/**
 * What a plant feels night by night, from noon to noon; arrays of one length.
 *
 * @param rootMeanC mean root-ball temperature, °C
 * @param airMeanC mean air, °C
 * @param airMinC lowest air, °C
 * @param dayLengthH h
 * @param chillPortions gained, in the place where the plant stands
 * @param chillHours gained, at or below 7.2 °C without lower end
 * @param growingDegreeHours gained, K·h
 * @param coreStart night on which chilling begins to count
 * @param midwinter night of midwinter
 * @param restCap night by which rest is complete whatever the cold
 */
public record Surroundings(
    double[] rootMeanC,
    double[] airMeanC,
    double[] airMinC,
    double[] dayLengthH,
    double[] chillPortions,
    double[] chillHours,
    double[] growingDegreeHours,
    int coreStart,
    int midwinter,
    int restCap) {}
