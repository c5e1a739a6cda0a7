package org.hibernacle.input;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hibernacle.input.CsvLayout.Role;

/** First look at the rows of one file: which stations are there, and how dates are written. */
final class CsvSurvey implements Predicate<CsvText.Row> {
  private final RecognisedCsv csv;
  private final Set<String> stations;
  private final DateSurvey dates;

  /**
   * @param stations takes up the stations found
   */
  CsvSurvey(RecognisedCsv csv, Set<String> stations) {
    this.csv = csv;
    this.stations = stations;
    this.dates = new DateSurvey(csv.columns().layout().dates());
  }

  @Override
  public boolean test(CsvText.Row row) {
    if (csv.fits(row)) {
      Optional<String> station = csv.columns().cell(Role.STATION, row);
      station.ifPresent(stations::add);
      csv.columns().cell(Role.DATE, row).ifPresent(cell -> dates.add(cell, station.orElse("")));
    }
    return true;
  }

  Optional<DateRule> decide(Problems problems) {
    return dates.decide(
        csv.text().path() + ", \"" + csv.columns().heading(Role.DATE).written() + "\"", problems);
  }
}
