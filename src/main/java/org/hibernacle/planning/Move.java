package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;

/**
 * The change between two stays.
 *
 * @param kind in the keeper's words
 * @param date on which the pot is carried
 * @param from where it stood
 * @param to where it goes
 * @param because going away, the first rule broken if the plant stayed until its next move; coming
 *     back, the rule broken had it come some moving days earlier; empty where none is
 * @param ownDays each winter's own date, earliest first, as days of the planned season: going away
 *     the last safe day to leave, coming back the first safe day to come; winters in which nothing
 *     would ever have threatened are not among them. For information: the date is one for all
 * @param made whether it was made already, by the keeper's log
 */
public record Move(
    Kind kind,
    LocalDate date,
    Place from,
    Place to,
    Optional<Violation> because,
    List<LocalDate> ownDays,
    boolean made) {
  /** A move that is still to come. */
  public Move(
      Kind kind,
      LocalDate date,
      Place from,
      Place to,
      Optional<Violation> because,
      List<LocalDate> ownDays) {
    this(kind, date, from, to, because, ownDays, false);
  }

  public Move {
    ownDays = ownDays.stream().sorted().toList();
  }

  /** The earliest of the winters' own dates. */
  public Optional<LocalDate> earliest() {
    return ownDays.stream().findFirst();
  }

  /** The middle one of the winters' own dates, the earlier of two. */
  public Optional<LocalDate> typical() {
    return ownDays.stream().skip(Math.max(0, ownDays.size() - 1) / 2).findFirst();
  }

  /** The latest of the winters' own dates. */
  public Optional<LocalDate> latest() {
    return ownDays.stream().skip(Math.max(0, ownDays.size() - 1)).findFirst();
  }

  /** In the keeper's words. */
  public enum Kind {
    /** Home to the ground. */
    MOVE_DOWN,
    /** To anything with a roof. */
    MOVE_IN,
    /** From a roofed place to the ground in spring. */
    STEP_OUT,
    /** Back home. */
    RETURN,
    /** The pot is wrapped where it stands. */
    WRAP,
    /** The wrap comes off again. */
    UNWRAP;

    /** What a move between two places is called for a plant of that home. */
    public static Kind of(Place from, Place to, String home) {
      if (to.wrapOf().isPresent()) {
        return WRAP;
      }
      if (to.name().equals(home)) {
        return from.wrapOf().isPresent() ? UNWRAP : RETURN;
      }
      if (to.roofed()) {
        return MOVE_IN;
      }
      return from.roofed() ? STEP_OUT : MOVE_DOWN;
    }

    /** Whether the pot is carried at all. */
    public boolean carries() {
      return this != WRAP && this != UNWRAP;
    }

    /** Whether it brings the plant towards home. */
    public boolean homeward() {
      return this == STEP_OUT || this == RETURN || this == UNWRAP;
    }
  }

  /**
   * Nothing goes home before this day, a fortnight past midwinter: what was put away stays away
   * until the coldest time is past (common practice, no source). A few winters on file may show no
   * frost after December, which is luck and no rule.
   */
  public static LocalDate earliestReturn(Season season) {
    return season.midwinter().plusDays(14);
  }
}
