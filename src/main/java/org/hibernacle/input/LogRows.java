package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.SheetTable;

/**
 * Reads the real dates out of a filled-in log: which plant was carried where on which day. Where it
 * was put is the place that the plan had for such a move, unless <em>Stood in</em> names another
 * for the last one but a return.
 */
public final class LogRows {
  /** A column of real dates. */
  private enum Kind {
    MOVE_DOWN(PlanColumn.REAL_MOVE_DOWN),
    MOVE_IN(PlanColumn.REAL_MOVE_IN),
    STEP_OUT(PlanColumn.REAL_STEP_OUT),
    RETURN(PlanColumn.REAL_RETURN);

    private final PlanColumn column;

    Kind(PlanColumn column) {
      this.column = column;
    }

    /** The word for it in messages. */
    String word() {
      return Choice.MOVE.word(name());
    }
  }

  private record Dated(Kind kind, LocalDate date) {}

  private final EarlierPlan plan;
  private final Inventory inventory;
  private final LocalDate asOf;
  private final Problems problems;

  private LogRows(EarlierPlan plan, Inventory inventory, LocalDate asOf, Problems problems) {
    this.plan = plan;
    this.inventory = inventory;
    this.asOf = asOf;
    this.problems = problems;
  }

  /**
   * The moves made up to a day.
   *
   * @param plan whose log it is
   * @param asOf last day that counts; later real dates are taken as not yet come
   * @return by plant and date; what can not be told is an error in {@code problems}
   */
  public static List<MoveMade> read(
      EarlierPlan plan, Inventory inventory, LocalDate asOf, Problems problems) {
    return new LogRows(plan, inventory, asOf, problems).read();
  }

  private List<MoveMade> read() {
    TreeMap<String, List<List<Object>>> rowsById = new TreeMap<>();
    for (List<Object> row : plan.log().table().rows()) {
      rowsById
          .computeIfAbsent(SheetTable.plainText(cell(row, PlanColumn.ID)), id -> new ArrayList<>())
          .add(row);
    }
    List<MoveMade> made = new ArrayList<>();
    rowsById.forEach(
        (id, rows) ->
            inventory.plants().stream()
                .filter(plant -> plant.id().equals(id))
                .findFirst()
                .ifPresent(plant -> made.addAll(moves(plant, rows))));
    return made;
  }

  private List<MoveMade> moves(Plant plant, List<List<Object>> rows) {
    List<Dated> dated = new ArrayList<>();
    String realPlace = "";
    for (List<Object> row : rows) {
      String named = SheetTable.plainText(cell(row, PlanColumn.STOOD_IN));
      realPlace = named.isEmpty() ? realPlace : named;
      for (Kind kind : Kind.values()) {
        date(plant, kind, row).ifPresent(date -> dated.add(new Dated(kind, date)));
      }
    }
    dated.sort(Comparator.comparing(Dated::date).thenComparing(Dated::kind));
    List<MoveMade> made = new ArrayList<>();
    int lastAway = -1;
    for (int i = 0; i < dated.size(); i++) {
      lastAway = dated.get(i).kind() == Kind.RETURN ? lastAway : i;
    }
    for (int i = 0; i < dated.size(); i++) {
      Dated move = dated.get(i);
      place(plant, move, i == lastAway ? realPlace : "")
          .ifPresent(place -> made.add(new MoveMade(plant.id(), move.date(), place)));
    }
    return made;
  }

  private Object cell(List<Object> row, PlanColumn column) {
    return plan.log().value(row, column.id());
  }

  private Optional<LocalDate> date(Plant plant, Kind kind, List<Object> row) {
    Object value = cell(row, kind.column);
    Phrase where = where(plant, kind.column);
    if (value.equals("")) {
      return Optional.empty();
    }
    Optional<LocalDate> date = date(value);
    if (date.isEmpty()) {
      problems.error(Code.REAL_DATE, where, value.toString());
    } else if (date.get().isAfter(asOf)) {
      problems.warning(Code.REAL_DATE_LATER, where, date.get(), asOf);
      return Optional.empty();
    }
    return date;
  }

  private static Optional<LocalDate> date(Object value) {
    if (value instanceof LocalDate date) {
      return Optional.of(date);
    }
    try {
      return Optional.of(LocalDate.parse(value.toString().strip()));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private Optional<String> place(Plant plant, Dated move, String realPlace) {
    if (!realPlace.isEmpty()) {
      Optional<String> known = known(realPlace);
      if (known.isEmpty()) {
        problems.error(Code.REAL_PLACE_UNKNOWN, where(plant, PlanColumn.STOOD_IN), realPlace);
      }
      return known;
    }
    if (move.kind() == Kind.RETURN) {
      return Optional.of(plant.home());
    }
    Optional<String> planned =
        plan.moves().stream()
            .filter(m -> m.plantId().equals(plant.id()))
            .filter(m -> m.kind().equals(move.kind().name()))
            .findFirst()
            .flatMap(m -> known(m.to()));
    if (planned.isEmpty()) {
      problems.error(
          Code.REAL_PLACE_MISSING,
          where(plant, move.kind().column),
          move.date(),
          move.kind().word(),
          plan.log().heading(PlanColumn.STOOD_IN.id()));
    }
    return planned;
  }

  private Optional<String> known(String name) {
    return inventory.places().stream()
        .map(Place::name)
        .filter(place -> place.equalsIgnoreCase(name.strip()))
        .findFirst();
  }

  private Phrase where(Plant plant, PlanColumn column) {
    Phrase sheet = Phrase.of("where.sheet", plan.file(), plan.log().table().name());
    Phrase row = Phrase.of("where.in", sheet, plant.id());
    return Phrase.of("where.in", row, plan.log().heading(column.id()));
  }
}
