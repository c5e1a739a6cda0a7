package org.hibernacle.input;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.hibernacle.model.DateSpan;

/** Reads lists of weekdays and of spans of days. */
final class DayLists {
  private static final Pattern BETWEEN_DAYS = Pattern.compile("[,;/&+\\s]+(?:and\\s+)?");
  private static final Pattern BETWEEN_SPANS = Pattern.compile("[;\\n\\r]+");
  private static final Pattern FROM_TO = Pattern.compile("\\s+to\\s+");

  private DayLists() {}

  /** Weekdays such as {@code Sat, Sun}; also {@code weekend}, {@code weekdays}, {@code any}. */
  static Optional<Set<DayOfWeek>> weekdays(String text) {
    EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String word : BETWEEN_DAYS.split(text.strip(), -1)) {
      switch (Words.key(word)) {
        case "any", "all", "every", "daily" -> days.addAll(EnumSet.allOf(DayOfWeek.class));
        case "weekend", "weekends" -> days.addAll(EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY));
        case "weekday", "weekdays" ->
            days.addAll(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));
        case "day", "days" -> {}
        default -> {
          Optional<DayOfWeek> day = Choice.WEEKDAY.find(word);
          if (day.isEmpty()) {
            return Optional.empty();
          }
          days.add(day.get());
        }
      }
    }
    return days.isEmpty() ? Optional.empty() : Optional.of(days);
  }

  /**
   * Spans such as {@code 2026-12-20 to 2027-01-06; 2027-02-14}. The last day named belongs to the
   * span.
   */
  static Optional<List<DateSpan>> spans(String text) {
    List<DateSpan> spans = new ArrayList<>();
    for (String part : BETWEEN_SPANS.split(text, -1)) {
      if (!part.isBlank()) {
        Optional<DateSpan> span = span(part.strip());
        if (span.isEmpty()) {
          return Optional.empty();
        }
        spans.add(span.get());
      }
    }
    return spans.isEmpty() ? Optional.empty() : Optional.of(spans);
  }

  private static Optional<DateSpan> span(String text) {
    String[] ends = FROM_TO.split(text, -1);
    Optional<LocalDate> first = DayText.read(ends[0]);
    Optional<LocalDate> last = DayText.read(ends[ends.length - 1]);
    if (ends.length > 2 || first.isEmpty() || last.isEmpty() || last.get().isBefore(first.get())) {
      return Optional.empty();
    }
    return Optional.of(new DateSpan(first.get(), last.get().plusDays(1)));
  }
}
