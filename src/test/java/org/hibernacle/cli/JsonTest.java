package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is written is read back by a parser of somebody else. */
class JsonTest {
  private static final ObjectMapper PARSER = new ObjectMapper();

  private static Object read(String json) {
    try {
      return PARSER.readValue(json, Object.class);
    } catch (JsonProcessingException e) {
      throw new AssertionError(json, e);
    }
  }

  private static Object any(Random random, int depth) {
    return switch (random.nextInt(depth == 0 ? 4 : 6)) {
      case 0 -> random.nextInt();
      case 1 -> random.nextGaussian() * Math.pow(10, random.nextInt(600) - 300);
      case 2 -> random.nextBoolean();
      case 3 -> text(random);
      case 4 -> {
        List<Object> list = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
          list.add(any(random, depth - 1));
        }
        yield list;
      }
      default -> {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = random.nextInt(4); i > 0; i--) {
          map.put(text(random), any(random, depth - 1));
        }
        yield map;
      }
    };
  }

  /** Controls, quotes, strokes, letters of all planes. */
  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(8); i > 0; i--) {
      int c = random.nextInt(random.nextBoolean() ? 0x80 : 0x10FFFF);
      text.appendCodePoint(Character.getType(c) == Character.SURROGATE ? '"' : c);
    }
    return text.toString();
  }

  @Test
  void everyValueIsReadBackTheSame() {
    Random random = new Random(20261125);
    for (int i = 0; i < 2000; i++) {
      Object value = any(random, 4);
      assertEquals(value, read(Json.of(value)));
    }
  }

  @Test
  void onlyAsciiIsWritten() {
    assertEquals(
        "\"Ahorn \\u201eM\\u00fcller\\u201c \\ud83c\\udf41\"", Json.of("Ahorn „Müller“ 🍁"));
  }

  @Test
  void whatHasNoFormIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Json.of(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Json.of(List.of('c')));
    assertTrue(Json.of(List.of()).equals("[]") && Json.of(Map.of()).equals("{}"));
  }
}
