package org.hibernacle.model;

import java.util.List;

/**
 * A sheet of the inventory as it was found, to be carried through to the plan.
 *
 * @param name of the sheet
 * @param headings as written, in order, unknown ones included
 * @param rows one list a row, as long as {@code headings}; a cell is a {@link String}, a {@link
 *     Double}, a {@link java.time.LocalDate}, a {@link Boolean}, or an empty string
 */
public record SheetTable(String name, List<String> headings, List<List<Object>> rows) {
  public SheetTable {
    headings = List.copyOf(headings);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** Whether there is a column of that heading; capitals and spaces around it play no part. */
  public boolean has(String heading) {
    return headings.stream().anyMatch(h -> h.strip().equalsIgnoreCase(heading.strip()));
  }

  /** The value of a row in the first column of that heading; an empty string if there is none. */
  public Object cell(List<Object> row, String heading) {
    for (int i = 0; i < headings.size() && i < row.size(); i++) {
      if (headings.get(i).strip().equalsIgnoreCase(heading.strip())) {
        return row.get(i);
      }
    }
    return "";
  }

  /** A cell's value as text: {@code 7} for the number seven, which some take as an Id. */
  public static String plainText(Object value) {
    boolean whole = value instanceof Double number && number == Math.rint(number);
    return whole ? Long.toString(Math.round((Double) value)) : value.toString().strip();
  }
}
