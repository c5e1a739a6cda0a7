package org.hibernacle.report;

import java.text.MessageFormat;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import org.hibernacle.model.Phrasebook;
import org.hibernacle.model.Place;

/**
 * Every word the reports print, from the bundle {@code org/hibernacle/report/words.properties} or
 * its translation. A further language is one more file, {@code words_de.properties}; keys that it
 * lacks are taken from the English one.
 *
 * <p>All texts are {@link MessageFormat} patterns, those without arguments too: an apostrophe is
 * written twice.
 */
public final class Words {
  static final String BUNDLE = "org.hibernacle.report.words";

  private final Locale locale;
  private final ResourceBundle bundle;

  Words(Locale locale, ResourceBundle bundle) {
    this.locale = locale;
    this.bundle = bundle;
  }

  /** Words, dates and numbers of that language; the machine's own language plays no part. */
  public static Words of(Locale locale) {
    ResourceBundle.Control noDefaultLocale =
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
    return new Words(locale, ResourceBundle.getBundle(BUNDLE, locale, noDefaultLocale));
  }

  /** The language asked for, also where only some of its words are there. */
  public Locale locale() {
    return locale;
  }

  /**
   * The text of the key.
   *
   * @param key of the bundle; a missing one throws {@link java.util.MissingResourceException}
   * @param arguments of its pattern
   */
  public String text(String key, Object... arguments) {
    return new MessageFormat(bundle.getString(key), locale).format(arguments);
  }

  /**
   * The pattern of a day, in the letters of {@link java.time.format.DateTimeFormatter}. A language
   * without a translation has English words all the same, but its own days.
   *
   * @param key of the bundle: {@code date.short}
   */
  String datePattern(String key) {
    boolean untranslated = Locale.ROOT.equals(bundle.getLocale());
    boolean english = locale.getLanguage().equals(Locale.ENGLISH.getLanguage());
    return untranslated && !english ? DatePatterns.of(key, locale) : text(key);
  }

  /** The word of a constant: key {@code prefix.NAME}. */
  public String of(String prefix, Enum<?> constant) {
    return text(prefix + "." + constant.name());
  }

  /** What a place is called: the keeper's name, also where it tells of wrapped pots. */
  public String place(String name) {
    return name.endsWith(Place.WRAPPED)
        ? text("place.wrapped", name.substring(0, name.length() - Place.WRAPPED.length()))
        : name;
  }

  /** Some texts as a list: {@code P01, P07, P12}. */
  public String listed(Collection<String> texts) {
    return String.join(text("list.joint"), texts);
  }

  /** Some texts as a list whose members may hold commas: {@code Shed: P01, P07; Hall: P12}. */
  public String listedApart(Collection<String> texts) {
    return String.join(text("list.joint-apart"), texts);
  }

  /** Joins texts as {@link #listed} does. */
  public Collector<CharSequence, ?, String> listing() {
    return Collectors.joining(text("list.joint"));
  }

  /** Joins texts as {@link #listedApart} does. */
  public Collector<CharSequence, ?, String> listingApart() {
    return Collectors.joining(text("list.joint-apart"));
  }

  /** Some sentences one after the other. */
  public String sentences(List<String> sentences) {
    return String.join(text("list.joint-sentences"), sentences);
  }

  /** The messages of the other chapters in this language, their days like those of past winters. */
  Phrasebook messages() {
    return Phrasebook.of(locale, new Display(this)::pastDay);
  }

  /** Whether there is such a key. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }
}
