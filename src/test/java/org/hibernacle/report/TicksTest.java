package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Tick;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;
import org.junit.jupiter.api.Test;

/** Which ticks of an earlier plan go on, and that none is lost; the limits are our own. */
class TicksTest {
  private static final SeasonPlan PLAN = Fixtures.plan();
  private static final PlantMove MOVE = PLAN.movesByDate().get(0);
  private static final Task TASK =
      PLAN.tasks().stream().filter(t -> t.plantIds().size() > 1).findFirst().orElseThrow();

  private static Tick move(LocalDate day, String to) {
    return new Tick(
        Phrase.verbatim("season-plan.xlsx, sheet Moving days"),
        "",
        true,
        MOVE.move().kind().name(),
        "move-down",
        day,
        day,
        to,
        List.of(MOVE.plan().plant().id()));
  }

  private static Tick task(LocalDate from, LocalDate to, List<String> ids) {
    return new Tick(
        Phrase.verbatim("season-plan.xlsx, sheet Tasks"),
        "x",
        false,
        TASK.kind().name(),
        "do it",
        from,
        to,
        TASK.place(),
        ids);
  }

  private static Ticks ticks(Tick... ticks) {
    return Ticks.of(PLAN, List.of(ticks));
  }

  private static List<Diagnostic> lost(Tick... ticks) {
    return Ticks.withoutWork(
        PLAN, new AsPlanned(Set.of(), List.of(), List.of(ticks), Optional.empty()));
  }

  @Test
  void whatWasCarriedToAPlaceStandsThereOnWhateverDay() {
    Tick tick = move(MOVE.move().date().minusDays(60), MOVE.move().to().name());
    assertTrue(ticks(tick).isDone(MOVE));
    assertEquals(List.of(), lost(tick));
  }

  @Test
  void whatWasCarriedElsewhereIsStillToBeCarried() {
    Tick tick = move(MOVE.move().date(), "Attic");
    assertFalse(ticks(tick).isDone(MOVE));
    Diagnostic told = lost(tick).get(0);
    assertEquals(Tick.WITHOUT_WORK, told.code());
    assertTrue(told.found().contains("Attic") && told.found().contains(MOVE.plan().plant().id()));
  }

  @Test
  void otherWorkMayShiftByAWeek() {
    LocalDate week = TASK.from().minusDays(Ticks.DAYS_APART);
    assertTrue(ticks(task(week, week, TASK.plantIds())).isDone(TASK));
    Tick earlier = task(week.minusDays(1), week.minusDays(1), TASK.plantIds());
    assertFalse(ticks(earlier).isDone(TASK));
    assertTrue(lost(earlier).get(0).found().contains("\"x\""));
    LocalDate after = TASK.to().plusDays(Ticks.DAYS_APART);
    assertTrue(ticks(task(after, after, TASK.plantIds())).isDone(TASK));
    assertFalse(ticks(task(after.plusDays(1), after.plusDays(1), List.of())).isDone(TASK));
  }

  @Test
  void workThatIsAskedForMorePlantsIsNotDone() {
    List<String> fewer = TASK.plantIds().subList(0, 1);
    assertFalse(ticks(task(TASK.from(), TASK.to(), fewer)).isDone(TASK));
    assertEquals(1, lost(task(TASK.from(), TASK.to(), fewer)).size());
    assertTrue(ticks(task(TASK.from(), TASK.to(), List.of())).isDone(TASK));
  }

  /** What the notes told once, they tell again in the same words. */
  @Test
  void aTickWithoutWorkIsToldFromPlanToPlan() {
    Diagnostic first = lost(move(MOVE.move().date(), "Attic")).get(0);
    Tick told = noteOf(first);
    assertEquals(
        List.of(first.toString()), lost(told, told).stream().map(Diagnostic::toString).toList());
  }

  @Test
  void aNoteEndsOnceItsWorkIsTicked() {
    Diagnostic first = lost(move(MOVE.move().date(), "Attic")).get(0);
    assertEquals(Diagnostic.Severity.WARNING, first.severity());
    Tick note = noteOf(first);
    assertEquals(Diagnostic.Severity.NOTE, lost(note).get(0).severity());
    assertEquals(List.of(), lost(note, move(MOVE.move().date(), MOVE.move().to().name())));
    assertEquals(1, lost(note, task(TASK.from(), TASK.to(), TASK.plantIds())).size());
  }

  /** What the next plan reads of a note in the plan before. */
  private static Tick noteOf(Diagnostic told) {
    return new Tick(
        told.place(), "", false, "", told.found(), LocalDate.EPOCH, LocalDate.EPOCH, "", List.of());
  }
}
