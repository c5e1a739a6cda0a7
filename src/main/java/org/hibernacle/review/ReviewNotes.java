package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Place;
import org.hibernacle.planning.OneWinter;
import org.hibernacle.review.PlantReviewer.Reviewed;

/** Says what the review assumed. Codes are listed in docs/messages.md, texts in the bundle. */
final class ReviewNotes {
  private static final Phrase TEMPERATURES = Phrase.of("where.temperatures");

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
      note("RV-501", TEMPERATURES, end.minusDays(1));
    }
    selection.winters().stream()
        .filter(w -> w.season().equals(question.log().season()))
        .map(UsableWinter::bridged)
        .filter(b -> !b.isEmpty())
        .forEach(b -> warning("RV-502", TEMPERATURES, b.size(), b.get(0).fromInclusive()));
    if (question.log().winters().isEmpty()) {
      note("RV-503", Phrase.of("where.season-plan"));
    }
  }

  private void log(List<Reviewed> reviewed) {
    Phrase where = Phrase.of("where.log");
    int untold = (int) reviewed.stream().filter(r -> r.review().outcomeAssumed()).count();
    if (untold > 0) {
      note("RV-504", where, untold);
    }
    int assumed =
        (int)
            reviewed.stream()
                .flatMap(r -> r.review().moves().stream())
                .filter(MoveCompared::assumed)
                .filter(m -> m.real().isPresent())
                .count();
    if (assumed > 0) {
      note("RV-505", where, assumed);
    }
    for (Reviewed r : reviewed) {
      for (RealStays.Step step : r.dropped()) {
        dropped(step, Phrase.of("where.log-of", r.review().plant().id()));
      }
    }
    int back = (int) reviewed.stream().filter(Reviewed::backAssumed).count();
    if (back > 0) {
      note("RV-508", where, back);
    }
  }

  private void dropped(RealStays.Step step, Phrase where) {
    Object day = step.day().<Object>map(d -> d).orElse("");
    if (step.assumed()) {
      note("RV-506", where, day);
    } else {
      warning("RV-507", where, day);
    }
  }

  private void loggers(OneWinter one) {
    List<Place> places = question.inventory().places();
    for (int p = 0; p < places.size(); p++) {
      String name = places.get(p).name();
      if (question.loggers().containsKey(name) && one.simulator().modelError(p).isEmpty()) {
        warning("RV-509", Phrase.of("where.place", name));
      }
    }
  }

  private void note(String key, Phrase where, Object... arguments) {
    notes.add(new Diagnostic(Severity.NOTE, key, where, List.of(arguments)));
  }

  private void warning(String key, Phrase where, Object... arguments) {
    notes.add(new Diagnostic(Severity.WARNING, key, where, List.of(arguments)));
  }
}
