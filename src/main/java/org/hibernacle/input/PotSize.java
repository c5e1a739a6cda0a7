package org.hibernacle.input;

import static org.hibernacle.input.Column.DEPTH_OF_POT;
import static org.hibernacle.input.Column.LENGTH_OF_POT;
import static org.hibernacle.input.Column.POT_MATERIAL;
import static org.hibernacle.input.Column.POT_SHAPE;
import static org.hibernacle.input.Column.VOLUME_OF_POT;
import static org.hibernacle.input.Column.WIDTH_OF_POT;

import java.util.Optional;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;

/**
 * Works out the container from what the keeper measured. Length, width and depth are those of the
 * pot, outside; the volume is that of the root ball, which is what a pot is said to hold.
 *
 * <p>Own choices, on the small and therefore cold side, without a source:
 *
 * <ul>
 *   <li>Walls take {@value #WALL_PART} of each width, floor and rim as much of the depth, so the
 *       ball is (1 - 0.08)^3 = 0.78 of the pot's outside box or cylinder.
 *   <li>A pot known only by its volume is round, its depth 0.8 of its width.
 *   <li>A pot without a shape is round where length and width are equal, else rectangular.
 * </ul>
 */
final class PotSize {
  /** Part of a width or depth taken by walls, or by floor and rim. */
  static final double WALL_PART = 0.08;

  /** Depth over width of a pot known only by its volume. */
  static final double DEPTH_OF_WIDTH = 0.8;

  private static final double BALL_PART = 1 - WALL_PART;
  private static final double SMALLEST_L = 0.02;
  private static final double LARGEST_L = 3000;

  private final Row row;
  private final Shape shape;
  private final Material material;

  private PotSize(Row row, Shape shape, Material material) {
    this.row = row;
    this.shape = shape;
    this.material = material;
  }

  /** The container of a plant's row; empty, with an error, where its size is missing or wrong. */
  static Optional<Container> read(Row row) {
    Measures given =
        new Measures(
            row.number(LENGTH_OF_POT, 1, 300).orElse(0),
            row.number(WIDTH_OF_POT, 1, 300).orElse(0),
            row.number(DEPTH_OF_POT, 1.1, 200).orElse(0),
            row.number(VOLUME_OF_POT, SMALLEST_L, LARGEST_L).orElse(0));
    Optional<Shape> said = row.choice(POT_SHAPE, Choice.SHAPE);
    Material material = row.choice(POT_MATERIAL, Choice.MATERIAL, Material.CERAMIC);
    if (row.failed(LENGTH_OF_POT, WIDTH_OF_POT, DEPTH_OF_POT, VOLUME_OF_POT, POT_SHAPE)) {
      return Optional.empty();
    }
    Shape shape = said.orElse(given.likelyShape());
    Optional<Container> pot = new PotSize(row, shape, material).from(given);
    if (pot.isPresent() && said.isEmpty()) {
      row.useDefault(POT_SHAPE, Choice.SHAPE.word(shape));
    }
    return pot;
  }

  /** What was measured: outside, cm; 0 where it was not. A volume is the ball's, L. */
  private record Measures(double lengthCm, double widthCm, double depthCm, double volumeL) {
    Shape likelyShape() {
      boolean differ = lengthCm > 0 && widthCm > 0 && Math.abs(lengthCm - widthCm) > 1e-6;
      return differ ? Shape.RECTANGULAR : Shape.ROUND;
    }

    /** A round pot has one width. */
    Measures round() {
      return new Measures(
          lengthCm > 0 ? lengthCm : widthCm, widthCm > 0 ? widthCm : lengthCm, depthCm, volumeL);
    }
  }

