package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernacle.input.CsvLayout.Rank;
import org.hibernacle.model.Phrase;

/**
 * Finds the delimiter and the headings of a file: the first row, among its first {@value
 * #ROWS_SEARCHED}, in which a layout finds all its columns. Headings may go over several rows;
 * those above and below are put together with it, column by column.
 */
final class HeadingSearch {
  private static final int ROWS_SEARCHED = 60;
  private static final int ROWS_COMPARED = 40;
  private static final int MOST_ROWS_BELOW = 3;
  private static final char[] DELIMITERS = {',', ';', '\t', '|', CsvText.BLANKS};

  /** Layouts told of where none fits. */
  private static final int LISTED = 4;

  /**
   * Headings.
   *
   * @param delimiter between its cells
   * @param line on which they stand
   * @param lastLine on which they end; rows begin below it
   * @param title what stands above them
   * @param fits the layouts that find all their columns in it
   * @param stations that stand side by side; empty if columns are of one station
   * @param consistentRows how many of the rows below have as many cells
   */
  record Found(
      char delimiter,
      long line,
      long lastLine,
      String title,
      List<CsvColumns> fits,
      List<String> stations,
      int consistentRows) {}

  private final List<CsvLayout> layouts;
  private final Optional<String> station;
  private final List<Found> found = new ArrayList<>();
  private List<String> widest = List.of();

  private HeadingSearch(List<CsvLayout> layouts, Optional<String> station) {
    this.layouts = layouts;
    this.station = station;
  }

  /**
   * The headings; reports an error and is empty if there are none, or if two layouts fit.
   *
   * @param station whose columns are taken where stations stand side by side
   */
  static Optional<Found> in(
      CsvText text, List<CsvLayout> layouts, Optional<String> station, Problems problems)
      throws UnreadableCsv {
    HeadingSearch search = new HeadingSearch(layouts, station);
    UnreadableCsv trouble = null;
    for (char delimiter : DELIMITERS) {
      try {
        search.look(text, delimiter);
      } catch (UnreadableCsv e) {
        trouble = trouble == null ? e : trouble;
      }
    }
    if (search.found.isEmpty()) {
      if (trouble != null) {
        throw trouble;
      }
      search.tellMissing(text, problems);
      return Optional.empty();
    }
    Found best = search.found.get(0);
    for (Found other : search.found) {
      best = other.consistentRows() > best.consistentRows() ? other : best;
    }
    Phrase where = Phrase.of("where.line", text.name(), best.line());
    if (best.fits().size() > 1) {
      List<String> names = best.fits().stream().map(fit -> fit.layout().name()).toList();
      problems.error("IN-306", where, Phrase.joined("and", names));
      return Optional.empty();
    }
    int before = problems.errorCount();
    best.fits().get(0).tellDoubled(where, problems);
    return problems.errorCount() > before ? Optional.empty() : Optional.of(best);
  }

  /** Whether a row has that many cells, empty ones at its end aside. */
  static boolean fits(CsvText.Row row, int columns) {
    List<String> cells = row.cells();
    return cells.size() == columns
        || (cells.size() > columns
            && cells.subList(columns, cells.size()).stream().allMatch(String::isEmpty));
  }

  private void look(CsvText text, char delimiter) throws UnreadableCsv {
    List<CsvText.Row> rows = new ArrayList<>();
    text.rows(delimiter, row -> rows.add(row) && rows.size() < ROWS_SEARCHED + ROWS_COMPARED);
    Optional<Found> best = Optional.empty();
    boolean sure = false;
    for (int i = 0; i < Math.min(rows.size(), ROWS_SEARCHED) && !sure; i++) {
      if (rows.get(i).cells().size() > widest.size()) {
        widest = rows.get(i).cells();
      }
      Optional<Found> here = at(rows, i, delimiter);
      if (here.isPresent()
          && (best.isEmpty() || rank(here.get()).compareTo(rank(best.get())) < 0)) {
        best = here;
        // A row of station names may have been taken together with headings that say more alone.
        sure =
            here.get().stations().isEmpty()
                ? rank(here.get()) != Rank.SINGLE
                : rank(here.get()) == Rank.KNOWN;
      }
    }
    best.ifPresent(found::add);
  }

  private static Rank rank(Found found) {
    return found.fits().get(0).layout().rank();
  }

