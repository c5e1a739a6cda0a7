package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** Joins the tasks of many plants: one line a kind, place and first day, or a kind for seasons. */
final class TaskList {
  private TaskList() {}

  /** The tasks by date, joined. */
  static List<Task> join(List<Task> tasks) {
    Map<String, List<Task>> alike = new LinkedHashMap<>();
    for (Task task : tasks) {
      alike.computeIfAbsent(key(task), k -> new ArrayList<>()).add(task);
    }
    return alike.values().stream()
        .map(TaskList::one)
        .sorted(
            Comparator.comparing(Task::from)
                .thenComparing(Task::kind)
                .thenComparing(Task::place)
                .thenComparing(Task::to))
        .toList();
  }

  private static String key(Task task) {
    return switch (task.kind()) {
      case FLEECE_READY, IN_AND_OUT, THAW_OUT, KEEP_DRY, WAKING_ALARM ->
          task.kind() + "|" + task.place();
      default -> task.kind() + "|" + task.place() + "|" + task.from();
    };
  }

  private static Task one(List<Task> tasks) {
    Task any = tasks.get(0);
    TreeSet<String> ids = new TreeSet<>();
    tasks.forEach(t -> ids.addAll(t.plantIds()));
    OptionalDouble amount = tasks.stream().flatMapToDouble(t -> t.amount().stream()).max();
    if (any.kind() == Task.Kind.WRAP && amount.isPresent()) {
      amount = OptionalDouble.of(tasks.stream().mapToDouble(t -> t.amount().orElse(0)).sum());
    }
    return new Task(
        any.kind(),
        tasks.stream().map(Task::from).min(Comparator.naturalOrder()).orElseThrow(),
        tasks.stream().map(Task::to).max(Comparator.naturalOrder()).orElseThrow(),
        any.place(),
        List.copyOf(ids),
        amount);
  }
}
