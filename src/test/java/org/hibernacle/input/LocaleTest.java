package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in a workbook must not depend on the machine it is read on. */
class LocaleTest {
  private final Locale before = Locale.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(before);
  }

  private static String reading(String tag) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    TestBook.Reading reading =
        new TestBook()
            .plants(
                "ID|SPECIES|HOME|VOLUME (LITRES)|VIGOUR|PRIORITY|HEIGHT IN",
                "I1",
                "JUNIPERUS RIGIDA",
                "KITCHEN SILL",
                "1.5",
                "WEAK",
                "4",
                10.25,
                "I2",
                "Tilia",
                "kitchen sill",
                "1,5",
                "STRONG",
                3,
                7)
            .places("PLACE|KIND|VENTS|WIND", "Kitchen Sill", "COLD STORE IN", "NO", "")
            .settings("LATITUDE", "-41.3", "MOVING DAYS", "FRI, WEEKEND", "PAPER", "LETTER")
            .read();
    return reading.text();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
  void everyMessageIsTheSameInEveryLocale(String tag) {
    String expected = reading("en-GB");
    assertEquals(expected, reading(tag));
    assertTrue(expected.contains("Volume") || expected.contains("VOLUME"), expected);
    assertTrue(expected.contains("\"1,5\"; expected a number from 0.02 to 3000 L"), expected);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "de-DE", "tr-TR"})
  void capitalsAndDecimalsAreReadTheSame(String tag) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    var plant =
        new TestBook()
            .plants(
                "ID|SPECIES|HOME|VOLUME (LITRES)|FROST-PROOF POT|HEIGHT IN",
                "I1",
                "JUNIPERUS RIGIDA",
                "KITCHEN SILL",
                "1.5",
                "NO",
                10.25)
            .places("PLACE|KIND|LIGHT", "Kitchen Sill", "WARM ROOM", "BRIGHT")
            .settings("LATITUDE", "-41.3", "MOVING DAYS", "FRI, WEEKEND", "PAPER", "LETTER")
            .read()
            .sound()
            .plants()
            .get(0);
    assertEquals("Juniperus rigida", plant.species().taxon());
    assertEquals(1.5, plant.container().volumeL());
    assertEquals(26.035, plant.heightCm().orElseThrow(), 1e-9);
    assertEquals("Kitchen Sill", plant.home());
  }
}
