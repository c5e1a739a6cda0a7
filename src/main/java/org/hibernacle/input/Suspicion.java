package org.hibernacle.input;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.model.Phrase;

/**
 * Days that are hard to believe for one reason.
 *
 * @param rule the reason
 * @param days one after the other, at least one
 * @param found what stands there: {@code 14 to 15 °C}
 */
record Suspicion(QualityRule rule, List<LocalDate> days, Phrase found) {
  Suspicion {
    days = List.copyOf(days);
  }

  /** {@code 2025-01-16} or {@code 2025-01-16 to 2025-01-18}. */
  Phrase when() {
    LocalDate first = days.get(0);
    LocalDate last = days.get(days.size() - 1);
    return first.equals(last) ? Phrase.of("day", first) : Phrase.of("day-to-day", first, last);
  }
}
