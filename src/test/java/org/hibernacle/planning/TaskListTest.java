package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.hibernacle.planning.Task.Kind;
import org.junit.jupiter.api.Test;

class TaskListTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 14);

  @Test
  void liftsOfOneDayAndPlaceAreOneLineWithTheHeaviest() {
    List<Task> joined =
        TaskList.join(
            List.of(
                task(Kind.TWO_PERSON_LIFT, 0, 0, "Bed", 31, "P-09"),
                task(Kind.TWO_PERSON_LIFT, 0, 0, "Bed", 48, "P-02"),
                task(Kind.TWO_PERSON_LIFT, 0, 0, "Shed", 25, "P-05"),
                task(Kind.TWO_PERSON_LIFT, 7, 7, "Bed", 60, "P-11")));
    assertEquals(
        List.of(
            task(Kind.TWO_PERSON_LIFT, 0, 0, "Bed", 48, "P-02", "P-09"),
            task(Kind.TWO_PERSON_LIFT, 0, 0, "Shed", 25, "P-05"),
            task(Kind.TWO_PERSON_LIFT, 7, 7, "Bed", 60, "P-11")),
        joined);
  }

  /** What lasts is one line a place from the first day of any plant to the last. */
  @Test
  void seasonLongTasksOfAPlaceAreOneLineWhateverTheirDays() {
    for (Kind kind : List.of(Kind.FLEECE_READY, Kind.THAW_OUT, Kind.KEEP_DRY)) {
      List<Task> joined =
          TaskList.join(
              List.of(
                  task(kind, 20, 50, "Bed", 24, "P-02"),
                  task(kind, 12, 30, "Bed", 31, "P-07"),
                  task(kind, 12, 30, "Shed", 22, "P-01")));
      assertEquals(
          List.of(
              task(kind, 12, 50, "Bed", 31, "P-02", "P-07"),
              task(kind, 12, 30, "Shed", 22, "P-01")),
          joined);
    }
  }

  @Test
  void aPlantIsNamedOnceInALine() {
    List<Task> joined =
        TaskList.join(
            List.of(
                task(Kind.KEEP_DRY, 0, 20, "Shed", 1, "P-02"),
                task(Kind.KEEP_DRY, 40, 60, "Shed", 1, "P-02")));
    assertEquals(List.of("P-02"), joined.get(0).plantIds());
    assertEquals(DAY.plusDays(60), joined.get(0).to());
  }

  @Test
  void theOrderDoesNotDependOnTheOrderOfThePlants() {
    List<Task> tasks =
        new ArrayList<>(
            List.of(
                task(Kind.MULCH_ON, 3, 3, "Bed", 200, "P-01"),
                task(Kind.CLEAN_UP, 0, 3, "", 1, "P-02"),
                task(Kind.RODENT_GUARD, 3, 3, "Bed", 1, "P-03"),
                task(Kind.KEEP_DRY, 3, 9, "Shed", 1, "P-04"),
                task(Kind.MULCH_ON, 3, 3, "Alcove", 150, "P-05")));
    List<Task> joined = TaskList.join(tasks);
    Collections.reverse(tasks);
    assertEquals(joined, TaskList.join(tasks));
    assertEquals(
        List.of(Kind.CLEAN_UP, Kind.MULCH_ON, Kind.MULCH_ON, Kind.RODENT_GUARD, Kind.KEEP_DRY),
        joined.stream().map(Task::kind).toList());
    assertEquals("Alcove", joined.get(1).place());
  }

  @Test
  void aTaskWithoutAmountKeepsNone() {
    Task bare = new Task(Kind.PEST_LOOK, DAY, DAY, "Shed", List.of(), OptionalDouble.empty());
    assertEquals(List.of(bare), TaskList.join(List.of(bare, bare)));
    assertEquals(List.of(), TaskList.join(List.of()));
  }

  private static Task task(
      Kind kind, int fromDay, int toDay, String place, double amount, String... ids) {
    return new Task(
        kind,
        DAY.plusDays(fromDay),
        DAY.plusDays(toDay),
        place,
        List.of(ids),
        OptionalDouble.of(amount));
  }
}
