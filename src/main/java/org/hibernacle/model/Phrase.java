package org.hibernacle.model;

import java.util.List;

/**
 * Something to say that is put into words late, in the language of whoever reads it.
 *
 * @param key of the bundle {@code org/hibernacle/model/messages.properties}
 * @param arguments of its pattern; {@link Phrasebook} tells what they may be
 */
public record Phrase(String key, List<Object> arguments) {
  public Phrase {
    arguments = List.copyOf(arguments);
    assert Phrasebook.ENGLISH.takes(List.of(key), arguments) : key + " does not take " + arguments;
  }

  /** The phrase of that key. */
  public static Phrase of(String key, Object... arguments) {
    return new Phrase(key, List.of(arguments));
  }

  /** A text that is the same in every language, such as the name of a file. */
  public static Phrase verbatim(String text) {
    return of("verbatim", text);
  }

  /** In English. */
  @Override
  public String toString() {
    return Phrasebook.ENGLISH.text(this);
  }
}
