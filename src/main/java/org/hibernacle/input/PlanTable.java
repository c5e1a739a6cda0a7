package org.hibernacle.input;

import java.util.List;

/** A table of a season plan that is read back. */
enum PlanTable {
  LOG("log", "Log"),
  MOVES("moving-days", "Moving days"),
  TASKS("tasks", "Tasks"),
  OCCUPANCY("occupancy", "Occupancy"),
  WINTERS("winters", "Winters"),
  NOTES("notes", "Notes");

  private final String id;
  private final String title;

  PlanTable(String id, String title) {
    this.id = id;
    this.title = title;
  }

  /** Of the section that wrote it. */
  String id() {
    return id;
  }

  /** Name of its sheet in English. */
  String title() {
    return title;
  }

  /** Defined name of its cells. */
  String cells() {
    return "table_" + id.replace('-', '_');
  }

  /** Columns of it that are read, or told from those of the keeper's own. */
  List<PlanColumn> columns() {
    return switch (this) {
      case LOG ->
          List.of(
              PlanColumn.ID,
              PlanColumn.NAME,
              PlanColumn.PLANNED_MOVE_DOWN,
              PlanColumn.PLANNED_MOVE_IN,
              PlanColumn.PLANNED_STEP_OUT,
              PlanColumn.PLANNED_RETURN,
              PlanColumn.REAL_MOVE_DOWN,
              PlanColumn.REAL_MOVE_IN,
              PlanColumn.REAL_STEP_OUT,
              PlanColumn.REAL_RETURN,
              PlanColumn.IF_BLANK,
              PlanColumn.STOOD_IN,
              PlanColumn.OUTCOME,
              PlanColumn.NOTICED,
              PlanColumn.REMARK,
              PlanColumn.DAYS_LATE,
              PlanColumn.DAYS_AWAY);
      case MOVES ->
          List.of(
              PlanColumn.DATE,
              PlanColumn.MOVE,
              PlanColumn.ID,
              PlanColumn.NAME,
              PlanColumn.FROM,
              PlanColumn.TO,
              PlanColumn.DONE);
      case TASKS ->
          List.of(
              PlanColumn.TASK_FROM,
              PlanColumn.TASK_TO,
              PlanColumn.TASK,
              PlanColumn.PLACE,
              PlanColumn.PLANTS,
              PlanColumn.DONE);
      case OCCUPANCY -> List.of(PlanColumn.WEEK);
      case WINTERS -> List.of(PlanColumn.COLDEST_NIGHT, PlanColumn.COLDEST_NIGHT_DAY);
      case NOTES -> List.of(PlanColumn.NOTE, PlanColumn.WHERE);
    };
  }
}
