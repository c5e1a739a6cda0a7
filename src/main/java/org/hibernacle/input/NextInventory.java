package org.hibernacle.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Revision;
import org.hibernacle.model.Revision.PlantYear;
import org.hibernacle.model.Settings.Units;
import org.hibernacle.model.SheetTable;

/**
 * Writes the sheets of the inventory that the next season is planned from: plants that are there no
 * more are set aside, figures accepted last time are put in force, new proposals stand beside the
 * figures they would change, and the season joins the history. All else stays as it was found.
 */
public final class NextInventory {
  private static final String SEASON = "Season";
  private static final String ID = "Id";
  private static final String OUTCOME = "Outcome";
  private static final String CAUSE = "Likely cause";

  private final Inventory inventory;
  private final Revision revision;
  private final SpeciesCatalogue catalogue;
  private final Units units;
  private final Map<String, SheetTable> sheets = new LinkedHashMap<>();

  private NextInventory(Inventory inventory, Revision revision, SpeciesCatalogue catalogue) {
    this.inventory = inventory;
    this.revision = revision;
    this.catalogue = catalogue;
    this.units = inventory.settings().units();
  }

  /**
   * A column in which the keeper is to answer.
   *
   * @param sheet its name
   * @param heading of the column
   * @param beside heading of the column with what is proposed
   * @param answers to choose from
   */
  public record Question(String sheet, String heading, String beside, List<String> answers) {
    public Question {
      answers = List.copyOf(answers);
    }
  }

  /** The sheets in order; {@code catalogue} is the built-in table. */
  public static List<SheetTable> sheets(
      Inventory inventory, Revision revision, SpeciesCatalogue catalogue) {
    return new NextInventory(inventory, revision, catalogue).write();
  }

  /** What the keeper is asked in these sheets. */
  public static List<Question> questions(List<SheetTable> sheets) {
    List<Question> questions = new ArrayList<>();
    for (SheetTable table : sheets) {
      Optional<InventorySheet> kind = InventorySheet.named(table.name());
      for (Proposals proposals : List.of(Proposals.OF_PLACES, Proposals.OF_SPECIES)) {
        if (kind.equals(Optional.of(proposals.figure().sheet()))) {
          EditedSheet sheet = new EditedSheet(kind.get(), table);
          sheet
              .index(proposals.accept())
              .ifPresent(
                  i ->
                      questions.add(
                          new Question(
                              table.name(),
                              table.headings().get(i),
                              table.headings().get(sheet.index(proposals.proposed()).orElse(i)),
                              Choice.YES_NO.words())));
        }
      }
    }
    return questions;
  }

  private List<SheetTable> write() {
    SheetTable earlierSetAside = review(InventorySheet.SET_ASIDE);
    SheetTable earlierHistory = review(InventorySheet.HISTORY);
    for (SheetTable table : inventory.sheets()) {
      Optional<InventorySheet> kind = InventorySheet.named(table.name());
      if (kind.isPresent() && !table.headings().isEmpty()) {
        EditedSheet sheet = new EditedSheet(kind.get(), table);
        switch (kind.get()) {
          case PLANTS -> plants(sheet, earlierSetAside);
          case PLACES -> places(sheet);
          case SPECIES -> species(sheet);
          case SETTINGS -> put(sheet.table());
        }
        if (kind.get() == InventorySheet.PLACES && lacksSpecies()) {
          newSpecies();
        }
      } else if (!InventorySheet.isOfReviews(table.name())) {
        put(table);
      }
    }
    Optional.ofNullable(sheets.remove(earlierSetAside.name())).ifPresent(this::put);
    put(history(earlierHistory));
    return List.copyOf(sheets.values());
  }

  private SheetTable review(String name) {
    return inventory.sheets().stream()
        .filter(t -> Words.key(t.name()).equals(Words.key(name)))
        .findFirst()
        .orElse(new SheetTable(name, List.of(), List.of()));
  }

  private boolean lacksSpecies() {
    return inventory.sheets().stream()
        .filter(t -> !t.headings().isEmpty())
        .noneMatch(t -> InventorySheet.named(t.name()).equals(Optional.of(InventorySheet.SPECIES)));
  }

  private void put(SheetTable table) {
    sheets.put(table.name(), table);
  }

  private void plants(EditedSheet sheet, SheetTable earlierSetAside) {
    Map<String, PlantYear> years = new HashMap<>();
    revision.years().forEach(y -> years.put(y.id(), y));
    List<String> headings =
        new ArrayList<>(List.of("Set aside after", "How it ended", "Likely cause", "Last remark"));
    headings.addAll(sheet.headings());
    List<List<Object>> rows = new ArrayList<>();
    List<List<Object>> left =
        sheet.remove(
            row ->
                Optional.ofNullable(years.get(sheet.text(row, Column.ID)))
                    .filter(PlantYear::hasLeft)
                    .isPresent());
    for (List<Object> row : left) {
      PlantYear year = Optional.ofNullable(years.get(sheet.text(row, Column.ID))).orElseThrow();
      List<Object> more =
          new ArrayList<>(List.of(season(), word(year), year.cause(), year.remark()));
      more.addAll(row);
      rows.add(more);
    }
    put(sheet.table());
    SheetTable setAside =
        joined(earlierSetAside, new SheetTable(earlierSetAside.name(), headings, rows));
    if (!setAside.rows().isEmpty()) {
      put(setAside);
    }
  }

