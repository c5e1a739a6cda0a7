package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is to be known in one place.
 *
 * @param title its name
 * @param subtitle what sort of place it is
 * @param facts how cold, how warm, how full, and the rules that hold there
 * @param room how full it gets, week by week
 * @param tables what is to be done there, what stands there
 */
public record PlacePage(
    String title,
    String subtitle,
    List<SeasonReport.Fact> facts,
    RoomChart room,
    List<Section> tables) {

  /**
   * Floor in use.
   *
   * @param title with the unit
   * @param weeks in order, without gaps
   * @param room there is, in the same unit; empty where it is not known
   * @param roomWords for the line of the room there is
   */
  public record RoomChart(String title, List<Week> weeks, OptionalDouble room, String roomWords) {
    public RoomChart {
      weeks = List.copyOf(weeks);
    }
  }

  /**
   * One week.
   *
   * @param start first day
   * @param used on its fullest day, in the keeper's unit
   * @param over whether that is more than there is
   */
  public record Week(LocalDate start, double used, boolean over) {}

  public PlacePage {
    facts = List.copyOf(facts);
    tables = List.copyOf(tables);
  }
}
