package org.hibernacle.input;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Names of months, whole or cut short, in the languages of the public files: English, German,
 * French, Spanish, Portuguese, Italian, Dutch, Swedish, Norwegian, Danish, Finnish. No name stands
 * for two months.
 */
final class MonthNames {
  private static final List<String> NAMES =
      List.of(
          "jan january januar janner jaenner janvier janv enero ene janeiro gennaio gen januari tammikuu tammi",
          "feb february februar fevrier fevr febrero fevereiro fev febbraio februari helmikuu helmi",
          "mar march marz maerz mrz mars marzo marco maart mrt maaliskuu maalis",
          "apr april avril avr abril abr aprile huhtikuu huhti",
          "may mai mayo maio maggio mag mei maj toukokuu touko",
          "jun june juni juin junio junho giugno giu kesakuu kesa",
          "jul july juli juillet juil julio julho luglio lug heinakuu heina",
          "aug august aout agosto ago augustus augusti elokuu elo",
          "sep sept september septembre septiembre setembro set settembre syyskuu syys",
          "oct october oktober okt octobre octubre outubro out ottobre ott lokakuu loka",
          "nov november novembre noviembre novembro marraskuu marras",
          "dec december dezember dez decembre diciembre dic dezembro dicembre desember des joulukuu"
              + " joulu");

  private static final Map<String, Integer> NUMBERS = numbers();

  private MonthNames() {}

  /** 1 to 12; empty if the word is no month. Case, accents and a full stop do not matter. */
  static OptionalInt number(String word) {
    String key =
        Normalizer.normalize(word.strip(), Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[\\p{M}.]", "");
    Integer number = NUMBERS.get(key);
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  private static Map<String, Integer> numbers() {
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < NAMES.size(); i++) {
      int number = i + 1;
      Arrays.stream(NAMES.get(i).split(" ", -1)).forEach(name -> numbers.put(name, number));
    }
    return Map.copyOf(numbers);
  }
}