  private void places(EditedSheet sheet) {
    Proposals.OF_PLACES.settle(sheet);
    if (!revision.warmths().isEmpty()) {
      Proposals.OF_PLACES.prepare(sheet, units);
    }
    for (Revision.Warmth warmth : revision.warmths()) {
      sheet.rows().stream()
          .filter(r -> Words.key(sheet.text(r, Column.PLACE)).equals(Words.key(warmth.place())))
          .forEach(
              r ->
                  Proposals.OF_PLACES.write(
                      sheet,
                      r,
                      new Proposals.Figures(warmth.oldK(), warmth.proposedK(), warmth.reason()),
                      units));
    }
    put(sheet.table());
  }

  private void newSpecies() {
    if (rootLimits().isEmpty()) {
      return;
    }
    List<String> headings = List.of(Column.TAXON.heading(), Column.ROOT_LIMIT.heading());
    String title = InventorySheet.SPECIES.title();
    species(new EditedSheet(InventorySheet.SPECIES, new SheetTable(title, headings, List.of())));
  }

  private void species(EditedSheet sheet) {
    List<List<Object>> asked =
        sheet.rows().stream().filter(r -> !sheet.text(r, Column.PROPOSED_LIMIT).isEmpty()).toList();
    Proposals.OF_SPECIES.settle(sheet);
    List<Revision.RootLimit> limits = rootLimits();
    // A row that held nothing but a proposal has no more to say once that is refused.
    sheet.remove(r -> asked.contains(r) && filled(r) <= 1);
    if (!limits.isEmpty()) {
      Proposals.OF_SPECIES.prepare(sheet, units);
    }
    for (Revision.RootLimit limit : limits) {
      List<Object> row =
          sheet.rows().stream()
              .filter(r -> isOf(sheet.text(r, Column.TAXON), limit.taxon()))
              .findFirst()
              .orElseGet(() -> newRow(sheet, limit.taxon()));
      Proposals.Figures figures =
          new Proposals.Figures(limit.oldC(), limit.proposedC(), limit.reason());
      Proposals.OF_SPECIES.write(sheet, row, figures, units);
    }
    put(sheet.table());
  }

  private static long filled(List<Object> row) {
    return row.stream().filter(value -> !value.equals(EditedSheet.BLANK)).count();
  }

  private static List<Object> newRow(EditedSheet sheet, String taxon) {
    List<Object> row = sheet.addRow();
    row.set(sheet.indexOrAdd(Column.TAXON), taxon);
    return row;
  }

  private static boolean isOf(String written, String taxon) {
    return SpeciesNames.key(written).equals(SpeciesNames.key(taxon));
  }

  /** Proposals for a species that has a row; a genus or a group has none that could be changed. */
  private List<Revision.RootLimit> rootLimits() {
    return revision.rootLimits().stream().filter(l -> hasRow(l.taxon())).toList();
  }

  private boolean hasRow(String taxon) {
    boolean own =
        inventory.sheets().stream()
            .filter(t -> InventorySheet.named(t.name()).equals(Optional.of(InventorySheet.SPECIES)))
            .map(t -> new EditedSheet(InventorySheet.SPECIES, t))
            .anyMatch(s -> s.rows().stream().anyMatch(r -> isOf(s.text(r, Column.TAXON), taxon)));
    return own || catalogue.row(taxon).isPresent();
  }

  private SheetTable history(SheetTable earlier) {
    List<String> headings =
        List.of(
            SEASON,
            ID,
            "Name",
            "Species",
            "Place in midwinter",
            "Smallest margin K",
            OUTCOME,
            CAUSE);
    List<List<Object>> rows = new ArrayList<>();
    for (PlantYear year : revision.years()) {
      rows.add(
          List.of(
              season(),
              year.id(),
              year.name(),
              year.species(),
              year.place(),
              Math.round(year.smallestMarginK() * 10) / 10.0,
              word(year),
              year.cause()));
    }
    return joined(earlier, new SheetTable(earlier.name(), headings, rows));
  }

  private String season() {
    return revision.season().toString();
  }

  private static String word(PlantYear year) {
    return year.outcome().map(Choice.OUTCOME::word).orElse("");
  }

  /** Rows of earlier seasons, then those of this one, under the headings of both. */
  private SheetTable joined(SheetTable earlier, SheetTable now) {
    List<String> earlierKeys = numbered(earlier.headings());
    List<String> nowKeys = numbered(now.headings());
    Map<String, String> headings = new LinkedHashMap<>();
    for (int i = 0; i < earlierKeys.size(); i++) {
      headings.put(earlierKeys.get(i), earlier.headings().get(i));
    }
    for (int i = 0; i < nowKeys.size(); i++) {
      headings.putIfAbsent(nowKeys.get(i), now.headings().get(i));
    }
    int season = List.copyOf(headings.keySet()).indexOf(nowKeys.get(0));
    List<List<Object>> rows = new ArrayList<>();
    for (List<Object> row : earlier.rows()) {
      List<Object> under = under(headings.keySet(), earlierKeys, row);
      if (!under.get(season).equals(season())) {
        rows.add(under);
      }
    }
    now.rows().forEach(row -> rows.add(under(headings.keySet(), nowKeys, row)));
    return new SheetTable(now.name(), List.copyOf(headings.values()), rows);
  }

  /** Each heading with how many alike stand before it, so that none is taken for another. */
  private static List<String> numbered(List<String> headings) {
    Map<String, Integer> seen = new HashMap<>();
    return headings.stream().map(h -> h + "\n" + seen.merge(h, 1, Integer::sum)).toList();
  }

  private static List<Object> under(Set<String> all, List<String> own, List<Object> row) {
    List<Object> cells = new ArrayList<>();
    for (String key : all) {
      int index = own.indexOf(key);
      cells.add(index < 0 ? EditedSheet.BLANK : row.get(index));
    }
    return cells;
  }
}
