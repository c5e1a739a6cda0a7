package org.hibernacle.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.input.CsvLayout.Role;

/**
 * The layouts that are recognised. Columns that look alike but are not air temperature (ground or
 * grass minimum, dew point, mean, hour of the minimum) are in no list, so they are never taken.
 */
final class CsvLayouts {
  private static final List<String> DATE =
      List.of("date", "datum", "data", "dato", "day", "datetime", "timestamp", "valid", "yyyymmdd");
  private static final List<String> TIME =
      List.of("time", "timeofday", "hour", "uhrzeit", "zeit", "hora", "heure");
  private static final List<String> STATION =
      List.of(
          "station", "stationid", "stationsid", "stationname", "location", "site", "place", "city");
  private static final List<String> LOWEST =
      List.of(
          "tmin",
          "tempmin",
          "mintemp",
          "mint",
          "tn",
          "min",
          "minimum",
          "lowest",
          "low",
          "lowtemp",
          "minimumtemperature",
          "temperaturemin",
          "temperatureminimum",
          "mintemperature",
          "lowesttemperature",
          "minairtemp",
          "airtempmin",
          "minimumairtemperature");
  private static final List<String> HIGHEST =
      List.of(
          "tmax",
          "tempmax",
          "maxtemp",
          "maxt",
          "tx",
          "max",
          "maximum",
          "highest",
          "high",
          "hightemp",
          "hitemp",
          "maximumtemperature",
          "temperaturemax",
          "temperaturemaximum",
          "maxtemperature",
          "highesttemperature",
          "maxairtemp",
          "airtempmax",
          "maximumairtemperature");
  private static final List<String> READING =
      List.of(
          "temp",
          "temperature",
          "t",
          "airtemp",
          "airtemperature",
          "tempair",
          "temperatura",
          "temperatur",
          "lufttemperatur",
          "outdoortemperature",
          "outdoortemp",
          "tempout");

  static final CsvLayout DAILY =
      new CsvLayout(
          "daily",
          true,
          Map.of(Role.DATE, DATE, Role.LOWEST, LOWEST, Role.HIGHEST, HIGHEST),
          Map.of(Role.STATION, STATION, Role.TIME, TIME, Role.SNOW, SnowUnit.headings()),
          DatePattern.ALL,
          Optional.empty());

  static final CsvLayout READINGS =
      new CsvLayout(
          "readings",
          false,
          Map.of(Role.DATE, DATE, Role.READING, READING),
          Map.of(Role.STATION, STATION, Role.TIME, TIME),
          DatePattern.ALL,
          Optional.empty());

  /** In the order in which messages name them. */
  static final List<CsvLayout> ALL = List.of(DAILY, READINGS);

  private CsvLayouts() {}
}
