package org.hibernacle.report;

import java.util.List;
import java.util.Optional;

/**
 * What a workbook has and paper has not: cells that answer, charts that follow their tables, and
 * ways from the plan to the keeper's own sheets.
 *
 * @param glance at the top of the first sheet; empty where nothing is to come
 * @param charts one a section at most
 * @param ids columns of carried sheets by which plants are found
 * @param record what the workbook says of itself for programs that read it back, line by line; a
 *     line begins with what it is about
 */
public record ForScreen(
    Optional<Glance> glance,
    List<SheetChart> charts,
    List<IdColumn> ids,
    List<List<String>> record) {
  /** Where rows of sections lead that want to go to the keeper's own row of a plant. */
  public static final String INVENTORY = "inventory";

  /** Nothing of all that. */
  public static final ForScreen NOTHING =
      new ForScreen(Optional.empty(), List.of(), List.of(), List.of());

  /**
   * A column of Ids on a carried sheet, to which rows of sections lead.
   *
   * @param sheet its name
   * @param heading of the column
   * @param back id of the section that its Ids lead to
   */
  public record IdColumn(String sheet, String heading, String back) {}

  public ForScreen {
    charts = List.copyOf(charts);
    ids = List.copyOf(ids);
    record = record.stream().map(List::copyOf).toList();
  }
}
