package org.hibernacle.report;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Rule;

/** What a reader must know beside the plan: problems, assumptions, accuracy, sources, origin. */
final class NotesTable {
  private final Material m;
  private final NoteRows rows;

  private NotesTable(Material material) {
    this.m = material;
    this.rows = new NoteRows("notes", m.words().text("intro.notes"), m.words());
  }

  static Section write(Material m) {
    NotesTable notes = new NotesTable(m);
    notes.cautions();
    notes.problems();
    notes.assumptions();
    notes.accuracy();
    notes.sources();
    notes.rows.origin(m.facts());
    notes.rows.note(StyleRole.SUBTLE, "origin", Overview.wintersUsed(m));
    return notes.rows.build();
  }

  /** What may hurt people comes first. */
  private void cautions() {
    String onePerson = m.measures().mass(MoveTable.ONE_PERSON_KG);
    Stream.of("heaters", "power", "lifting", "ice", "poison", "pesticides", "vents")
        .map(key -> m.words().text("caution." + key, onePerson))
        .forEach(text -> rows.note(StyleRole.CAUTION, "caution", text));
  }

  private void problems() {
    Stream.concat(m.facts().diagnostics().stream(), m.plan().notes().stream())
        .sorted(Diagnostic.ORDER)
        .forEach(rows::problem);
    m.facts().remarks().forEach(remark -> rows.note(StyleRole.PLAIN, "remark", remark));
  }

  private void assumptions() {
    Settings settings = m.plan().inventory().settings();
    rows.note(StyleRole.PLAIN, "assumption", m.words().text("assumption.dates"));
    rows.note(
        StyleRole.PLAIN,
        "assumption",
        m.words().text("assumption.margin", m.measures().difference(m.plan().caution().marginK())));
    rows.note(
        StyleRole.PLAIN,
        "assumption",
        m.words().text("assumption.site", m.measures().difference(settings.siteColderByK())));
    rows.note(
        StyleRole.PLAIN,
        "assumption",
        m.words()
            .text(
                "assumption.plateau",
                m.measures().temperature(0),
                m.measures().temperature(Rule.PLATEAU_SUFFICES_C)));
    rows.note(StyleRole.PLAIN, "assumption", m.words().text("assumption.kept"));
  }

  private void accuracy() {
    long estimates =
        m.plan().plants().stream().filter(p -> Material.limitIsEstimate(p.plant())).count();
    rows.note(StyleRole.PLAIN, "accuracy", m.words().text("accuracy.air"));
    rows.note(
        StyleRole.PLAIN,
        "accuracy",
        m.words().text("accuracy.limits", estimates, m.plan().plants().size()));
    rows.note(
        StyleRole.PLAIN, "accuracy", m.words().text("accuracy.winters", Overview.wintersUsed(m)));
    rows.note(StyleRole.PLAIN, "accuracy", m.words().text("accuracy.poison"));
  }

  private void sources() {
    for (String key : List.of("lifting", "chill", "frosts", "contrast")) {
      rows.note(StyleRole.PLAIN, "source", m.words().text("source." + key));
    }
    TreeSet<String> keys = new TreeSet<>();
    m.plan().plants().stream()
        .map(PlantPlan::plant)
        .forEach(
            plant -> {
              keys.addAll(plant.species().sources());
              keys.addAll(plant.rootSpecies().sources());
            });
    if (!keys.isEmpty()) {
      rows.note(
          StyleRole.PLAIN, "source", m.words().text("source.species", m.words().listed(keys)));
    }
  }
}
