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
}
