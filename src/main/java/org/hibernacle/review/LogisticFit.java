package org.hibernacle.review;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Fits the chance of harm by logistic regression, {@code ln(p / (1 - p)) = b . x}, by iteratively
 * reweighted least squares, which gives the likeliest coefficients (Venables and Ripley, Modern
 * Applied Statistics with S, chapter 7).
 *
 * @param coefficients b
 * @param covariance of b, from the information matrix
 */
record LogisticFit(RealVector coefficients, RealMatrix covariance) {
  private static final int MOST_STEPS = 60;
  private static final double CLOSE_ENOUGH = 1e-11;

  /** Coefficients that run away: no finite ones are likeliest. */
  private static final double FARTHEST_LOGIT = 40;

  /**
   * Some trials under equal conditions.
   *
   * @param x conditions, 1 for the intercept
   * @param trials 1 or more
   * @param harmed of these
   */
  record Group(double[] x, int trials, int harmed) {}

  /**
   * A dose and its standard error.
   *
   * @param value in the unit of the slope's condition
   * @param standardError by the delta method
   */
  record Dose(double value, double standardError) {}

  /** The fit; empty if there is none, for instance with separated data. */
  static Optional<LogisticFit> of(List<Group> groups) {
    int size = groups.get(0).x().length;
    RealVector b = new ArrayRealVector(size);
    for (int step = 0; step < MOST_STEPS; step++) {
      RealMatrix information = MatrixUtils.createRealMatrix(size, size);
      RealVector score = new ArrayRealVector(size);
      for (Group group : groups) {
        RealVector x = new ArrayRealVector(group.x());
        double logit = b.dotProduct(x);
        if (Math.abs(logit) > FARTHEST_LOGIT) {
          return Optional.empty();
        }
        double p = 1 / (1 + Math.exp(-logit));
        information =
            information.add(x.outerProduct(x).scalarMultiply(group.trials() * p * (1 - p)));
        score = score.add(x.mapMultiply(group.harmed() - group.trials() * p));
      }
      RealMatrix covariance;
      try {
        covariance = new CholeskyDecomposition(information).getSolver().getInverse();
      } catch (MathIllegalArgumentException e) {
        return Optional.empty(); // Conditions that do not differ, or p at its ends.
      }
      RealVector change = covariance.operate(score);
      b = b.add(change);
      if (change.getLInfNorm() < CLOSE_ENOUGH) {
        return Optional.of(new LogisticFit(b, covariance));
      }
    }
    return Optional.empty();
  }

  /**
   * The dose at which that share is harmed: {@code (ln(p / (1 - p)) - b[intercept]) / b[slope]}.
   *
   * @param share 0 to 1, both excluded
   * @param intercept index of the intercept
   * @param slope index of the dose's coefficient
   */
  Dose dose(double share, int intercept, int slope) {
    double b1 = coefficients.getEntry(slope);
    double value = (Math.log(share / (1 - share)) - coefficients.getEntry(intercept)) / b1;
    double variance =
        (covariance.getEntry(intercept, intercept)
                + 2 * value * covariance.getEntry(intercept, slope)
                + value * value * covariance.getEntry(slope, slope))
            / (b1 * b1);
    return new Dose(value, Math.sqrt(variance));
  }

  /**
   * The 95 % interval of the dose that harms half, by Fieller's theorem (1954, J. Roy. Statist.
   * Soc. B 16:175-185), low end first; empty where the slope could as well be 0, so that any dose
   * would do.
   */
  Optional<double[]> interval(int intercept, int slope) {
    double z2 = 1.959963984540054 * 1.959963984540054;
    double b0 = coefficients.getEntry(intercept);
    double b1 = coefficients.getEntry(slope);
    double a = b1 * b1 - z2 * covariance.getEntry(slope, slope);
    double half = b0 * b1 - z2 * covariance.getEntry(intercept, slope);
    double c = b0 * b0 - z2 * covariance.getEntry(intercept, intercept);
    double root = half * half - a * c;
    if (a <= 0 || root < 0) {
      return Optional.empty();
    }
    return Optional.of(new double[] {(-half - Math.sqrt(root)) / a, (-half + Math.sqrt(root)) / a});
  }
}
