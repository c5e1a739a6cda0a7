package org.hibernacle.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.hibernacle.model.DateSpan;
import org.hibernacle.report.HandOut;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads some days, the last one included, such as 2026-12-20..2027-01-05. */
final class DaysConverter implements ITypeConverter<DateSpan> {
  @Override
  public DateSpan convert(String text) {
    int dots = text.indexOf("..");
    if (dots < 0) {
      throw unreadable(text);
    }
    LocalDate first = day(text, text.substring(0, dots));
    LocalDate last = day(text, text.substring(dots + 2));
    if (last.isBefore(first)) {
      throw new TypeConversionException(
          "\"" + text + "\" ends before it begins; give the first day, two dots, the last day");
    }
    DateSpan days = new DateSpan(first, last.plusDays(1));
    if (!days.toExclusive().minusDays(HandOut.MOST_DAYS).isAfter(first)) {
      return days;
    }
    throw new TypeConversionException(
        "\""
            + text
            + "\" is longer than "
            + HandOut.MOST_DAYS
            + " days, which "
            + HandOut.MOST_PAGES
            + " pages do not hold; write two hand-outs");
  }

  private static LocalDate day(String all, String text) {
    try {
      return LocalDate.parse(text.strip());
    } catch (DateTimeException e) {
      throw unreadable(all);
    }
  }

  private static TypeConversionException unreadable(String text) {
    return new TypeConversionException(
        "\""
            + text
            + "\" are not days; give the first and the last, such as 2026-12-20..2027-01-05");
  }
}
