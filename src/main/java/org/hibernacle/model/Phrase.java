package org.hibernacle.model;

import java.util.Collection;
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

  /** The text between quotes, as it stands in the keeper's file. */
  public static Phrase quoted(String text) {
    return of("quoted", text);
  }

  /** The first of them as a list, and how many more there are. */
  public static Phrase listed(Collection<?> all, int most) {
    List<Object> first = all.stream().limit(most).<Object>map(one -> one).toList();
    return all.size() <= most
        ? of("listed", first)
        : of("listed-some", first, all.size() - first.size());
  }

  /** Several joined by a phrase of two, such as {@code {0} or {1}}. */
  public static Phrase joined(String key, List<?> several) {
    return several.stream()
        .map(one -> one instanceof Phrase phrase ? phrase : verbatim(one.toString()))
        .reduce((before, one) -> of(key, before, one))
        .orElse(verbatim(""));
  }

  /** In English. */
  @Override
  public String toString() {
    return Phrasebook.ENGLISH.text(this);
  }
}