  private Optional<Container> from(Measures given) {
    Measures pot = shape == Shape.ROUND ? given.round() : given;
    if (pot.lengthCm > 0 && pot.widthCm > 0 && pot.depthCm > 0) {
      double derivedL = ballL(pot.lengthCm, pot.widthCm, pot.depthCm);
      double volumeL = pot.volumeL > 0 ? agreed(pot.volumeL, derivedL) : derived(derivedL);
      return build(pot.lengthCm, pot.widthCm, pot.depthCm, volumeL);
    }
    if (pot.volumeL > 0) {
      row.note("IN-135.volume-only");
      return fromVolume(pot);
    }
    row.missing(Code.NO_POT_SIZE, firstMissing(pot));
    return Optional.empty();
  }

  private static Column firstMissing(Measures pot) {
    if (pot.lengthCm == 0 && pot.widthCm == 0 && pot.depthCm == 0) {
      return VOLUME_OF_POT;
    }
    if (pot.lengthCm == 0) {
      return LENGTH_OF_POT;
    }
    return pot.widthCm == 0 ? WIDTH_OF_POT : DEPTH_OF_POT;
  }

  private Optional<Container> fromVolume(Measures pot) {
    double unitBoxes = pot.volumeL / ballL(1, 1, 1);
    double one = Math.max(pot.lengthCm, pot.widthCm);
    double other = Math.min(pot.lengthCm, pot.widthCm);
    if (other > 0) {
      return build(one, other, unitBoxes / one / other, pot.volumeL);
    }
    if (one > 0) {
      double depth = pot.depthCm > 0 ? pot.depthCm : DEPTH_OF_WIDTH * one;
      return build(one, unitBoxes / one / depth, depth, pot.volumeL);
    }
    double across =
        pot.depthCm > 0
            ? Math.sqrt(unitBoxes / pot.depthCm)
            : Math.cbrt(unitBoxes / DEPTH_OF_WIDTH);
    double depth = pot.depthCm > 0 ? pot.depthCm : DEPTH_OF_WIDTH * across;
    return build(across, across, depth, pot.volumeL);
  }

  /** Volume of the ball in a pot of these outside measures, L. */
  private double ballL(double lengthCm, double widthCm, double depthCm) {
    double boxL = lengthCm * widthCm * depthCm * Math.pow(BALL_PART, 3) / 1000;
    return shape == Shape.ROUND ? boxL * Math.PI / 4 : boxL;
  }

  private double derived(double derivedL) {
    row.note("IN-135.volume-empty");
    return derivedL;
  }

  /** The volume written, or the smaller of the two where the pot could not have it. */
  private double agreed(double writtenL, double derivedL) {
    double outsideL = derivedL / Math.pow(BALL_PART, 3);
    if (writtenL <= 1.02 * outsideL && writtenL >= 0.25 * outsideL) {
      return writtenL;
    }
    double usedL = Math.min(writtenL, derivedL);
    row.warning(Code.POT_CONTRADICTS, VOLUME_OF_POT, rounded(derivedL), rounded(usedL));
    return usedL;
  }

  private static double rounded(double volumeL) {
    return Math.round(volumeL * 1000) / 1000.0;
  }

  private Optional<Container> build(
      double lengthCm, double widthCm, double depthCm, double volumeL) {
    double longest = Math.max(lengthCm, widthCm);
    double shortest = Math.min(lengthCm, widthCm);
    double ballDepthCm = depthCm * BALL_PART;
    boolean widthsFit = longest <= 300 && shortest >= 1;
    boolean depthFits = ballDepthCm >= 1 && ballDepthCm <= 200;
    if (widthsFit && depthFits && volumeL >= SMALLEST_L && volumeL <= LARGEST_L) {
      return Optional.of(new Container(shape, longest, shortest, ballDepthCm, volumeL, material));
    }
    row.error(
        Code.POT_OUT_OF_RANGE,
        row.isBlank(VOLUME_OF_POT) ? DEPTH_OF_POT : VOLUME_OF_POT,
        rounded(volumeL),
        Math.round(longest),
        Math.round(ballDepthCm));
    return Optional.empty();
  }
}
