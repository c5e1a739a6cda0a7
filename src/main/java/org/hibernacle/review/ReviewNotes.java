package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Place;
import org.hibernacle.planning.OneWinter;
import org.hibernacle.review.PlantReviewer.Reviewed;

/** Says what the review assumed. Codes are listed in docs/messages.md. */
final class ReviewNotes {
  private final ReviewQuestion question;
  private final List<Diagnostic> notes = new ArrayList<>();

  private ReviewNotes(ReviewQuestion question) {
    this.question = question;
  }

  static List<Diagnostic> of(
      ReviewQuestion question, WinterSelection selection, OneWinter one, List<Reviewed> reviewed) {
    ReviewNotes notes = new ReviewNotes(question);
    notes.winter(selection, one);
    notes.log(reviewed);
    notes.loggers(one);
    return notes.notes.stream().sorted(Diagnostic.ORDER).toList();
  }

  private void winter(WinterSelection selection, OneWinter one) {
    LocalDate end = one.winter().first().plusDays(one.winter().days());
    if (end.isBefore(question.log().season().endExclusive())) {
      add(
          Severity.NOTE,
          "RV-501",
          "temperatures",
          "the file ends on " + end.minusDays(1),
          "the whole season",
          "what came after it is not judged");
    }
    selection.winters().stream()
        .filter(w -> w.season().equals(question.log().season()))
        .map(UsableWinter::bridged)
        .filter(b -> !b.isEmpty())
        .forEach(
            b ->
                add(
                    Severity.WARNING,
                    "RV-502",
                    "temperatures",
                    count(b.size(), "short gap", "short gaps")
                        + ", the first on "
                        + b.get(0).fromInclusive(),
                    "every day",
                    "bridged by straight lines"));
    if (question.log().winters().isEmpty()) {
      add(
          Severity.NOTE,
          "RV-503",
          "the season plan",
          "the winters that it was made for are not told",
          "the sheet Winters",
          "the winter is compared with none");
    }
  }

  private void log(List<Reviewed> reviewed) {
    int untold = (int) reviewed.stream().filter(r -> r.review().outcomeAssumed()).count();
    if (untold > 0) {
      add(
          Severity.NOTE,
          "RV-504",
          "the log",
          count(untold, "plant has", "plants have") + " no outcome",
          "an outcome for each",
          "no damage is assumed; limits learn nothing from such plants");
    }
    int assumed =
        (int)
            reviewed.stream()
                .flatMap(r -> r.review().moves().stream())
                .filter(MoveCompared::assumed)
                .filter(m -> m.real().isPresent())
                .count();
    if (assumed > 0) {
      add(
          Severity.NOTE,
          "RV-505",
          "the log",
          count(assumed, "planned move has", "planned moves have") + " no real day",
          "a day, or \"not moved\"",
          "taken to have happened as planned");
    }
    for (Reviewed r : reviewed) {
      String where = "the log, " + r.review().plant().id();
      for (RealStays.Step step : r.dropped()) {
        String day = step.day().map(LocalDate::toString).orElse("");
        if (step.assumed()) {
          add(
              Severity.NOTE,
              "RV-506",
              where,
              "a move planned for " + day + " does not go with the days told",
              "",
              "taken not to have happened");
        } else {
          add(
              Severity.WARNING,
              "RV-507",
              where,
              "a move on " + day + " that was not planned",
              "the place, in \"Stood in\"",
              "left out");
        }
      }
    }
    int back = (int) reviewed.stream().filter(Reviewed::backAssumed).count();
    if (back > 0) {
      add(
          Severity.NOTE,
          "RV-508",
          "the log",
          count(back, "plant was", "plants were") + " to be carried back on frosty spring nights",
          "",
          "taken to have been carried when frost asked for it");
    }
  }

  private void loggers(OneWinter one) {
    List<Place> places = question.inventory().places();
    for (int p = 0; p < places.size(); p++) {
      String name = places.get(p).name();
      if (question.loggers().containsKey(name) && one.simulator().modelError(p).isEmpty()) {
        add(
            Severity.WARNING,
            "RV-509",
            "place " + name,
            "a logger without a day in the season",
            "days in the season",
            "the model stands, as if there were no logger");
      }
    }
  }

  private static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  private void add(
      Severity severity,
      String code,
      String where,
      String found,
      String expected,
      String consequence) {
    notes.add(new Diagnostic(severity, code, where, found, expected, consequence));
  }
}
