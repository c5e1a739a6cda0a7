package org.hibernacle.report;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;

/**
 * How numbers and days look, the same in every output. Decimal mark and names of months follow the
 * language; the minus sign is always the plain hyphen, so that a printed number can be searched
 * for.
 */
public final class Display {
  private final Words words;
  private final DecimalFormatSymbols symbols;

  public Display(Words words) {
    this.words = words;
    this.symbols = DecimalFormatSymbols.getInstance(words.locale());
    symbols.setMinusSign('-');
  }

  /** The number rounded half up, without grouping; never {@code -0}. */
  public String number(double value, int decimals) {
    String pattern = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    DecimalFormat format = new DecimalFormat(pattern, symbols);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format.format(withoutNegativeZero(value, decimals));
  }

  /** Zero where the value would be printed as {@code -0.0}, else the value. */
  static double withoutNegativeZero(double value, int decimals) {
    return value <= 0 && value > -0.5 * Math.pow(10, -decimals) ? 0.0 : value;
  }

  /** A day of the planned season: {@code Sat 14 Nov}. */
  public String day(LocalDate day) {
    return format(dayPattern(false), day);
  }

  /** A day of a winter on file: {@code 8 Dec 2013}. */
  public String pastDay(LocalDate day) {
    return format(dayPattern(true), day);
  }

  /** The same in short: {@code 14 Nov}. */
  public String dayAndMonth(LocalDate day) {
    return format(axisPattern(), day);
  }

  /** {@code Saturday 14 November 2026}. */
  public String longDay(LocalDate day) {
    return format(longDayPattern(), day);
  }

  /** The pattern of {@link #longDay}. */
  public String longDayPattern() {
    return words.datePattern("date.long");
  }

  /** {@code November 2026}. */
  public String month(YearMonth month) {
    return format(words.datePattern("date.month"), month.atDay(1));
  }

  /** The date pattern of {@link Cell.Day}, in the letters of {@link DateTimeFormatter}. */
  public String dayPattern(boolean past) {
    return words.datePattern(past ? "date.past" : "date.short");
  }

  /** The pattern of a day below a chart. */
  public String axisPattern() {
    return words.datePattern("date.axis");
  }

  /** What the cell says, in every output; nothing for a gap. */
  public String text(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return text.text();
    } else if (cell instanceof Cell.Level level) {
      return level.text();
    } else if (cell instanceof Cell.Day day) {
      return day.past() ? pastDay(day.date()) : day(day.date());
    } else if (cell instanceof Cell.Quantity quantity) {
      String number = number(quantity.value(), quantity.decimals());
      return quantity.unit().isEmpty() ? number : number + " " + quantity.unit();
    }
    return "";
  }

  private String format(String pattern, LocalDate day) {
    return DateTimeFormatter.ofPattern(pattern, words.locale()).format(day);
  }
}
