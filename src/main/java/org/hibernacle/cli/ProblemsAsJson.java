package org.hibernacle.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hibernacle.input.ProblemSpot;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;

/** Problems as values for scripts; what a problem does not name is left out. */
final class ProblemsAsJson {
  private ProblemsAsJson() {}

  /** All of them, after how many of each kind there are. */
  static Map<String, Object> counted(Problems problems) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("errors", count(problems, Severity.ERROR));
    all.put("warnings", count(problems, Severity.WARNING));
    all.put("notes", count(problems, Severity.NOTE));
    all.put("leftOut", problems.dropped());
    all.put("problems", list(problems.sorted()));
    return all;
  }

  static long count(Problems problems, Severity severity) {
    return problems.sorted().stream().map(Diagnostic::severity).filter(severity::equals).count();
  }

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
