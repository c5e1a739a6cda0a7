package org.hibernacle.input;

/** A column of a season plan that is read back, and its English heading. */
enum PlanColumn {
  ID("id", "Id"),
  NAME("name", "Name"),
  PLANNED_MOVE_DOWN("planned-move-down", "Planned move-down"),
  PLANNED_MOVE_IN("planned-move-in", "Planned move-in"),
  PLANNED_STEP_OUT("planned-step-out", "Planned step-out"),
  PLANNED_RETURN("planned-return", "Planned return"),
  REAL_MOVE_DOWN("real-move-down", "Real move-down"),
  REAL_MOVE_IN("real-move-in", "Real move-in"),
  REAL_STEP_OUT("real-step-out", "Real step-out"),
  REAL_RETURN("real-return", "Real return"),
  IF_BLANK("if-blank", "A blank day means"),
  STOOD_IN("stood-in", "Stood in"),
  OUTCOME("outcome", "Outcome"),
  NOTICED("noticed", "Noticed on"),
  REMARK("remark", "Remark"),
  DAYS_LATE("days-late", "Days late"),
  DAYS_AWAY("days-away", "Days away"),
  DATE("date", "Date"),
  MOVE("move", "Move"),
  FROM("from", "From"),
  TO("to", "To"),
  DONE("done", "Done"),
  TASK_FROM("task-from", "From"),
  TASK_TO("task-to", "To"),
  TASK("task", "What"),
  PLACE("place", "Place"),
  PLANTS("plants", "Plants"),
  WEEK("week", "Week from"),
  /** Its unit follows in the heading. */
  COLDEST_NIGHT("coldest-night", "Coldest night"),
  COLDEST_NIGHT_DAY("coldest-night-day", "Coldest on"),
  NOTE("note", "What"),
  WHERE("where", "Where");

  private final String id;
  private final String title;

  PlanColumn(String id, String title) {
    this.id = id;
    this.title = title;
  }

  /** The same in every language. */
  String id() {
    return id;
  }

  /** Heading in English, without a unit. */
  String title() {
    return title;
  }

  /** Whether a heading with that key is this one's in English. */
  boolean titled(String key) {
    return this == COLDEST_NIGHT ? key.startsWith(Words.key(title)) : key.equals(Words.key(title));
  }
}
