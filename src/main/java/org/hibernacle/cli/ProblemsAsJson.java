package org.hibernacle.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hibernacle.input.ProblemSpot;
import org.hibernacle.model.Diagnostic;

/** Problems as values for scripts; what a problem does not name is left out. */
final class ProblemsAsJson {
  private ProblemsAsJson() {}

  static List<Object> list(List<Diagnostic> problems) {
    return problems.stream().<Object>map(ProblemsAsJson::one).toList();
  }

  private static Map<String, Object> one(Diagnostic problem) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
    values.put("code", problem.code());
    values.put("where", problem.where());
    ProblemSpot spot = ProblemSpot.of(problem);
    values.put("file", spot.file());
    spot.sheet().ifPresent(sheet -> values.put("sheet", sheet));
    spot.cell().ifPresent(cell -> values.put("cell", cell));
    spot.line().ifPresent(line -> values.put("line", line));
    values.put("found", problem.found());
    if (!problem.expected().isBlank()) {
      values.put("expected", problem.expected());
    }
    values.put("consequence", problem.consequence());
    return values;
  }
}
