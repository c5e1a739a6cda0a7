package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The season of each plant as a strip of days: where it stands, when it is carried, and what the
 * winters on file would have wanted.
 *
 * @param title above them
 * @param intro lines below the title
 * @param from first day of all strips, the first of a month
 * @param toExclusive day after the last, the first of a month
 * @param samples each pattern with its meaning
 * @param ownDays meaning of the line of early, typical and late days
 * @param plants in order
 */
public record Strips(
    String title,
    List<String> intro,
    LocalDate from,
    LocalDate toExclusive,
    List<Sample> samples,
    String ownDays,
    List<Strip> plants) {

  /** How a plant stands; each has a pattern of its own. */
  public enum Stand {
    BENCH,
    GROUND,
    ROOF
  }

  /**
   * A pattern and its meaning.
   *
   * @param stand shown
   * @param role its look
   * @param word for it
   */
  public record Sample(Stand stand, StyleRole role, String word) {}

  /**
   * One plant.
   *
   * @param id of it
   * @param name for people, with what is special about it
   * @param role its look: {@link StyleRole#DANGER} if it can not be protected, else {@link
   *     StyleRole#PLAIN}
   * @param bars where it stands, without gaps from the first to the last day of the strips
   * @param moves in order
   * @param words the moves told in words
   */
  public record Strip(
      String id, String name, StyleRole role, List<Bar> bars, List<Mark> moves, String words) {
    public Strip {
      bars = List.copyOf(bars);
      moves = List.copyOf(moves);
    }
  }

  /**
   * A stay, cut to the days of the strips.
   *
   * @param from first day
   * @param toExclusive day after the last
   * @param stand its pattern
   * @param role its look
   * @param words for it, the longest first; the first that fits is printed
   */
  public record Bar(
      LocalDate from, LocalDate toExclusive, Stand stand, StyleRole role, List<String> words) {
    public Bar {
      words = List.copyOf(words);
    }
  }

  /**
   * A move.
   *
   * @param date of the plan
   * @param role its look
   * @param own the winters' own days for it; empty where none wants it
   */
  public record Mark(LocalDate date, StyleRole role, Optional<OwnDays> own) {}

  /**
   * The spread of the winters' own days.
   *
   * @param early the earliest
   * @param typical the middle one
   * @param late the latest
   */
  public record OwnDays(LocalDate early, LocalDate typical, LocalDate late) {}

  public Strips {
    intro = List.copyOf(intro);
    samples = List.copyOf(samples);
    plants = List.copyOf(plants);
  }
}
