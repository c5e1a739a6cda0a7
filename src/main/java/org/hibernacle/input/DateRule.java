package org.hibernacle.input;

import java.util.Optional;
import org.hibernacle.model.Phrase;

/** One way to read the dates of a file. */
interface DateRule {
  /** The way as a keeper would write it: {@code dd.MM.yyyy}. */
  String shown();

  /** The same for a reader of messages. */
  default Phrase told() {
    return Phrase.verbatim(shown());
  }

  /** Reads a date, or a date with its time; empty if it is not written in this way. */
  Optional<Stamp> read(String cell);
}
