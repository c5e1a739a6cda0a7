package org.hibernacle.report.pdf;

import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.hibernacle.report.Cell;

/** The words of a cell. The column's heading names the unit, so a number stands alone. */
final class CellText {
  private final DateTimeFormatter day;
  private final Locale language;

  CellText(Locale language) {
    this.language = language;
    day = DateTimeFormatter.ofPattern("EEE d MMM yyyy", language);
  }

  /** As printed; a gap gives its reason. */
  String of(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return text.text();
    } else if (cell instanceof Cell.Quantity quantity) {
      return number(quantity.value(), quantity.decimals());
    } else if (cell instanceof Cell.Day someDay) {
      return day.format(someDay.date());
    } else if (cell instanceof Cell.Level level) {
      return level.text();
    }
    return ((Cell.Gap) cell).reason();
  }

  private String number(double value, int decimals) {
    NumberFormat format = NumberFormat.getNumberInstance(language);
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format.format(value);
  }
}
