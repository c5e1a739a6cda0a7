package org.hibernacle.report;

import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Revision;
import org.hibernacle.model.Settings;
import org.hibernacle.model.SheetTable;
import org.hibernacle.review.Correction;
import org.hibernacle.review.PlantReview;
import org.hibernacle.review.SeasonReview;

/**
 * Writes the losses review and what goes with the next inventory: the only place that decides their
 * words, numbers, rounding and order.
 */
public final class ReviewAuthor {
  private final ReviewMaterial m;

  private ReviewAuthor(ReviewMaterial material) {
    this.m = material;
  }

  /**
   * Tells the review.
   *
   * @param review to tell
   * @param facts of the run: version, input files, problems met
   * @param words in the language of the report
   */
  public static SeasonReport write(SeasonReview review, RunFacts facts, Words words) {
    return new ReviewAuthor(ReviewMaterial.of(review, facts, words)).write();
  }

  /** What the season changes in the inventory, in the words of the review. */
  public static Revision revision(SeasonReview review, RunFacts facts, Words words) {
    return new ReviewAuthor(ReviewMaterial.of(review, facts, words)).revision();
  }

  /**
   * The next inventory as a report without sections, its sheets carried.
   *
   * @param sheets of the inventory
   * @param asked of the keeper in them
   */
  public static SeasonReport inventory(
      SeasonReview review,
      RunFacts facts,
      Words words,
      List<SheetTable> sheets,
      List<SeasonReport.Asked> asked) {
    return new ReviewAuthor(ReviewMaterial.of(review, facts, words)).inventory(sheets, asked);
  }

  private SeasonReport write() {
    List<Section> sections =
        List.of(
            LossTable.write(m),
            ReviewPlaceTable.write(m),
            MoveComparedTable.punctuality(m),
            CorrectionTable.write(m),
            MoveComparedTable.moves(m),
            LivedTable.write(m),
            SurvivalTable.write(m),
            DoseTable.write(m),
            WinterComparedTable.write(m),
            ReviewNotesTable.write(m));
    return report("review.title", ReviewOverview.write(m), sections, List.of(), List.of());
  }

  private SeasonReport inventory(List<SheetTable> sheets, List<SeasonReport.Asked> asked) {
    int proposals = asked.stream().mapToInt(a -> proposals(sheets, a)).sum();
    List<SeasonReport.Fact> overview = ReviewOverview.ofInventory(m, proposals);
    return report("next.title", overview, List.of(), sheets, asked);
  }

  private static int proposals(List<SheetTable> sheets, SeasonReport.Asked asked) {
    return sheets.stream()
        .filter(t -> t.name().equals(asked.sheet()))
        .mapToInt(
            t -> {
              int beside = t.headings().indexOf(asked.beside());
              return (int) t.rows().stream().filter(r -> !r.get(beside).equals("")).count();
            })
        .sum();
  }

  private SeasonReport report(
      String title,
      List<SeasonReport.Fact> overview,
      List<Section> sections,
      List<SheetTable> carried,
      List<SeasonReport.Asked> asked) {
    Words words = m.words();
    Settings settings = m.review().inventory().settings();
    String season = m.review().season().toString();
    String subtitle =
        settings.site().isBlank()
            ? words.text("review.subtitle", season)
            : words.text("review.subtitle.site", settings.site(), season);
    return new SeasonReport(
        words.text(title),
        subtitle,
        overview,
        sections,
        List.of(),
        List.of(),
        new TemperatureChart("", "", List.of(), List.of()),
        carried,
        words.text("review.footer", m.facts().programVersion(), subtitle),
        m.facts().digest(),
        settings.paper() == Settings.Paper.LETTER,
        settings.firstDayOfWeek(),
        words.locale(),
        asked,
        ForScreen.NOTHING,
        // The first day on which the winter could be reviewed.
        Paper.dated(m.review().season().coreEndExclusive()));
  }

  private Revision revision() {
    return new Revision(
        m.review().season(),
        m.review().plants().stream().map(this::year).toList(),
        m.review().corrections().stream()
            .filter(Correction.RootLimit.class::isInstance)
            .map(Correction.RootLimit.class::cast)
            .map(
                c ->
                    new Revision.RootLimit(
                        c.taxon(), c.oldC(), c.proposedC(), CorrectionTable.reason(m, c)))
            .toList(),
        m.review().corrections().stream()
            .filter(Correction.PlaceWarmth.class::isInstance)
            .map(Correction.PlaceWarmth.class::cast)
            .map(
                c ->
                    new Revision.Warmth(
                        c.place(),
                        c.oldWarmerByK(),
                        c.proposedWarmerByK(),
                        CorrectionTable.reason(m, c)))
            .toList());
  }

  private Revision.PlantYear year(PlantReview p) {
    return new Revision.PlantYear(
        p.plant().id(),
        p.plant().name(),
        p.plant().species().taxon(),
        m.winterPlace(p),
        p.lived().roots().marginK(),
        p.outcomeAssumed() ? Optional.empty() : Optional.of(p.outcome()),
        m.causes(p),
        p.remark());
  }
}
