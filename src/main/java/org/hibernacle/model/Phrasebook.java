package org.hibernacle.model;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernacle.model.Diagnostic.Severity;

/**
 * Puts messages into the words of one language, from the bundle {@code
 * org/hibernacle/model/messages.properties} or its translation {@code messages_xx.properties}; keys
 * that a translation lacks are taken from the English one.
 *
 * <p>All texts are {@link MessageFormat} patterns. An argument is a text that is the same in every
 * language, a number, a day, a {@link Phrase}, a constant, whose word is that of the key {@code
 * Type.NAME}, or a list of such.
 */
public final class Phrasebook {
  static final String BUNDLE = "org.hibernacle.model.messages";

  /**
   * English as on the screen and for scripts: days like 2026-11-07, numbers with a point and
   * without marks between thousands.
   */
  public static final Phrasebook ENGLISH =
      new Phrasebook(
          new Locale.Builder().setLanguage("en").setRegion("US").setVariant("POSIX").build(),
          ResourceBundle.getBundle(BUNDLE, Locale.ROOT),
          LocalDate::toString);

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)[,}]");

  private final Locale locale;
  private final ResourceBundle bundle;
  private final Function<LocalDate, String> days;

  Phrasebook(Locale locale, ResourceBundle bundle, Function<LocalDate, String> days) {
    this.locale = locale;
    this.bundle = bundle;
    this.days = days;
  }

  /**
   * Words of that language; the machine's own language plays no part.
   *
   * @param days how a day is written in it
   */
  public static Phrasebook of(Locale locale, Function<LocalDate, String> days) {
    ResourceBundle.Control noDefaultLocale =
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
    return new Phrasebook(locale, ResourceBundle.getBundle(BUNDLE, locale, noDefaultLocale), days);
  }

  /** The phrase in words. */
  public String text(Phrase phrase) {
    return text(phrase.key(), phrase.arguments());
  }

  /** Where a message belongs. */
  public String where(Diagnostic message) {
    return text(message.place());
  }

  /** What stands there. */
  public String found(Diagnostic message) {
    return part(message, "found");
  }

  /** What would be right; empty where nothing is wrong. */
  public String expected(Diagnostic message) {
    return part(message, "expected");
  }

  /** What the program did about it. */
  public String consequence(Diagnostic message) {
    return part(message, "consequence");
  }

  private String part(Diagnostic message, String part) {
    return key(message.severity(), message.key(), part)
        .map(key -> text(key, message.arguments()))
        .orElse("");
  }

  /** The key of the message itself, else that of all with its code, else of all so severe. */
  private Optional<String> key(Severity severity, String message, String part) {
    String code = Diagnostic.code(message);
    return List.of(message, code, severity.name()).stream()
        .map(key -> key + "." + part)
        .filter(bundle::containsKey)
        .findFirst();
  }

  private String text(String key, List<Object> arguments) {
    Object[] shown = arguments.stream().map(this::shown).toArray();
    return new MessageFormat(bundle.getString(key), locale).format(shown);
  }

  private Object shown(Object argument) {
    if (argument instanceof Phrase phrase) {
      return text(phrase);
    } else if (argument instanceof LocalDate day) {
      return days.apply(day);
    } else if (argument instanceof Enum<?> constant) {
      return text(constant.getDeclaringClass().getSimpleName() + "." + constant.name(), List.of());
    } else if (argument instanceof Collection<?> several) {
      return several.stream()
          .map(one -> shown(one).toString())
          .collect(Collectors.joining(text("list.joint", List.of())));
    }
    return argument instanceof Number ? argument : argument.toString();
  }

  /** Whether the texts of the message are there and take the arguments, each of them. */
  boolean takes(Severity severity, String message, List<Object> arguments) {
    List<String> keys =
        List.of("found", "expected", "consequence").stream()
            .flatMap(part -> key(severity, message, part).stream())
            .toList();
    return key(severity, message, "found").isPresent() && takes(keys, arguments);
  }

  /** Whether the patterns of the keys are there and take the arguments, each of them. */
  boolean takes(List<String> keys, List<Object> arguments) {
    Set<Integer> taken = new TreeSet<>();
    for (String key : keys) {
      if (!bundle.containsKey(key)) {
        return false;
      }
      Matcher placeholder = PLACEHOLDER.matcher(bundle.getString(key));
      while (placeholder.find()) {
        taken.add(Integer.valueOf(placeholder.group(1)));
      }
    }
    return taken.equals(IntStream.range(0, arguments.size()).boxed().collect(Collectors.toSet()));
  }
}
