package org.hibernacle.input;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A text cut into words, so that names and headings can be compared without regard to case,
 * accents, spaces, hyphens, quotes and other signs.
 *
 * @param text as written
 * @param words in order
 */
record Words(String text, List<Word> words) {
  /**
   * One run of letters and digits.
   *
   * @param key small letters without accents
   * @param start of the word in the text, inclusive
   * @param end of the word in the text, exclusive
   */
  record Word(String key, int start, int end) {}

  Words {
    words = List.copyOf(words);
  }

  static Words of(String text) {
    List<Word> words = new ArrayList<>();
    int start = -1;
    for (int i = 0; i <= text.length(); i++) {
      boolean inside = i < text.length() && partOfWord(text.charAt(i));
      if (inside && start < 0) {
        start = i;
      } else if (!inside && start >= 0) {
        words.add(new Word(fold(text.substring(start, i)), start, i));
        start = -1;
      }
    }
    return new Words(text, words);
  }

  /** All words run together: equal keys mean the same name. */
  static String key(String text) {
    return of(text).key();
  }

  int size() {
    return words.size();
  }

  String word(int index) {
    return words.get(index).key();
  }

  String key() {
    return key(0, size());
  }

  /** The words from {@code fromInclusive} to {@code toExclusive} run together. */
  String key(int fromInclusive, int toExclusive) {
    return words.subList(fromInclusive, toExclusive).stream()
        .map(Word::key)
        .collect(Collectors.joining());
  }

  private static boolean partOfWord(char c) {
    int type = Character.getType(c);
    return Character.isLetterOrDigit(c)
        || Character.isSurrogate(c)
        || type == Character.NON_SPACING_MARK
        || c == '²'
        || c == '³';
  }

  private static String fold(String word) {
    return Normalizer.normalize(word, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT);
  }
}
