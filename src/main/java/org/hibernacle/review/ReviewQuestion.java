package org.hibernacle.review;

import java.util.Map;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.model.TemperatureSeries;

/**
 * What a review is asked for.
 *
 * @param inventory of the season plan
 * @param log what was planned and what the keeper wrote
 * @param actual temperatures of the season; earlier years in it serve the soil and are told from it
 * @param loggers readings in places, by name of the place
 */
public record ReviewQuestion(
    Inventory inventory,
    SeasonLog log,
    TemperatureSeries actual,
    Map<String, TemperatureSeries> loggers) {
  public ReviewQuestion {
    loggers = Map.copyOf(loggers);
  }
}
