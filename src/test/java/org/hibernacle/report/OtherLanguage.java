package org.hibernacle.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A second language, made from the English bundles: each Latin letter outside of the patterns' own
 * syntax becomes a Cyrillic one.
 */
final class OtherLanguage {
  /**
   * Icelandic: no other test speaks it, and its dates and decimal comma are not those of English.
   */
  static final Locale TAG = Locale.forLanguageTag("is-IS");

  private static final String CYRILLIC = "абвгдежзийклмнопрстуфхцчшщ";

  /** Syntax of a pattern: arguments with their form, and the beginning of each of their choices. */
  private static final Pattern SYNTAX =
      Pattern.compile("\\{\\d+(,choice,|,number,[^}]*)?|\\\\u[0-9a-f]{4}|[|]?\\d+[#<]");

  private static final Path CLASSES = Path.of("target", "test-classes");

  private OtherLanguage() {}

  /** Writes the translation of a bundle, such as {@code org/hibernacle/report/words}. */
  static void write(String bundle) throws IOException {
    Properties english = new Properties();
    try (InputStream in = OtherLanguage.class.getResourceAsStream("/" + bundle + ".properties")) {
      english.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    Properties other = new Properties();
    for (String key : english.stringPropertyNames()) {
      String text = english.getProperty(key);
      other.setProperty(key, key.startsWith("date.") ? text : translated(text));
    }
    Files.createDirectories(file(bundle).getParent());
    try (Writer out = Files.newBufferedWriter(file(bundle), StandardCharsets.UTF_8)) {
      other.store(out, null);
    }
    ResourceBundle.clearCache();
  }

  /** Takes it away again, so that no other test meets it. */
  static void remove(String bundle) throws IOException {
    Files.deleteIfExists(file(bundle));
    ResourceBundle.clearCache();
  }

  private static Path file(String bundle) {
    return CLASSES.resolve(bundle + "_is.properties");
  }

  private static String translated(String pattern) {
    StringBuilder out = new StringBuilder();
    Matcher syntax = SYNTAX.matcher(pattern);
    int from = 0;
    while (syntax.find()) {
      out.append(cyrillic(pattern.substring(from, syntax.start()))).append(syntax.group());
      from = syntax.end();
    }
    return out.append(cyrillic(pattern.substring(from))).toString();
  }

  private static String cyrillic(String text) {
    StringBuilder out = new StringBuilder();
    for (char c : text.toCharArray()) {
      boolean small = c >= 'a' && c <= 'z';
      boolean capital = c >= 'A' && c <= 'Z';
      char letter = small || capital ? CYRILLIC.charAt(Character.toLowerCase(c) - 'a') : c;
      out.append(capital ? Character.toUpperCase(letter) : letter);
    }
    return out.toString();
  }
}
