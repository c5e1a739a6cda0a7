package org.hibernacle.report;

import java.util.List;
import org.hibernacle.review.DoseResponse;
import org.hibernacle.review.DoseResponse.Bounds;
import org.hibernacle.review.DoseResponse.Lt50;
import org.hibernacle.review.DoseResponse.Point;

/** Which cold roots of a species stood and which not. */
final class DoseTable {
  private DoseTable() {}

  static Section write(ReviewMaterial m) {
    String degrees = m.measures().degrees();
    boolean none = m.review().doseResponses().isEmpty();
    Table table =
        new Table(m.words(), "dose", Table.WORKBOOK_ONLY)
            .intro(m.words().text(none ? "intro.dose.none" : "intro.dose"))
            .column("roots-of", 24)
            .column("rows", 9)
            .column("rows-harmed", 9)
            .column("coldest-survived", 13, degrees)
            .numbers()
            .column("warmest-harmed", 13, degrees)
            .numbers()
            .column("half-harmed", 13, degrees)
            .numbers()
            .column("half-error", 11, m.measures().degreesApart())
            .numbers()
            .column("half-low", 11, degrees)
            .numbers()
            .column("half-high", 11, degrees)
            .numbers()
            .column("dose-says", 30)
            .column("dose-points", 46);
    m.review().doseResponses().forEach(d -> table.row(StyleRole.PLAIN, cells(m, d)));
    return table.build();
  }

  private static List<Cell> cells(ReviewMaterial m, DoseResponse dose) {
    List<Point> harmed = dose.points().stream().filter(Point::harmed).toList();
    double coldestC =
        dose.points().stream()
            .filter(p -> !p.harmed())
            .mapToDouble(Point::coldC)
            .min()
            .orElse(Double.NaN);
    double warmestC = harmed.stream().mapToDouble(Point::coldC).max().orElse(Double.NaN);
    Cell gap = new Cell.Gap();
    Cell half = gap;
    Cell error = gap;
    Cell low = gap;
    Cell high = gap;
    String says = "";
    if (dose.found() instanceof Lt50 lt50) {
      half = m.measures().temperatureCell(lt50.coldC());
      error = m.measures().differenceCell(lt50.standardErrorK());
      low = m.measures().temperatureCell(lt50.lowC());
      high = m.measures().temperatureCell(lt50.highC());
      says = m.words().text("dose.fitted");
    } else if (dose.found() instanceof Bounds bounds) {
      says = m.words().of("dose", bounds.why());
    }
    return List.of(
        new Cell.Text(dose.taxon()),
        Measures.count(dose.points().size()),
        Measures.count(harmed.size()),
        degrees(m, coldestC),
        degrees(m, warmestC),
        half,
        error,
        low,
        high,
        new Cell.Text(says),
        new Cell.Text(
            dose.points().stream().map(p -> point(m, p)).collect(m.words().listingApart())));
  }

  private static Cell degrees(ReviewMaterial m, double celsius) {
    return Double.isNaN(celsius) ? new Cell.Gap() : m.measures().temperatureCell(celsius);
  }

  private static String point(ReviewMaterial m, Point point) {
    return m.words()
        .text(
            point.harmed() ? "dose.harmed" : "dose.stood",
            point.id(),
            m.measures().temperature(point.coldC()));
  }
}