  /** Tries the row with what stands below it, with units below it, and with the row above it. */
  private Optional<Found> at(List<CsvText.Row> rows, int i, char delimiter) {
    CsvText.Row row = rows.get(i);
    if (row.cells().size() < 2) {
      return Optional.empty();
    }
    int below = rowsBelow(rows, i);
    List<String> stacked = row.cells();
    List<String> withUnits = row.cells();
    for (int k = 1; k <= below; k++) {
      stacked = stacked(stacked, rows.get(i + k).cells());
      withUnits = stacked(withUnits, onlyUnits(rows.get(i + k).cells()));
    }
    Set<List<String>> tries = new LinkedHashSet<>(List.of(stacked));
    tries.add(withUnits);
    if (i > 0 && rows.get(i - 1).cells().size() == row.cells().size()) {
      tries.add(stacked(rows.get(i - 1).cells(), row.cells()));
    }
    String title =
        rows.subList(0, i).stream()
            .map(r -> String.join(" ", r.cells()))
            .collect(Collectors.joining(" "));
    for (List<String> cells : tries) {
      List<CsvHeading> headings = cells.stream().map(CsvHeading::of).toList();
      List<CsvColumns> fits = fits(headings);
      List<String> stations = List.of();
      if (fits.isEmpty() || fits.get(0).doubled()) {
        Optional<SideBySide> sides = sides(rows, i, headings, title);
        List<CsvColumns> ofOne = sides.map(s -> fits(s.headings(station))).orElse(List.of());
        if (!ofOne.isEmpty()) {
          fits = ofOne;
          stations = sides.orElseThrow().stations();
        }
      }
      if (!fits.isEmpty()) {
        List<CsvText.Row> rest = rows.subList(i + 1 + below, rows.size());
        int columns = headings.size();
        int consistent = (int) rest.stream().filter(r -> fits(r, columns)).count();
        long lastLine = rows.get(i + below).line();
        return Optional.of(
            new Found(delimiter, row.line(), lastLine, title, fits, stations, consistent));
      }
    }
    return Optional.empty();
  }

  /** The stations of a table that has columns for several. */
  private Optional<SideBySide> sides(
      List<CsvText.Row> rows, int i, List<CsvHeading> headings, String title) {
    Optional<SideBySide> above =
        i == 0 ? Optional.empty() : SideBySide.below(rows.get(i - 1).cells(), headings);
    return above
        .or(() -> SideBySide.within(headings))
        .or(() -> station.flatMap(s -> SideBySide.named(s, headings, layouts, title)));
  }

  /** The layouts that fit, of the highest rank that has any. */
  private List<CsvColumns> fits(List<CsvHeading> headings) {
    List<CsvColumns> fits =
        layouts.stream()
            .map(layout -> CsvColumns.match(layout, headings))
            .filter(match -> match.missing().isEmpty())
            .toList();
    Optional<Rank> first =
        fits.stream().map(fit -> fit.layout().rank()).min(Comparator.naturalOrder());
    return fits.stream().filter(fit -> first.equals(Optional.of(fit.layout().rank()))).toList();
  }

  /** Rows below that go on with the headings: as wide, with a word, and without any figure. */
  private static int rowsBelow(List<CsvText.Row> rows, int i) {
    int below = 0;
    while (below < MOST_ROWS_BELOW && i + below + 1 < rows.size()) {
      CsvText.Row next = rows.get(i + below + 1);
      boolean words = next.cells().stream().noneMatch(c -> c.chars().anyMatch(Character::isDigit));
      if (!words || next.cells().size() != rows.get(i).cells().size()) {
        break;
      }
      below++;
    }
    return below;
  }

  private static List<String> onlyUnits(List<String> cells) {
    return cells.stream().map(c -> CsvHeading.of("of " + c).unit().isPresent() ? c : "").toList();
  }

  private static List<String> stacked(List<String> upper, List<String> lower) {
    List<String> both = new ArrayList<>();
    for (int i = 0; i < upper.size(); i++) {
      both.add((upper.get(i) + " " + lower.get(i)).strip());
    }
    return both;
  }

  private void tellMissing(CsvText text, Problems problems) {
    List<CsvHeading> headings = widest.stream().map(CsvHeading::of).toList();
    List<CsvColumns> matches =
        layouts.stream().map(layout -> CsvColumns.match(layout, headings)).toList();
    String shown = String.join(" | ", widest);
    if (matches.stream().anyMatch(CsvColumns::monthly)) {
      problems.error("IN-402", text.name(), shown);
      return;
    }
    List<Phrase> wants =
        matches.stream()
            .filter(match -> match.layout().cuts().isEmpty())
            .filter(match -> match.layout().rank() != Rank.SINGLE && distance(match) <= 1)
            .sorted(Comparator.comparingInt(HeadingSearch::distance))
            .limit(LISTED)
            .map(HeadingSearch::lacks)
            .toList();
    problems.error(
        "IN-305", text.name(), shown, Phrase.joined("apart", wants), SideBySide.hint(headings));
  }

  /** Common layouts first, then those that lack least. */
  private static int distance(CsvColumns match) {
    boolean common = List.of("daily", "readings").contains(match.layout().name());
    return common ? 0 : match.missing().size();
  }

  private static Phrase lacks(CsvColumns match) {
    return Phrase.of("layout-lacks", match.layout().name(), match.missing());
  }
}
