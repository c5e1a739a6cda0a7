package org.hibernacle.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Species;

/** The species table: the built-in rows, and those of the keeper. */
public final class SpeciesCatalogue {
  private static final String TABLE = "/species.csv";

  private static final Phrase SPECIES_FILE = Phrase.verbatim("species.csv");

  private final List<Species> species;
  private final SpeciesNames names;

  private SpeciesCatalogue(List<Species> species) {
    this.species = List.copyOf(species);
    this.names = new SpeciesNames(species);
  }

  /** The table the program brings along. */
  public static SpeciesCatalogue builtIn() {
    try (InputStream in =
            Objects.requireNonNull(SpeciesCatalogue.class.getResourceAsStream(TABLE), TABLE);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      Problems problems = new Problems();
      List<Species> rows = read(reader, problems);
      if (problems.hasErrors()) {
        throw new IllegalStateException(
            problems.sorted().stream()
                .map(Diagnostic::toString)
                .collect(Collectors.joining("\n", "the built-in species table is wrong:\n", "")));
      }
      return new SpeciesCatalogue(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every row, in the order of the table, the keeper's new ones last. */
  public List<Species> species() {
    return species;
  }

  /** The row of exactly that taxon, without regard to case and spaces. */
  public Optional<Species> row(String taxon) {
    String key = SpeciesNames.key(taxon);
    return species.stream().filter(s -> SpeciesNames.key(s.taxon()).equals(key)).findFirst();
  }

  /** This table with the keeper's rows, each in place of the one of its taxon or at the end. */
  public SpeciesCatalogue with(List<Species> own) {
    Map<String, Species> rows = new LinkedHashMap<>();
    species.forEach(s -> rows.put(SpeciesNames.key(s.taxon()), s));
    own.forEach(s -> rows.put(SpeciesNames.key(s.taxon()), s));
    return new SpeciesCatalogue(List.copyOf(rows.values()));
  }

  /** What a name stands for: scientific or common, with or without a cultivar, genus or group. */
  public SpeciesMatch match(String name) {
    return names.match(name);
  }

  /** Reads the table as text: comma-separated with headings, lists inside a cell split by ;. */
  static List<Species> read(Reader text, Problems problems) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
    Tally notCounted = new Tally(new Problems());
    List<Species> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.builder().setReader(text).setFormat(format).get()) {
      for (CSVRecord record : parser) {
        Phrase line = Phrase.of("line", parser.getCurrentLineNumber());
        Map<Column, Row.Entry> entries = new EnumMap<>(Column.class);
        record.toMap().forEach((heading, cell) -> put(entries, line, heading, cell));
        Row row = new Row(SPECIES_FILE, line, entries, problems, notCounted, Tally.Noun.NOTHING);
        row.required(Column.TAXON, "IN-129.taxon")
            .flatMap(taxon -> new SpeciesRow(row, Optional.empty()).read(taxon, true))
            .ifPresent(rows::add);
      }
    }
    return rows;
  }

  private static void put(
      Map<Column, Row.Entry> entries, Phrase line, String heading, String cell) {
    Headings.Meaning meaning =
        Headings.meaning(InventorySheet.SPECIES, heading)
            .orElseThrow(() -> new IllegalStateException("species.csv has a column " + heading));
    Column column = meaning.column();
    Quantity.Unit unit = meaning.unit().orElse(column.quantity().ours());
    FoundCell found = FoundCell.typed(line + ", " + heading, cell);
    entries.put(column, new Row.Entry(heading, unit, found));
  }
}
