package org.hibernacle.oracle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.model.Container;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Violation;
import org.hibernacle.review.Cause;
import org.junit.jupiter.api.Test;

/** The judge itself, held against tables from outside; their origin is in checks/SOURCES.md. */
class OraclePartsTest {
  private static final Place OPEN_BENCH =
      new Place(
          "Bench",
          PlaceKind.BENCH,
          OptionalDouble.empty(),
          Place.Sun.FULL,
          Place.Wind.OPEN,
          Place.Cover.NONE,
          0,
          Light.BRIGHT,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          0,
          0,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false,
          "");

  @Test
  void sharesNothingWithTheProgramButItsRecords() {
    DescribedPredicate<JavaClass> records =
        JavaClass.Predicates.resideInAnyPackage(
                "java..", "org.jspecify..", "org.hibernacle.model", "org.hibernacle.oracle")
            .or(JavaClass.Predicates.equivalentTo(Stay.class))
            .or(JavaClass.Predicates.equivalentTo(Rule.class))
            .or(JavaClass.Predicates.equivalentTo(Violation.class))
            .or(JavaClass.Predicates.equivalentTo(Cause.class));
    classes()
        .that()
        .haveNameNotMatching(".*(Test|JudgedPlan|Complaints|package-info).*")
        .should()
        .onlyDependOnClassesThat(records)
        .because("a mistake that judge and judged share can not be seen")
        .check(new ClassFileImporter().importPackages("org.hibernacle.oracle"));
  }

  /** One pass at noon, up to 65 degrees: 0.03 h. */
  @Test
  void knowsTheLengthOfDays() {
    List<CSVRecord> rows =
        CheckTable.rows("sunrise_sunset").stream()
            .filter(row -> Math.abs(number(row, "latitude")) <= 65)
            .toList();
    assertEquals(42, rows.size());
    for (CSVRecord row : rows) {
      double hours = Sky.dayLengthHours(number(row, "latitude"), LocalDate.parse(row.get("date")));
      assertEquals(number(row, "ephem_daylength_h"), hours, 0.03, row.toString());
    }
  }

  @Test
  void countsChillAndWarmth() {
    for (CSVRecord row : CheckTable.rows("chill_constant_1000h")) {
      double airC = number(row, "temp_C");
      Chill chill = new Chill();
      // The table's first value is the state before any hour, so that 999 hours count.
      for (int hour = 1; hour < 1000; hour++) {
        chill.hour(airC);
      }
      assertEquals(number(row, "chill_portions"), chill.portions(), 1e-6, row.toString());
      assertEquals(number(row, "gdh_asymcur"), 1000 * Chill.warmth(airC), 1e-4, row.toString());
    }
  }

  /** What flows into a ball is what changes its heat: in a bath of 0 °C half its ice would stay. */
  @Test
  void aBallThawsOnlyWithTheHeatItIsGiven() {
    Container fiveLitres =
        new Container(Container.Shape.ROUND, 23.4, 23.4, 11.7, 5, Container.Material.CERAMIC);
    Pot pot = new Pot(fiveLitres, 2);
    Pot.Contact contact = pot.contact(OPEN_BENCH, false);
    double stepS = 60;
    double hours = 0;
    while (pot.iceShare() < 0.5) {
      pot.step(contact, -5, 0, -5, stepS);
      hours += stepS / 3600;
    }
    assertEquals(0, pot.edgeC());
    // By hand: edge of 1.75 L to half its ice, 79 kJ, plus cooling all 5 L by 2 K, 20 kJ, through
    // (0.086 + 0.043) m2 * 1 / (1/13.3 + 0.010) + 0.043 m2 * 13.3 = 2.1 W/K, in series with half
    // the edge of 2.4 W/K * 2 / ln(1 / 0.825) = 25 W/K, is 1.9 W/K at 5 to 7 K.
    assertEquals(99e3 / (1.9 * 5.1) / 3600, hours, 0.3);
    for (int step = 0; step < 1000; step++) {
      pot.step(contact, 0, 0, 0, stepS);
    }
    assertEquals(0, pot.edgeC());
  }

  /** Sturm and others 1997 at 0.3 g/cm3. */
  @Test
  void snowHoldsBackWhatTheTableSays() {
    CSVRecord row =
        CheckTable.rows("thermal").stream()
            .filter(r -> r.get("group").equals("snow") && r.get("case").equals("k_rho0.3"))
            .findFirst()
            .orElseThrow();
    assertEquals(1 / number(row, "expected"), Blanket.m2KPerW(1), 1e-6);
  }
}
