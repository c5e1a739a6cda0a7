package org.hibernacle;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the reference tables below {@code src/test/resources/checks}; their origin is there too.
 */
public final class CheckTable {
  private CheckTable() {}

  /** All rows of {@code checks/NAME.csv}. */
  public static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = CheckTable.class.getResourceAsStream("/checks/" + name + ".csv");
        CSVParser parser =
            CSVParser.builder()
                .setReader(
                    new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))
                .setFormat(format)
                .get()) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The cell as a number. */
  public static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
