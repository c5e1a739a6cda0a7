package org.hibernacle.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateFormatTest {
  /** ECMA-376, part 1, 18.8.31: ddd, mmm, yyyy are fields, text stands in quotes. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "EEE d MMM|ddd d mmm",
        "d MMM yyyy|d mmm yyyy",
        "EEE, d. MMM|ddd, d. mmm",
        "y年M月d日|yyyy\"年\"m\"月\"d\"日\"",
        "EEE, d 'de' MMM|ddd, d \"de\" mmm",
      })
  void writesThePatternOfAWorkbook(String java, String workbook) {
    assertEquals(workbook, DateFormat.of(java));
  }
}
