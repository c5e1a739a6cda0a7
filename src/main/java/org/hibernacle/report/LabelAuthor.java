package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.LabelGrid;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Stay;

/** Writes the labels of the pots: what whoever stands before one has to know in winter. */
public final class LabelAuthor {
  private static final double MM_PER_CM = 10;

  private final Material m;

  private LabelAuthor(Material material) {
    this.m = material;
  }

  /**
   * Tells each pot's winter on its label.
   *
   * @param plan to tell
   * @param facts of the run
   * @param words in the language of the labels
   */
  public static LabelSheet write(SeasonPlan plan, RunFacts facts, Words words) {
    Material m = Material.of(plan, facts, words);
    LabelAuthor author = new LabelAuthor(m);
    List<LabelSheet.Label> labels = new ArrayList<>();
    for (PlantPlan p : m.byName()) {
      int pots = p.plant().count();
      for (int pot = 1; pot <= pots; pot++) {
        labels.add(author.label(p, pot, pots));
      }
    }
    return new LabelSheet(words.text("labels.title"), grid(plan.inventory().settings()), labels);
  }

  private static LabelSheet.Grid grid(Settings settings) {
    LabelGrid grid = settings.labels();
    return new LabelSheet.Grid(
        grid.rows(),
        grid.columns(),
        MM_PER_CM * grid.topCm(),
        MM_PER_CM * grid.leftCm(),
        MM_PER_CM * grid.labelWidthCm(settings.paper()),
        MM_PER_CM * grid.labelHeightCm(settings.paper()),
        MM_PER_CM * grid.downCm(),
        MM_PER_CM * grid.acrossCm());
  }

  private LabelSheet.Label label(PlantPlan p, int pot, int pots) {
    String id = p.plant().id();
    Stay winter = m.winterStay(p);
    return new LabelSheet.Label(
        pots == 1 ? id : m.words().text("label.pot", id, pot, pots),
        p.plant().name(),
        m.words().text("label.place", m.words().place(winter.place().name())),
        dates(p),
        night(p, winter));
  }

  private String night(PlantPlan p, Stay winter) {
    List<String> spans =
        ActBelow.during(m, p, winter).stream().map(LabelAuthor::onOneLine).toList();
    return spans.isEmpty()
        ? ""
        : m.words().text("label.night", m.measures().degrees(), m.words().listed(spans));
  }

  /** A number is not parted from what it means. */
  private static String onOneLine(String words) {
    return words.replace(' ', '\u00a0');
  }

  private List<String> dates(PlantPlan p) {
    if (p.verdict() == PlantPlan.Verdict.UNPROTECTED) {
      List<String> dates = new ArrayList<>(List.of(m.words().of("status", p.verdict())));
      dates.addAll(moves(p));
      return dates;
    }
    return p.moves().isEmpty() ? List.of(m.words().text("label.stays")) : moves(p);
  }

  private List<String> moves(PlantPlan p) {
    return p.moves().stream()
        .map(
            move ->
                m.words()
                    .text(
                        "label.date",
                        m.words().of("move", move.kind()),
                        onOneLine(m.display().day(move.date()))))
        .toList();
  }
}
