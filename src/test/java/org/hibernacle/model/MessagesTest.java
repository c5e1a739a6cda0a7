package org.hibernacle.model;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.SourceCalls.Call;
import org.junit.jupiter.api.Test;

/** The bundle of messages and the calls that make them say the same. */
class MessagesTest {
  private static final ResourceBundle ENGLISH =
      ResourceBundle.getBundle(Phrasebook.BUNDLE, Locale.ROOT);
  private static final String CODE = "(?:CK|IN|OU|PL|RV)-\\d{3}";
  private static final Pattern TEXT =
      Pattern.compile("(" + CODE + "(?:\\.[a-z-]+)?)\\.(found|expected|consequence)");

  /** Calls that make a message or a part of one, and how many of their arguments it takes. */
  private static final Map<String, Integer> MAKERS = new TreeMap<>();

  static {
    for (String severity : List.of("error", "warning", "note")) {
      MAKERS.put("problems." + severity, -2);
      MAKERS.put(severity, -2);
    }
    // A cell gives its heading and what stands there; a count is the last argument.
    MAKERS.put("row.error", 0);
    MAKERS.put("row.warning", 0);
    MAKERS.put("row.missing", -1);
    MAKERS.put("row.note", 0);
    MAKERS.put("tally.add", -2);
    MAKERS.put("new UnreadableCsv", -2);
    MAKERS.put("TemplateProblem.of", -2);
    MAKERS.put("Phrase.of", -1);
  }

  /** Constants that are arguments, each of which has a word. */
  private static final List<String> CONSTANTS =
      List.of("CsvLayout$Role", "QualityRule", "SnowUnit", "TemperatureUnit");

  @Test
  void everyKeyIsUsedAndNoneIsMissing() throws IOException {
    Set<String> written = new TreeSet<>();
    Pattern.compile("\"([A-Za-z0-9.-]+)\"")
        .matcher(SourceCalls.sources())
        .results()
        .map(literal -> literal.group(1))
        .forEach(written::add);
    Set<String> unused = new TreeSet<>(ENGLISH.keySet());
    Set<String> missing = new TreeSet<>();
    for (String key : written) {
      if (key.matches(CODE + "(?:\\.[a-z-]+)?")) {
        String code = Diagnostic.code(key);
        boolean found = ENGLISH.containsKey(key + ".found") || ENGLISH.containsKey(code + ".found");
        assertTrue(found, key + " has no text");
        for (String part : List.of("found", "expected", "consequence")) {
          unused.remove(key + "." + part);
          unused.remove(code + "." + part);
        }
        if (key.contains(".")
            && ENGLISH.keySet().stream().noneMatch(k -> k.startsWith(key + "."))) {
          missing.add(key);
        }
      }
    }
    unused.removeAll(written);
    unused.removeAll(constants());
    unused.remove("ERROR.consequence");
    assertEquals(Set.of(), unused);
    assertEquals(Set.of(), missing);
  }

  private static Set<String> constants() {
    Set<String> keys = new TreeSet<>();
    for (String type : CONSTANTS) {
      try {
        Class<?> found = Class.forName("org.hibernacle.input." + type);
        for (Object constant : found.getEnumConstants()) {
          String key = found.getSimpleName() + "." + ((Enum<?>) constant).name();
          assertTrue(ENGLISH.containsKey(key), key);
          keys.add(key);
        }
      } catch (ClassNotFoundException e) {
        throw new AssertionError(type, e);
      }
    }
    return keys;
  }

