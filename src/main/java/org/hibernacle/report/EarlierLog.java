package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.Season;

/**
 * The log sheet of a plan written earlier.
 *
 * @param sheet as found
 */
public record EarlierLog(LogSheet sheet) {
  /** Whether the keeper wrote anything into it. */
  public boolean isFilledIn() {
    List<String> ids = sheet.ids();
    return sheet.table().rows().stream()
        .anyMatch(
            row ->
                IntStream.range(0, ids.size())
                    .filter(i -> ids.get(i).isEmpty() || LogTable.isKept(ids.get(i)))
                    .anyMatch(i -> !row.get(i).equals("")));
  }

  /** Whether all its dates lie in that season, but for those in columns of the keeper's own. */
  public boolean isOf(Season season) {
    List<String> ids = sheet.ids();
    return sheet.table().rows().stream()
        .flatMap(
            row ->
                IntStream.range(0, ids.size())
                    .filter(i -> !ids.get(i).isEmpty())
                    .mapToObj(row::get))
        .allMatch(value -> !(value instanceof LocalDate day) || season.contains(day));
  }
}
