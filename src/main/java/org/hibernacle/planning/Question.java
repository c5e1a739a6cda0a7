package org.hibernacle.planning;

import java.util.Map;
import java.util.OptionalInt;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;

/**
 * What a plan is asked for.
 *
 * @param inventory plants, places, settings
 * @param file temperatures, several winters if possible
 * @param loggers readings in places, by name of the place; they replace the model where they are
 * @param seasonYear year in whose autumn the planned season begins; empty for the season after the
 *     last usable winter
 */
public record Question(
    Inventory inventory,
    TemperatureSeries file,
    Map<String, TemperatureSeries> loggers,
    OptionalInt seasonYear) {
  public Question {
    loggers = Map.copyOf(loggers);
  }

  /** The same question of another inventory. */
  Question with(Inventory other) {
    return new Question(other, file, loggers, seasonYear);
  }
}
