package org.hibernacle.report;

import java.util.List;
import java.util.stream.Stream;
import org.hibernacle.model.Diagnostic;

/** What a reader of a losses review must know beside it. */
final class ReviewNotesTable {
  private ReviewNotesTable() {}

  static Section write(ReviewMaterial m) {
    NoteRows rows = new NoteRows("notes", m.words().text("intro.review-notes"), m.words());
    for (String key : List.of("causes", "same-air", "one-season")) {
      rows.note(StyleRole.CAUTION, "caution", m.words().text("review.caution." + key));
    }
    List<Diagnostic> met = m.facts().diagnostics();
    Stream.concat(met.stream().filter(d -> !isToldWithThePlan(d)), m.review().notes().stream())
        .sorted(Diagnostic.ORDER)
        .forEach(rows::problem);
    long told = met.stream().filter(ReviewNotesTable::isToldWithThePlan).count();
    if (told > 0) {
      rows.note(StyleRole.PLAIN, "remark", m.words().text("review.notes-of-plan", told));
    }
    rows.note(
        StyleRole.PLAIN,
        "assumption",
        m.words()
            .text(
                "assumption.site",
                m.measures().difference(m.review().inventory().settings().siteColderByK())));
    rows.note(StyleRole.PLAIN, "assumption", m.words().text("assumption.kept"));
    rows.note(StyleRole.PLAIN, "source", m.words().text("source.wilson"));
    rows.note(StyleRole.PLAIN, "source", m.words().text("source.fieller"));
    rows.origin(m.facts());
    return rows.build();
  }

  /** Defaults and the like of the inventory, which stand in the season plan already. */
  private static boolean isToldWithThePlan(Diagnostic d) {
    return d.severity() == Diagnostic.Severity.NOTE
        && (d.code().startsWith("IN-1") || d.code().startsWith("IN-2"));
  }
}
