package org.hibernacle.input;

import java.util.Optional;
import java.util.OptionalDouble;
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

  private PotSize() {}

  /** The container of a plant's row; empty where the row's size is missing or wrong. */
  static Optional<Container> read(Row row) {
    Measures given =
        new Measures(
            row.number(Column.LENGTH_OF_POT, 1, 300),
            row.number(Column.WIDTH_OF_POT, 1, 300),
            row.number(Column.DEPTH_OF_POT, 1.1, 200),
            row.number(Column.VOLUME_OF_POT, SMALLEST_L, LARGEST_L));
    boolean unread =
        !row.isBlank(Column.LENGTH_OF_POT) && given.lengthCm.isEmpty()
            || !row.isBlank(Column.WIDTH_OF_POT) && given.widthCm.isEmpty()
            || !row.isBlank(Column.DEPTH_OF_POT) && given.depthCm.isEmpty()
            || !row.isBlank(Column.VOLUME_OF_POT) && given.volumeL.isEmpty();
    Optional<Shape> said = row.choice(Column.POT_SHAPE, Choice.SHAPE);
    Material material = row.choice(Column.POT_MATERIAL, Choice.MATERIAL, Material.CERAMIC);
    if (unread || (said.isEmpty() && !row.isBlank(Column.POT_SHAPE))) {
      return Optional.empty();
    }
    Shape shape = said.orElseGet(given::likelyShape);
    Optional<Container> pot = given.complete(row, shape, material);
    if (pot.isPresent() && said.isEmpty()) {
      row.useDefault(Column.POT_SHAPE, Choice.SHAPE.word(shape));
    }
    return pot;
  }

  /** Volume of a ball of that outside width and depth, L. */
  private static double ballL(Shape shape, double lengthCm, double widthCm, double depthCm) {
    double boxL = lengthCm * widthCm * depthCm * Math.pow(BALL_PART, 3) / 1000;
    return shape == Shape.ROUND ? boxL * Math.PI / 4 : boxL;
  }

  private record Measures(
      OptionalDouble lengthCm,
      OptionalDouble widthCm,
      OptionalDouble depthCm,
      OptionalDouble volumeL) {

    Shape likelyShape() {
      boolean bothWidths = lengthCm.isPresent() && widthCm.isPresent();
      return bothWidths && Math.abs(lengthCm.getAsDouble() - widthCm.getAsDouble()) > 1e-6
          ? Shape.RECTANGULAR
          : Shape.ROUND;
    }

    Optional<Container> complete(Row row, Shape shape, Material material) {
      double length = first(lengthCm, widthCm);
      double width = shape == Shape.ROUND ? first(widthCm, lengthCm) : widthCm.orElse(0);
      double depth = depthCm.orElse(0);
      if (shape == Shape.RECTANGULAR && lengthCm.isEmpty()) {
        length = 0;
      }
      if (length > 0 && width > 0 && depth > 0) {
        double derivedL = ballL(shape, length, width, depth);
        double chosenL = volumeL.isPresent() ? agreed(row, derivedL) : noted(row, derivedL);
        return build(row, shape, length, width, depth, chosenL, material);
      }
      if (volumeL.isEmpty()) {
        row.missing(
            length > 0 || depth > 0 ? missingMeasure(length, width) : Column.VOLUME_OF_POT,
            "Volume, or Length, Width and Depth; a round pot needs only one width and Depth");
        return Optional.empty();
      }
      row.note(
          Code.POT_DERIVED,
          "the pot is known by its volume",
          "what is missing of its measures is worked out from it");
      return fromVolume(row, shape, length, width, depth, material);
    }

    private Column missingMeasure(double length, double width) {
      if (length <= 0) {
        return Column.LENGTH_OF_POT;
      }
      return width <= 0 ? Column.WIDTH_OF_POT : Column.DEPTH_OF_POT;
    }

    private Optional<Container> fromVolume(
        Row row, Shape shape, double length, double width, double depth, Material material) {
      double volume = volumeL.getAsDouble();
      double unitL = ballL(shape, 1, 1, 1);
      if (length > 0 && width > 0) {
        return build(row, shape, length, width, volume / unitL / length / width, volume, material);
      }
      if (length > 0 || width > 0) {
        double known = Math.max(length, width);
        double d = depth > 0 ? depth : DEPTH_OF_WIDTH * known;
        double other = volume / unitL / known / d;
        return build(
            row, shape, Math.max(known, other), Math.min(known, other), d, volume, material);
      }
      double across =
          depth > 0
              ? Math.sqrt(volume / unitL / depth)
              : Math.cbrt(volume / unitL / DEPTH_OF_WIDTH);
      double d = depth > 0 ? depth : DEPTH_OF_WIDTH * across;
      return build(row, shape, across, across, d, volume, material);
    }

    private static double noted(Row row, double derivedL) {
      row.note(
          Code.POT_DERIVED,
          "Volume is empty",
          "it is worked out from the pot's measures with an allowance for walls and rim");
      return derivedL;
    }

    /** The volume written, or the derived one where the pot could not hold it. */
    private double agreed(Row row, double derivedL) {
      double written = volumeL.getAsDouble();
      double outsideL = derivedL / Math.pow(BALL_PART, 3);
      if (written <= 1.02 * outsideL && written >= 0.25 * outsideL) {
        return written;
      }
      double used = Math.min(written, derivedL);
      row.warning(
          Code.POT_CONTRADICTS,
          Column.VOLUME_OF_POT,
          "about "
              + FoundCell.plain(Math.round(derivedL * 100) / 100.0)
              + " L for a pot of these measures",
          FoundCell.plain(Math.round(used * 100) / 100.0) + " L is used, the smaller of the two");
      return used;
    }

    private static double first(OptionalDouble one, OptionalDouble other) {
      return one.orElse(other.orElse(0));
    }
  }

  private static Optional<Container> build(
      Row row,
      Shape shape,
      double lengthCm,
      double widthCm,
      double depthCm,
      double volumeL,
      Material material) {
    double longest = Math.max(lengthCm, widthCm);
    double shortest = Math.min(lengthCm, widthCm);
    double ballCm = depthCm * BALL_PART;
    boolean fits =
        longest <= 300
            && shortest >= 1
            && ballCm >= 1
            && ballCm <= 200
            && volumeL >= SMALLEST_L
            && volumeL <= LARGEST_L;
    if (fits) {
      return Optional.of(new Container(shape, longest, shortest, ballCm, volumeL, material));
    }
    Column blamed = row.isBlank(Column.VOLUME_OF_POT) ? Column.DEPTH_OF_POT : Column.VOLUME_OF_POT;
    row.error(
        Code.POT_OUT_OF_RANGE,
        blamed,
        "a root ball of 0.02 to 3000 L, 1 to 300 cm wide and 1 to 200 cm deep; these measures give "
            + FoundCell.plain(Math.round(volumeL * 1000) / 1000.0)
            + " L");
    return Optional.empty();
  }
}
