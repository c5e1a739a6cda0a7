package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A bar stands after each character at which a line may end. */
class LineEndsTest {
  @ParameterizedTest
  @CsvSource({
    "fallen to -2.1 °C on 8 May, fallen |to |-2.1 °C |on |8 |May",
    "'2.0 K, kept','2.0 K, |kept'",
    "pot of 12.7 L here, pot |of |12.7 L |here",
    "9 winters, 9 |winters",
    "its pot is not frost-proof, its |pot |is |not |frost-|proof",
    "run 2016-01-01, run |2016-01-01"
  })
  void aLineEndsNeitherBeforeAUnitNorAfterAMinus(String text, String expected) {
    StringBuilder found = new StringBuilder();
    char[] letters = text.toCharArray();
    for (int i = 0; i < letters.length; i++) {
      found.append(letters[i]);
      if (new LineEnds().isSplitCharacter(0, i, letters.length, letters, null)) {
        found.append('|');
      }
    }
    assertEquals(expected, found.toString());
  }
}
