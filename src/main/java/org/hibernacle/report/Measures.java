package org.hibernacle.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hibernacle.model.Settings.Units;

/**
 * Quantities in the units the keeper reads: as a phrase, and as a cell below a heading that names
 * the unit. Inside the program everything is metric; this is the only place that converts.
 */
public final class Measures {
  private static final double LITRES_PER_GALLON = 3.785411784;
  private static final double KG_PER_POUND = 0.45359237;
  private static final double M2_PER_SQUARE_FOOT = 0.09290304;
  private static final double CM_PER_INCH = 2.54;

  private final Display display;
  private final boolean metric;

  public Measures(Display display, Units units) {
    this.display = display;
    this.metric = units == Units.METRIC;
  }

  /** {@code °C} or {@code °F}. */
  public String degrees() {
    return metric ? "°C" : "°F";
  }

  /** Unit of a difference: {@code K}, or {@code °F} without the 32. */
  public String degreesApart() {
    return metric ? "K" : "°F";
  }

  public String litres() {
    return metric ? "L" : "gal";
  }

  public String kilograms() {
    return metric ? "kg" : "lb";
  }

  public String squareMetres() {
    return metric ? "m2" : "sq ft";
  }

  /** {@code -6.1 °C}. */
  public String temperature(double celsius) {
    return degreesShown(degrees(celsius));
  }

  /** The number that {@link #temperature} prints. */
  double shown(double celsius) {
    return rounded(degrees(celsius));
  }

  /** The number that {@link #difference} prints. */
  double shownDifference(double kelvin) {
    return rounded(degreesApart(kelvin));
  }

  /** A temperature in the keeper's unit already. */
  String degreesShown(double value) {
    return display.number(value, 1) + " " + degrees();
  }

  private static double rounded(double value) {
    return new BigDecimal(value).setScale(1, RoundingMode.HALF_UP).doubleValue();
  }

  /** A round temperature, without decimals where it has none: {@code 5 °C}. */
  String threshold(double celsius) {
    double shown = degrees(celsius);
    return display.number(shown, shown == Math.rint(shown) ? 0 : 1) + " " + degrees();
  }

  /** {@code 2.0 K}. */
  public String difference(double kelvin) {
    return display.number(degreesApart(kelvin), 1) + " " + degreesApart();
  }

  /** {@code 12.7 L}. */
  public String volume(double litres) {
    return display.number(gallons(litres), 1) + " " + litres();
  }

  /** {@code 23 kg}. */
  public String mass(double kg) {
    return display.number(pounds(kg), 0) + " " + kilograms();
  }

  /** {@code 1.9 m2}. */
  public String area(double m2) {
    return display.number(squareFeet(m2), 1) + " " + squareMetres();
  }

  /** The same, rounded up: so much is enough. */
  String areaAtLeast(double m2) {
    double shown = Math.ceil(squareFeet(m2) * 10 - 1e-6) / 10;
    return display.number(shown, 1) + " " + squareMetres();
  }

  /** {@code 20 cm}. */
  String depth(double cm) {
    return metric
        ? display.number(cm, 0) + " cm"
        : display.number(Math.ceil(cm / CM_PER_INCH - 1e-6), 0) + " in";
  }

  Cell temperatureCell(double celsius) {
    return cell(degrees(celsius), "", 1);
  }

  Cell differenceCell(double kelvin) {
    return cell(degreesApart(kelvin), "", 1);
  }

  /** With its unit, for a column of mixed units. */
  Cell temperatureWithUnit(double celsius) {
    return cell(degrees(celsius), degrees(), 1);
  }

  /** With its unit, for a column of mixed units. */
  Cell differenceWithUnit(double kelvin) {
    return cell(degreesApart(kelvin), degreesApart(), 1);
  }

  Cell volumeCell(double litres) {
    return cell(gallons(litres), "", 1);
  }

  /** With its unit, for a column of mixed units. */
  Cell volumeWithUnit(double litres) {
    return cell(gallons(litres), litres(), 0);
  }

  Cell massCell(double kg) {
    return cell(pounds(kg), "", 0);
  }

  /** With its unit, for a column of mixed units. */
  Cell massWithUnit(double kg) {
    return cell(pounds(kg), kilograms(), 0);
  }

  /** The number that {@link #area} prints. */
  double areaShown(double m2) {
    return rounded(squareFeet(m2));
  }

  Cell areaCell(double m2) {
    return areaCell(m2, StyleRole.PLAIN);
  }

  Cell areaCell(double m2, StyleRole role) {
    return new Cell.Quantity(squareFeet(m2), "", 1, role);
  }

  /** A plain count. */
  static Cell count(long count) {
    return new Cell.Quantity(count, "", 0);
  }

  /** For charts: °C, or °F. */
  double degrees(double celsius) {
    return metric ? celsius : celsius * 9 / 5 + 32;
  }

  /** A difference in the keeper's unit. */
  double degreesApart(double kelvin) {
    return metric ? kelvin : kelvin * 9 / 5;
  }

  private double gallons(double litres) {
    return metric ? litres : litres / LITRES_PER_GALLON;
  }

  private double pounds(double kg) {
    return metric ? kg : kg / KG_PER_POUND;
  }

  private double squareFeet(double m2) {
    return metric ? m2 : m2 / M2_PER_SQUARE_FOOT;
  }

  private static Cell cell(double value, String unit, int decimals) {
    return new Cell.Quantity(value, unit, decimals);
  }
}
