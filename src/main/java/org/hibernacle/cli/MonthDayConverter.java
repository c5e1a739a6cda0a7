package org.hibernacle.cli;

import java.time.DateTimeException;
import java.time.MonthDay;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day of every year, such as 10-01. */
final class MonthDayConverter implements ITypeConverter<MonthDay> {
  @Override
  public MonthDay convert(String text) {
    try {
      return MonthDay.parse("--" + text);
    } catch (DateTimeException e) {
      throw new TypeConversionException(
          "\"" + text + "\" is not a day of the year; give month and day, such as 10-01");
    }
  }
}
