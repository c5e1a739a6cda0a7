package org.hibernacle.input;

import java.util.Optional;

/** One way to read the dates of a file. */
interface DateRule {
  /** The way as a keeper would write it: {@code dd.MM.yyyy}. */
  String shown();

  /** Reads a date, or a date with its time; empty if it is not written in this way. */
  Optional<Stamp> read(String cell);
}
