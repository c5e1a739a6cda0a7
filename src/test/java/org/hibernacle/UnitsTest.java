package org.hibernacle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Every number of the kernels says its unit in its name. */
class UnitsTest {
  private static final List<String> PACKAGES =
      List.of(
          "org.hibernacle.model",
          "org.hibernacle.climate",
          "org.hibernacle.thermal",
          "org.hibernacle.physiology");

  private static final Set<String> UNITS =
      Set.of(
          // temperatures, differences of temperature
          "C",
          "K",
          // lengths, areas, volumes
          "Cm",
          "M",
          "M2",
          "M3",
          "L",
          // times, and days of the year
          "S",
          "H",
          "Hours",
          "Days",
          "Day",
          // angles
          "Deg",
          // heat
          "J",
          "JPerK",
          "JPerM3",
          "JPerM3K",
          "MjPerM2Min",
          "WPerK",
          "WPerM2",
          "WPerM2K",
          "WPerM2K4",
          "WPerMK",
          "M2KPerW",
          "M2PerS",
          "M2PerDay",
          "KPerW",
          // densities
          "KgPerM3",
          "GPerCm3",
          // rates
          "PerH",
          // measures of chill and of the season, each with its own rule
          "Portions",
          "Units",
          // 0..1
          "Share",
          "Fraction");

  /** Names without a unit, and why. */
  private static final Set<String> EXCEPTIONS =
      Set.of(
          // 0..1, and the ending tells which of a night
          "BallTrace.edgeIceMax",
          "BallTrace.coreIceMin",
          // 0..1
          "PlantState.rootHardness",
          // money, in whatever currency the keeper counts
          "Plant.value",
          // K per K·d, which no short suffix says
          "Phase.acclimation",
          "Phase.deacclimation",
          // an index, reached or not
          "Drying.THAW_AND_WATER",
          // bare numbers of their published models
          "Acclimation.theta",
          "DynamicModel.SLOPE",
          "DynamicModel.product",
          "DynamicModel.KELVIN_OFFSET",
          "PlottingPosition.shift",
          // logarithm of a ratio
          "ThermalClass.STEP",
          // ratios, and logarithms of ratios
          "InnerPath.ICE_OVER_WATER",
          "InnerPath.INNER_HALF",
          "InnerPath.LONGEST",
          "InnerPath.LONGEST_FROM",
          "InnerPath.OUTER_HALF",
          // low and high end of a unit named before
          "Species.chillPortionsLow",
          "Species.chillPortionsHigh");

  @Test
  void everyNumberEndsInItsUnit() {
    Set<String> bare = new TreeSet<>();
    for (JavaField field : numbers()) {
      if (!endsInUnit(field.getName())) {
        bare.add(field.getOwner().getSimpleName() + "." + field.getName());
      }
    }
    assertEquals(new TreeSet<>(EXCEPTIONS), bare);
    assertTrue(numbers().size() > 100, "fields are looked at");
  }

  @Test
  void endingsAreWholeWords() {
    assertTrue(endsInUnit("airC") && endsInUnit("hours") && endsInUnit("FLEECE_M2K_PER_W"));
    assertTrue(endsInUnit("growingDegreeHours") && endsInUnit("innerWPerK"));
    assertFalse(endsInUnit("temp") || endsInUnit("ABC") || endsInUnit("someABC"));
    assertFalse(endsInUnit("warmth") || endsInUnit("STEPS") || endsInUnit("TOTAL"));
  }

  private static List<JavaField> numbers() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(PACKAGES)
            .stream()
            .flatMap(owner -> owner.getFields().stream())
            .filter(field -> isNumber(field))
            .toList();
  }

  private static boolean isNumber(JavaField field) {
    String type = field.getRawType().getBaseComponentType().getName();
    return Set.of("double", "float", "java.lang.Double", "java.util.OptionalDouble").contains(type);
  }

  private static boolean endsInUnit(String name) {
    return name.equals(name.toUpperCase(Locale.ROOT))
        ? constantEndsInUnit(List.of(name.split("_")))
        : UNITS.stream().anyMatch(unit -> camelEndsIn(name, unit));
  }

  private static boolean camelEndsIn(String name, String unit) {
    int start = name.length() - unit.length();
    if (start == 0) {
      return name.equalsIgnoreCase(unit);
    }
    return name.endsWith(unit) && !Character.isUpperCase(name.charAt(start - 1));
  }

  private static boolean constantEndsInUnit(List<String> words) {
    Set<String> tails = new TreeSet<>();
    IntStream.range(0, words.size())
        .forEach(i -> tails.add(String.join("", words.subList(i, words.size()))));
    return UNITS.stream().anyMatch(unit -> tails.contains(unit.toUpperCase(Locale.ROOT)));
  }
}
