package org.hibernacle.thermal;

/**
 * A pot that stands in one place all winter. Another pot of its class that is carried there does
 * the same from the noon on at which their balls are alike, so it need not be lived any further.
 *
 * @param trace what its ball did
 * @param edgeJ heat of the edge shell at the noon before each night, and at the last one, J
 * @param coreJ heat of the core at the same noons, J
 */
public record Standing(BallTrace trace, double[] edgeJ, double[] coreJ) {}
