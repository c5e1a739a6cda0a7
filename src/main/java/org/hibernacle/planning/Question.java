package org.hibernacle.planning;

import java.util.Map;
import java.util.Optional;
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
 * @param progress of the season, for a plan made within it; the season is then the one that holds
 *     its day, and {@code seasonYear} plays no part
 * @param pace is told how far planning has come; plays no part in the answer
 */
public record Question(
    Inventory inventory,
    TemperatureSeries file,
    Map<String, TemperatureSeries> loggers,
    OptionalInt seasonYear,
    Optional<Progress> progress,
    Pace pace) {
  public Question {
    loggers = Map.copyOf(loggers);
  }

  /** Nobody is told how far it has come. */
  public Question(
      Inventory inventory,
      TemperatureSeries file,
      Map<String, TemperatureSeries> loggers,
      OptionalInt seasonYear,
      Optional<Progress> progress) {
    this(inventory, file, loggers, seasonYear, progress, Pace.UNHEARD);
  }

  /** A plan before the season. */
  public Question(
      Inventory inventory,
      TemperatureSeries file,
      Map<String, TemperatureSeries> loggers,
      OptionalInt seasonYear) {
    this(inventory, file, loggers, seasonYear, Optional.empty());
  }

  /** The same question of another inventory, asked in passing: nobody is told how far it is. */
  Question with(Inventory other) {
    return new Question(other, file, loggers, seasonYear, progress, Pace.UNHEARD);
  }
}
