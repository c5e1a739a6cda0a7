package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.hibernacle.model.Inventory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in a workbook must not depend on the machine it is read on. */
class LocaleTest {
  private static final Path DEMO = Path.of("demo-data", "inventory.xlsx");

  /** As the build's own machine has them: English and UTC. */
  private static final List<Object> DEMO_HERE = demo();

  private static final String TEMPERATURES_HERE = temperatures();

  private final Locale before = Locale.getDefault();
  private final TimeZone zoneBefore = TimeZone.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(before);
    TimeZone.setDefault(zoneBefore);
  }

  private static List<Object> demo() {
    Problems problems = new Problems();
    Inventory inventory =
        InventoryWorkbook.read(DEMO, SpeciesCatalogue.builtIn(), problems).orElseThrow();
    return List.of(inventory, problems.sorted());
  }

  /** Zones on both sides of the date line and with half hours, one with a half hour of summer. */
  static Stream<Arguments> machines() {
    return Stream.of("en-US", "de-DE", "tr-TR", "ja-JP-u-ca-japanese")
        .flatMap(
            tag ->
                Stream.of("UTC", "Asia/Tokyo", "America/St_Johns", "Australia/Lord_Howe")
                    .map(zone -> Arguments.of(tag, zone)));
  }

  @ParameterizedTest
  @MethodSource("machines")
  void theDemoIsTheSameInventoryInEveryLocaleAndZone(String tag, String zone) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    assertEquals(DEMO_HERE, demo());
  }

  /** Dates with the names of months, clocks that change, times that name a zone, capitals. */
  private static String temperatures() {
    StringBuilder all = new StringBuilder();
    for (String file :
        List.of(
            "daily/month-names.csv",
            "readings/clocks-back.csv",
            "readings/with-zone.csv",
            "readings/seconds-since-1970.csv",
            "daily/semicolon-windows.csv",
            "ie-daily/ok.csv",
            "us-months/ok.csv")) {
      Problems problems = new Problems();
      Path path = Path.of("src", "test", "resources", "csv").resolve(file);
      all.append(TemperatureCsv.read(List.of(path), TemperatureCsv.Options.NONE, problems));
      all.append(problems.sorted());
    }
    return all.toString();
  }

  @ParameterizedTest
  @MethodSource("machines")
  void temperatureFilesAreTheSameSeriesInEveryLocaleAndZone(String tag, String zone) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    assertEquals(TEMPERATURES_HERE, temperatures());
    assertTrue(TEMPERATURES_HERE.contains("2030-02-01=DailyExtremes"), TEMPERATURES_HERE);
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
                "1,500",
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
    assertTrue(expected.contains("\"1,500\"; expected a number from 0.02 to 3000 L"), expected);
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
