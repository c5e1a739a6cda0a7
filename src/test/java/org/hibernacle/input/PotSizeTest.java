package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Shape;
import org.junit.jupiter.api.Test;

/** Checked against the geometry of the box and the cylinder; the allowances are our own choice. */
class PotSizeTest {
  private static Reading row(String headings, Object... values) {
    Object[] all = new Object[values.length + 3];
    all[0] = "A1";
    all[1] = "Acer palmatum";
    all[2] = "Bench";
    System.arraycopy(values, 0, all, 3, values.length);
    return TestBook.least().plants("Id|Species|Home|" + headings, all).read();
  }

  private static Container pot(String headings, Object... values) {
    return row(headings, values).sound().plants().get(0).container();
  }

  private static double cylinderL(double widthCm, double depthCm) {
    return Math.PI / 4 * widthCm * widthCm * depthCm / 1000;
  }

  @Test
  void aVolumeAloneBecomesARoundPotFourFifthsAsDeepAsWide() {
    Container pot = pot("Volume L", 5);
    assertEquals(Shape.ROUND, pot.shape());
    assertEquals(5, pot.volumeL());
    assertEquals(pot.lengthCm(), pot.widthCm());
    assertEquals(0.8 * 0.92, pot.depthCm() / pot.widthCm(), 1e-9);
    assertEquals(5, cylinderL(0.92 * pot.widthCm(), pot.depthCm()), 1e-9);
  }

  @Test
  void aRectangularPotHoldsItsBoxWithoutWallsAndRim() {
    Container pot = pot("Length cm|Width cm|Depth cm|Pot shape", 30, 40, 10, "rectangular");
    assertEquals(40, pot.lengthCm());
    assertEquals(30, pot.widthCm());
    assertEquals(9.2, pot.depthCm(), 1e-9);
    assertEquals(27.6 * 36.8 * 9.2 / 1000, pot.volumeL(), 1e-9);
  }

  @Test
  void aRoundPotNeedsOneWidthOnly() {
    Container pot = pot("Diameter cm|Depth cm|Pot shape", 25, 20, "round");
    assertEquals(25, pot.widthCm());
    assertEquals(cylinderL(23, 18.4), pot.volumeL(), 1e-9);
    assertEquals(pot, pot("Width cm|Depth cm|Pot shape", 25, 20, "round"));
    assertEquals(pot, pot("Width cm|Depth cm", 25, 20));
  }

  @Test
  void inchesAndGallonsComeToTheSamePot() {
    Container metric = pot("Length cm|Width cm|Depth cm|Volume L", 25.4, 50.8, 12.7, 7.570823568);
    Container us = pot("Length in|Width in|Depth in|Volume gal", 10, 20, 5, 2);
    assertEquals(metric.lengthCm(), us.lengthCm(), 1e-9);
    assertEquals(metric.depthCm(), us.depthCm(), 1e-9);
    assertEquals(metric.volumeL(), us.volumeL(), 1e-9);
  }

  @Test
  void withoutAShapeUnequalWidthsMeanRectangular() {
    assertEquals(Shape.RECTANGULAR, pot("Length cm|Width cm|Depth cm", 40, 30, 10).shape());
    assertEquals(Shape.ROUND, pot("Length cm|Width cm|Depth cm", 30, 30, 10).shape());
    assertTrue(
        row("Length cm|Width cm|Depth cm", 40, 30, 10)
            .text("IN-128")
            .contains("Pot shape is empty for 1 plant; rectangular is used."));
  }

  @Test
  void aVolumeFillsInTheMeasureThatIsMissing() {
    Container box = pot("Length cm|Width cm|Volume L|Pot shape", 40, 30, 10, "rectangular");
    assertEquals(10, 0.92 * 40 * 0.92 * 30 * box.depthCm() / 1000, 1e-9);
    Container deep = pot("Depth cm|Volume L", 20, 10);
    assertEquals(18.4, deep.depthCm(), 1e-9);
    assertEquals(10, cylinderL(0.92 * deep.widthCm(), 18.4), 1e-9);
    Container long40 = pot("Length cm|Volume L|Pot shape", 40, 10, "rectangular");
    assertEquals(
        10, 0.92 * long40.lengthCm() * 0.92 * long40.widthCm() * long40.depthCm() / 1000, 1e-9);
  }

  @Test
  void aVolumeThatThePotCanNotHoldGivesWayToTheSmallerOne() {
    Reading reading = row("Diameter cm|Depth cm|Volume L", 20, 15, 50);
    double derivedL = cylinderL(18.4, 13.8);
    assertEquals(derivedL, reading.sound().plants().get(0).container().volumeL(), 1e-9);
    assertTrue(
        reading
            .text("IN-134")
            .startsWith(
                "WARNING inventory.xlsx, sheet Plants, F2 [IN-134]:"
                    + " Volume L \"50\"; expected about 3.669 L for a pot of these measures; 3.669 L is"
                    + " used, the smaller of the two."),
        reading::text);
    assertEquals(
        4,
        row("Diameter cm|Depth cm|Volume L", 20, 15, 4)
            .sound()
            .plants()
            .get(0)
            .container()
            .volumeL());
  }

  @Test
  void aMeasureThatIsMissingIsNamed() {
    assertTrue(row("Length cm|Width cm|Depth cm", 40, 30, "").text("IN-132").contains("F2 "));
    assertTrue(
        row("Length cm|Width cm|Depth cm|Pot shape", 40, "", 10, "rectangular")
            .text("IN-132")
            .contains("E2 [IN-132]: Width cm is empty; expected the size of the pot: Volume, or"));
    assertTrue(row("Label", "none").text("IN-132").contains("row 2 [IN-132]: Volume L is empty"));
  }

  @Test
  void aBallTooSmallToReckonWithIsAnError() {
    Reading reading = row("Length cm|Width cm|Depth cm", 2, 2, 2);
    assertTrue(reading.inventory().isEmpty());
    assertTrue(
        reading.text("IN-133").contains("come to 0.005 L, 2 cm wide and 2 cm deep"), reading::text);
  }
}
