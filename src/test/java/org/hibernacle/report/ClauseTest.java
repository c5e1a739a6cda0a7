package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Violation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With 2 K in hand, and a limit from -0.5 °C down kept by a ball at 0 °C (docs/planning.md). */
class ClauseTest {
  private static final Pattern FOUND = Pattern.compile("fallen to (.*) on 8 May");

  private final Material material =
      Material.of(Fixtures.plan(), Fixtures.facts(), Words.of(Locale.UK));
  private final Plant plant = material.plan().plants().get(1).plant();

  @ParameterizedTest
  @CsvSource({
    "-2.8, -1.1, -1.1 °C",
    "-2.8, -0.82, just below -0.8 °C",
    "-2.7, -0.73, just below -0.7 °C",
    "-2.74, -0.79, -0.8 °C",
    "-1.2, -0.3, -0.3 °C",
    "-1.2, -0.02, just below 0.0 °C",
    "-0.1, 0.4, 0.4 °C",
    "-0.2, 1.79, just below 1.8 °C"
  })
  void namesTheBoundWhereRoundedDigitsWouldKeepTheRule(
      double limitC, double foundC, String expected) {
    double keptC = limitC <= -0.5 ? Math.min(limitC + 2, 0) : limitC + 2;
    Violation violation =
        new Violation(
            Rule.ROOT_BALL,
            new Season(2023, false),
            LocalDate.of(2024, 5, 8),
            "Bench",
            foundC,
            limitC,
            keptC - foundC);
    Matcher found = FOUND.matcher(new Clause(material, plant, true).of(violation));
    found.find();
    assertEquals(expected, found.group(1));
  }
}
