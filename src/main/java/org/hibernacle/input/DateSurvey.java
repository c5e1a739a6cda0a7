package org.hibernacle.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Phrase;

/**
 * Finds how the dates of a file are written by trying every way on the whole column: 03/04/2025
 * alone does not tell its month. Keeps counts only.
 */
final class DateSurvey {
  /** A way that read none of so many cells, of which another read all, is tried no more. */
  private static final int CELLS_TRIED = 1000;

  private final List<Trial> trials;
  private int cells;
  private String firstCell = "";
  private String lastStation = "";

  DateSurvey(List<DateRule> patterns) {
    trials = new ArrayList<>(patterns.stream().map(Trial::new).toList());
  }

  /**
   * @param station whose order of rows is looked at; a new one starts anew
   */
  void add(String cell, String station) {
    if (!station.equals(lastStation)) {
      lastStation = station;
      trials.forEach(trial -> trial.last = LocalDate.MIN);
    }
    if (firstCell.isEmpty()) {
      firstCell = cell;
    }
    trials.forEach(trial -> trial.add(cell));
    if (++cells == CELLS_TRIED && trials.stream().anyMatch(trial -> trial.read == cells)) {
      trials.removeIf(trial -> trial.read == 0);
    }
  }

  /**
   * The way that reads the most dates. Between two that read equally many, the one that puts them
   * in order. Reports an error and is empty if none or more than one is left.
   */
  Optional<DateRule> decide(Phrase where, Problems problems) {
    int most = trials.stream().mapToInt(trial -> trial.read).max().orElse(0);
    if (most == 0) {
      Phrase cure =
          DayNumber.looksLike(firstCell)
              ? Phrase.of("counted-days", DayNumber.OPTION)
              : Phrase.of("another-way");
      if (firstCell.isEmpty()) {
        problems.error("IN-310.no-rows", where, cure);
      } else {
        problems.error("IN-310.no-way", where, cure, firstCell);
      }
      return Optional.empty();
    }
    List<Trial> best = new ArrayList<>(trials.stream().filter(t -> t.read == most).toList());
    if (best.size() > 1 && best.stream().anyMatch(t -> t.ascending)) {
      best.removeIf(t -> !t.ascending);
    }
    if (best.size() > 1) {
      problems.error(
          "IN-311",
          where,
          firstCell,
          Phrase.joined("or", best.stream().map(t -> t.pattern.told()).toList()));
      return Optional.empty();
    }
    return Optional.of(best.get(0).pattern);
  }

  private static final class Trial {
    private final DateRule pattern;
    private final DateRule reading;
    private int read;
    private boolean ascending = true;
    private LocalDate last = LocalDate.MIN;

    Trial(DateRule pattern) {
      this.pattern = pattern;
      this.reading = DayMemory.of(pattern);
    }

    void add(String cell) {
      reading
          .read(cell)
          .ifPresent(
              stamp -> {
                read++;
                ascending &= !stamp.day().isBefore(last);
                last = stamp.day();
              });
    }
  }
}
