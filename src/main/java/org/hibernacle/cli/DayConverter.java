package org.hibernacle.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day, such as 2026-11-10. */
final class DayConverter implements ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new TypeConversionException(
          "\"" + text + "\" is not a day; give year, month and day, such as 2026-11-10");
    }
  }
}
