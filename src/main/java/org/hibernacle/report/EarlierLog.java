package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.model.Season;
import org.hibernacle.model.SheetTable;

/**
 * The log sheet of a plan written earlier.
 *
 * @param table as found
 */
public record EarlierLog(SheetTable table) {
  /** Whether the keeper wrote anything into it. */
  public boolean isFilledIn() {
    int planned = LogTable.plannedColumns();
    return table.rows().stream()
        .map(row -> row.subList(Math.min(planned, row.size()), row.size()))
        .flatMap(List::stream)
        .anyMatch(value -> !value.equals(""));
  }

  /** Whether all its dates lie in that season. */
  public boolean isOf(Season season) {
    return table.rows().stream()
        .flatMap(List::stream)
        .allMatch(value -> !(value instanceof LocalDate day) || season.contains(day));
  }
}
