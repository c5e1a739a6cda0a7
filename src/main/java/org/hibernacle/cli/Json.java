package org.hibernacle.cli;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Writes plain values as JSON (RFC 8259): maps, lists, texts, finite numbers, truth values. Signs
 * outside ASCII are escaped, so that no console changes them.
 */
final class Json {
  private final StringBuilder text = new StringBuilder();

  private Json() {}

  /**
   * The value as JSON over several lines.
   *
   * @throws IllegalArgumentException if it, or something in it, has no form in JSON
   */
  static String of(Object value) {
    Json json = new Json();
    json.value(value, "");
    return json.text.toString();
  }

  private void value(Object value, String indent) {
    if (value instanceof Map<?, ?> map) {
      object(map, indent);
    } else if (value instanceof List<?> list) {
      array(list, indent);
    } else if (value instanceof Double number && !Double.isFinite(number)) {
      throw new IllegalArgumentException(number + " is no number in JSON");
    } else if (value instanceof Number || value instanceof Boolean) {
      text.append(value);
    } else if (value instanceof String words) {
      string(words);
    } else {
      throw new IllegalArgumentException(value.getClass() + " has no form in JSON");
    }
  }

  private void object(Map<?, ?> map, String indent) {
    text.append('{');
    Iterator<? extends Map.Entry<?, ?>> members = map.entrySet().iterator();
    while (members.hasNext()) {
      Map.Entry<?, ?> member = members.next();
      text.append('\n').append(indent).append("  ");
      string(member.getKey().toString());
      text.append(": ");
      value(member.getValue(), indent + "  ");
      text.append(members.hasNext() ? "," : "\n" + indent);
    }
    text.append('}');
  }

  private void array(List<?> list, String indent) {
    text.append('[');
    for (int i = 0; i < list.size(); i++) {
      text.append(i == 0 ? "\n" : ",\n").append(indent).append("  ");
      value(list.get(i), indent + "  ");
    }
    text.append(list.isEmpty() ? "]" : "\n" + indent + "]");
  }

  private void string(String words) {
    text.append('"');
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      switch (c) {
        case '"' -> text.append("\\\"");
        case '\\' -> text.append("\\\\");
        case '\n' -> text.append("\\n");
        case '\t' -> text.append("\\t");
        default ->
            text.append(
                c < ' ' || c > '~' ? String.format(Locale.ROOT, "\\u%04x", (int) c) : c + "");
      }
    }
    text.append('"');
  }
}