  /**
   * As many arguments as the texts take; no English among them, which a bundle could not change.
   */
  @Test
  void everyCallGivesTheArgumentsThatItsTextsTake() throws IOException {
    Map<String, String> codes = codes();
    int checked = 0;
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, Integer> maker : MAKERS.entrySet()) {
      for (Call call : SourceCalls.of(Pattern.quote(maker.getKey()))) {
        List<String> arguments = call.arguments();
        arguments.stream().skip(1).filter(MessagesTest::isSentence).forEach(wrong::add);
        boolean open =
            arguments.stream().anyMatch(a -> a.matches("(?s).*toArray\\(\\)|found|more"));
        String key = arguments.isEmpty() ? "" : arguments.get(0);
        key = codes.getOrDefault(key, key);
        if (!open && key.matches("\"[A-Za-z0-9.-]+\"")) {
          checked++;
          boolean ofCell = call.file().matches("(Log)?Row\\.java") && !maker.getKey().contains(".");
          int given = arguments.size() + (ofCell ? 0 : maker.getValue());
          int taken = taken(key.replace("\"", ""));
          if (given != taken) {
            wrong.add(call + " gives " + given + " arguments, its texts take " + taken);
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(checked > 200, "calls found: " + checked);
  }

  /** The page for keepers knows of each message how severe it is. */
  @Test
  void thePageTellsHowSevereEachMessageIs() throws IOException {
    String page = Files.readString(Path.of("docs", "messages.md"), UTF_8);
    Map<String, String> codes = codes();
    Set<String> checked = new TreeSet<>();
    for (String maker : MAKERS.keySet()) {
      String severity = maker.replaceFirst(".*\\.", "");
      for (Call call : SourceCalls.of(Pattern.quote(maker))) {
        String key = call.arguments().isEmpty() ? "" : call.arguments().get(0);
        Matcher code = Pattern.compile(CODE).matcher(codes.getOrDefault(key, key));
        while (List.of("error", "warning", "note").contains(severity) && code.find()) {
          Matcher row =
              Pattern.compile("(?m)^\\| " + code.group() + " \\| ([a-z, ]+) \\|").matcher(page);
          if (row.find()) {
            assertTrue(row.group(1).contains(severity), code.group() + " is no " + severity);
            checked.add(code.group());
          }
        }
      }
    }
    assertTrue(checked.size() > 90, checked::toString);
  }

  private static boolean isSentence(String argument) {
    return argument.matches("(?s)[^(]*\"[^\"]*[a-z]{2,} [a-z]{2,} [^\"]*\".*")
        || argument.matches("(?s)\".*\"\\s*\\+.*|.*\\+\\s*\".*");
  }

  /** Names of constants with their values, both as they are written. */
  private static Map<String, String> codes() throws IOException {
    Map<String, String> codes = new TreeMap<>();
    Pattern.compile("static final String (\\w+) = (\"" + CODE + "(?:\\.[a-z-]+)?\");")
        .matcher(SourceCalls.sources())
        .results()
        .forEach(
            constant -> {
              codes.put("Code." + constant.group(1), constant.group(2));
              codes.put("TemplateProblem." + constant.group(1), constant.group(2));
            });
    return codes;
  }

  private static int taken(String key) {
    StringBuilder texts = new StringBuilder();
    if (key.matches(CODE + ".*")) {
      for (String part : List.of("found", "expected", "consequence")) {
        String own = key + "." + part;
        String shared = Diagnostic.code(key) + "." + part;
        if (ENGLISH.containsKey(own) || ENGLISH.containsKey(shared)) {
          texts.append(ENGLISH.getString(ENGLISH.containsKey(own) ? own : shared));
        }
      }
    } else {
      texts.append(ENGLISH.getString(key));
    }
    return placeholders(texts.toString()).size();
  }

  private static Set<Integer> placeholders(String text) {
    Set<Integer> placeholders = new TreeSet<>();
    Pattern.compile("\\{(\\d+)[,}]")
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .forEach(p -> placeholders.add(Integer.valueOf(p.substring(1, p.length() - 1))));
    return placeholders;
  }

  @Test
  void everyTextIsAPatternWithItsApostrophesDoubled() {
    for (String key : ENGLISH.keySet()) {
      String text = ENGLISH.getString(key);
      assertFalse(text.isBlank() && !key.startsWith("list.joint"), key);
      assertFalse(text.replace("''", "").contains("'"), key + " has a single apostrophe: " + text);
      new MessageFormat(text, Locale.UK);
      assertTrue(
          TEXT.matcher(key).matches() || !key.matches(CODE + ".*"),
          key + " is no text of a message");
    }
  }

  @Test
  void aMessageTakesWhatItsWordingLacksFromItsCode() {
    Diagnostic gap = message("PL-401.gap", LocalDate.of(2026, 1, 14));
    assertEquals("PL-401", gap.code());
    assertEquals("a gap from 2026-01-14 is too long", gap.found());
    assertEquals("every day of the cold months", gap.expected());
    assertEquals(
        "winter 2025/26 [PL-401]: a gap from 2026-01-14 is too long; expected every day of the cold"
            + " months; the winter was left out.",
        gap.toString());
  }

  @Test
  void anErrorWritesNothing() {
    Diagnostic error = new Diagnostic(Severity.ERROR, "IN-105", Phrase.verbatim("a"), List.of());
    assertEquals("nothing was written", error.consequence());
  }

  @Test
  void numbersAndDaysFollowTheLanguage() {
    Diagnostic rows = message("IN-322", List.of("a", "b"), "c", read(12345));
    assertEquals("read 12345 rows from 2026-01-14 to 2026-02-01", rows.consequence());
    Phrasebook german = Phrasebook.of(Locale.GERMANY, day -> day.getDayOfMonth() + ".");
    assertEquals("read 12.345 rows from 14. to 1.", german.consequence(rows));
    assertEquals("a, b, dates c", german.found(rows));
    Diagnostic off = message("IN-202", "a", "b", List.of("c"), -4.5);
    assertEquals(
        "the most cautious figures of c are used: root limit -4,5 °C", german.consequence(off));
  }

  private static Phrase read(long rows) {
    return Phrase.of("rows-from-to", rows, LocalDate.of(2026, 1, 14), LocalDate.of(2026, 2, 1));
  }

  /** Wrong arguments never leave the tests, which run with assertions. */
  @Test
  void aMessageWithoutTextsOrWithOtherArgumentsIsNoMessage() {
    for (Diagnostic.Severity severity : Severity.values()) {
      assertFalse(Phrasebook.ENGLISH.takes(severity, "IN-999", List.of()));
      assertFalse(Phrasebook.ENGLISH.takes(severity, "PL-402", List.of(1)));
      assertFalse(Phrasebook.ENGLISH.takes(severity, "PL-402", List.of(1, "a", "b")));
      assertTrue(Phrasebook.ENGLISH.takes(severity, "PL-402", List.of(1, "a")));
    }
    assertFalse(Phrasebook.ENGLISH.takes(List.of("in the garden"), List.of()));
  }

  private static Diagnostic message(String key, Object... arguments) {
    return new Diagnostic(
        Severity.NOTE, key, Phrase.of("where.winter", "2025/26"), List.of(arguments));
  }
}
