package org.hibernacle.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;

/** A plan in short, as values for scripts; days are written 2026-11-07. */
final class PlanAsJson {
  private PlanAsJson() {}

  /**
   * The plan.
   *
   * @param written files that were written
   * @param wouldWrite files that a run would write that is not dry
   */
  static Map<String, Object> of(
      SeasonPlan plan,
      String digest,
      List<Diagnostic> problems,
      List<Path> written,
      List<Path> wouldWrite) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("season", plan.season().toString());
    values.put("digest", digest);
    values.put("wintersOnFile", plan.winters().size());
    values.put("plants", plan.plants().stream().<Object>map(PlanAsJson::plant).toList());
    values.put("unprotected", plan.unprotected().map(p -> p.plant().id()).toList());
    values.put(
        "movingDays",
        plan.movesByDate().stream().map(m -> m.move().date().toString()).distinct().toList());
    values.put("problems", ProblemsAsJson.list(problems));
    values.put("written", written.stream().map(Path::toString).toList());
    values.put("wouldWrite", wouldWrite.stream().map(Path::toString).toList());
    return values;
  }

  private static Map<String, Object> plant(PlantPlan plan) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("id", plan.plant().id());
    values.put("name", plan.plant().name());
    values.put("verdict", word(plan.verdict()));
    values.put("moves", plan.moves().stream().<Object>map(PlanAsJson::move).toList());
    return values;
  }

  private static Map<String, Object> move(Move move) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("kind", word(move.kind()));
    values.put("date", move.date().toString());
    values.put("from", move.from().name());
    values.put("to", move.to().name());
    return values;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
