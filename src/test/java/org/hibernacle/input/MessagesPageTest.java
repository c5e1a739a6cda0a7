package org.hibernacle.input;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages for keepers say what the program says. */
class MessagesPageTest {
  private static final Path SOURCES = Path.of("src", "main", "java");

  private static String page(String name) throws IOException {
    return Files.readString(Path.of("docs", name), UTF_8);
  }

  private static SortedSet<String> found(String regex, String text) {
    SortedSet<String> found = new TreeSet<>();
    Matcher code = Pattern.compile(regex).matcher(text);
    while (code.find()) {
      found.add(code.group(1));
    }
    return found;
  }

  private static String sources() throws IOException {
    StringBuilder text = new StringBuilder();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        text.append(Files.readString(file, UTF_8));
      }
    }
    return text.toString();
  }

  @Test
  void everyCodeIsOnThePageOnceAndNoOther() throws IOException {
    String page = page("messages.md");
    SortedSet<String> inSources =
        found("\"((?:CK|IN|OU|PL|RV)-\\d{3})(?:\\.[a-z-]+)?\"", sources());
    assertTrue(inSources.size() > 40);
    assertEquals(inSources, found("(?m)^\\| ((?:CK|IN|OU|PL|RV)-\\d{3}) \\|", page));
    Set<String> rows = new HashSet<>();
    for (String line : page.lines().filter(l -> l.matches("\\| (CK|IN|OU|PL|RV)-.*")).toList()) {
      assertTrue(rows.add(line.substring(0, 8)), line);
      List<String> cells = List.of(line.split("\\s*\\|\\s*", -1));
      assertEquals(6, cells.size(), line);
      assertTrue(cells.stream().skip(1).limit(4).noneMatch(String::isBlank), line);
    }
  }

  @Test
  void everyCodeOfTheWorkbookIsRaisedSomewhere() throws IOException {
    String sources = sources();
    for (Field code : Code.class.getDeclaredFields()) {
      assertTrue(sources.contains("Code." + code.getName()), code.getName());
    }
  }

  @Test
  void everyColumnAndSettingIsOnItsPage() throws IOException {
    String inventory = page("inventory.md");
    String species = page("species.md");
    for (Column column : Column.values()) {
      boolean ofSpecies = column.sheet() == InventorySheet.SPECIES;
      assertTrue(
          (ofSpecies ? species : inventory).contains(column.title()), column + " is not described");
    }
  }
}
