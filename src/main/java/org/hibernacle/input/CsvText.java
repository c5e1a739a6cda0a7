package org.hibernacle.input;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.util.Iterator;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.model.Phrase;

/**
 * A text of known encoding, read row by row. The only place that meets the CSV library and its
 * exceptions.
 *
 * @param source of its bytes
 * @param encoding in which all of it can be read
 */
record CsvText(CsvSource source, CsvEncoding encoding) {
  /** Parts cells wherever one or more blanks stand. */
  static final char BLANKS = ' ';

  /** Stands for no delimiter at all: cells are told by their position. */
  static final char POSITIONS = '\0';

  /** Far beyond the widest table of temperatures known, columns. */
  private static final int MOST_COLUMNS = 2000;

  /**
   * One row.
   *
   * @param line of the file on which it ends, from 1
   * @param cells trimmed
   */
  record Row(long line, List<String> cells) {
    boolean blank() {
      for (String cell : cells) {
        if (!cell.isEmpty()) {
          return false;
        }
      }
      return true;
    }
  }

  /** What messages call it. */
  String name() {
    return source.name();
  }

  /** Hands on every row that is not blank until {@code more} says false. */
  void rows(char delimiter, Predicate<Row> more) throws UnreadableCsv {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter)
            .setIgnoreSurroundingSpaces(delimiter != '\t' && delimiter != BLANKS)
            .setTrim(true)
            .get();
    long line = 0;
    try (RowLimitReader text =
            new RowLimitReader(reader(encoding.charset(), encoding.open(source)));
        CSVParser parser = CSVParser.builder().setReader(text).setFormat(format).get()) {
      Iterator<CSVRecord> records = parser.iterator();
      while (records.hasNext()) {
        CSVRecord record = records.next();
        if (record.size() > MOST_COLUMNS) {
          throw new UnreadableCsv(
              "IN-304.wide",
              Phrase.of("where.line", name(), parser.getCurrentLineNumber()),
              record.size(),
              MOST_COLUMNS);
        }
        Row row = new Row(parser.getCurrentLineNumber(), cells(record, delimiter));
        line = row.line();
        text.rowDone();
        if (!row.blank() && !more.test(row)) {
          return;
        }
      }
    } catch (UncheckedIOException | IOException e) {
      throw malformed(line + 1, e);
    }
  }

  /** Hands on every line that is not blank, cut into cells, until {@code more} says false. */
  void rows(List<Cut> cuts, Predicate<Row> more) throws UnreadableCsv {
    long line = 0;
    try (RowLimitReader text =
            new RowLimitReader(reader(encoding.charset(), encoding.open(source)));
        BufferedReader lines = new BufferedReader(text)) {
      for (String next = lines.readLine(); next != null; next = lines.readLine()) {
        String whole = next;
        line++;
        text.rowDone();
        if (!whole.isBlank()
            && !more.test(new Row(line, cuts.stream().map(cut -> cut.from(whole)).toList()))) {
          return;
        }
      }
    } catch (IOException e) {
      throw malformed(line + 1, e);
    }
  }

  private static List<String> cells(CSVRecord record, char delimiter) {
    List<String> cells = record.toList();
    return delimiter == BLANKS ? cells.stream().filter(c -> !c.isEmpty()).toList() : cells;
  }

  private UnreadableCsv malformed(long line, Exception e) {
    Phrase where = Phrase.of("where.from-line", name(), line);
    Throwable cause = e.getCause() instanceof IOException io ? io : e;
    if (cause instanceof RowLimitReader.TooLong) {
      return new UnreadableCsv("IN-304.endless", where, RowLimitReader.LIMIT);
    }
    return cause instanceof CSVException
        ? new UnreadableCsv("IN-304.quotes", where)
        : CsvEncoding.unreadable(source, (IOException) cause);
  }

  /** Refuses bytes that are not text in that encoding. */
  static Reader reader(Charset charset, InputStream in) {
    return new InputStreamReader(
        in,
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT));
  }
}
