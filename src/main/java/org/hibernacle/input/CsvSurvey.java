package org.hibernacle.input;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hibernacle.input.CsvLayout.Role;

/** First look at the rows of one file: which stations are there, and how dates are written. */
final class CsvSurvey implements Predicate<CsvText.Row> {
  private final RecognisedCsv csv;
  private final Optional<String> station;
  private final Set<String> stations;
  private final DateSurvey dates;

  /**
   * @param station whose dates are looked at; empty for all
   * @param stations takes up the stations found
   */
  CsvSurvey(RecognisedCsv csv, Optional<String> station, Set<String> stations) {
    this.csv = csv;
    this.station = station;
    this.stations = stations;
    this.dates = new DateSurvey(csv.columns().layout().dates());
  }

  @Override
  public boolean test(CsvText.Row row) {
    if (csv.fits(row)) {
      csv.columns().cell(Role.STATION, row).ifPresent(stations::add);
      if (csv.isOf(station, row)) {
        csv.columns().cell(Role.DATE, row).ifPresent(dates::add);
      }
    }
    return true;
  }

  RecognisedCsv csv() {
    return csv;
  }

  Optional<DateRule> decide(Problems problems) {
    return dates.decide(
        csv.text().path() + ", \"" + csv.columns().heading(Role.DATE).written() + "\"", problems);
  }
}
