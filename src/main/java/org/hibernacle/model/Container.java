package org.hibernacle.model;

/**
 * A pot, seen as a body that loses heat.
 *
 * @param shape round, square, or tray
 * @param lengthCm longest outside width, cm (1..300)
 * @param widthCm shortest outside width, cm (1..300)
 * @param depthCm depth of the root ball, cm (1..200)
 * @param volumeL root-ball volume, L (0.02..3000)
 * @param material of the wall
 */
public record Container(
    Shape shape,
    double lengthCm,
    double widthCm,
    double depthCm,
    double volumeL,
    Material material) {

  /** Outline seen from above. */
  public enum Shape {
    ROUND,
    RECTANGULAR
  }

  /** Wall material. */
  public enum Material {
    CERAMIC,
    TERRACOTTA,
    PLASTIC,
    WOOD,
    CONCRETE,
    FABRIC
  }

  public Container {
    requireRange("lengthCm", lengthCm, 1, 300);
    requireRange("widthCm", widthCm, 1, 300);
    requireRange("depthCm", depthCm, 1, 200);
    requireRange("volumeL", volumeL, 0.02, 3000);
  }

  private static void requireRange(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must be " + low + ".." + high + " but is " + value);
    }
  }

  /** Standing area of the pot itself, m2. */
  public double footprintM2() {
    double area = lengthCm * widthCm / 1e4;
    return shape == Shape.ROUND ? area * Math.PI / 4 : area;
  }

  /** Wall area from rim to floor, m2, straight sides assumed. */
  public double sideM2() {
    double round = Math.PI * (lengthCm + widthCm) / 2;
    double girthCm = shape == Shape.ROUND ? round : 2 * (lengthCm + widthCm);
    return girthCm * depthCm / 1e4;
  }
}
