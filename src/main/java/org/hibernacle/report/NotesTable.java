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
  private final Table table;

  private NotesTable(Material material) {
    this.m = material;
    this.table =
        new Table(m.words(), "notes", Table.EVERYWHERE)
            .intro(m.words().text("intro.notes"))
            .column("note-kind", 14)
            .column("note", 76)
            .column("where", 40)
            .column("consequence", 40);
  }

  static Section write(Material m) {
    NotesTable notes = new NotesTable(m);
    notes.cautions();
    notes.problems();
    notes.assumptions();
    notes.accuracy();
    notes.sources();
    notes.origin();
    return notes.table.build();
  }

  /** What may hurt people comes first. */
  private void cautions() {
    String onePerson = m.measures().mass(MoveTable.ONE_PERSON_KG);
    Stream.of("heaters", "power", "lifting", "ice", "poison", "pesticides", "vents")
        .map(key -> m.words().text("caution." + key, onePerson))
        .forEach(text -> note(StyleRole.CAUTION, "caution", text));
  }

  private void problems() {
    Stream.concat(m.facts().diagnostics().stream(), m.plan().notes().stream())
        .sorted(Diagnostic.ORDER)
        .forEach(this::problem);
    m.facts().remarks().forEach(remark -> note(StyleRole.PLAIN, "remark", remark));
  }

  private void problem(Diagnostic d) {
    StyleRole role =
        switch (d.severity()) {
          case ERROR -> StyleRole.DANGER;
          case WARNING -> StyleRole.CAUTION;
          case NOTE -> StyleRole.PLAIN;
        };
    String found =
        d.expected().isBlank()
            ? d.found()
            : m.words().text("note.found-expected", d.found(), d.expected());
    table.row(
        role,
        List.of(
            new Cell.Level(role, m.words().of("severity", d.severity())),
            new Cell.Text(found),
            new Cell.Text(m.words().text("note.where", d.where(), d.code())),
            d.consequence().isBlank() ? new Cell.Gap() : new Cell.Text(d.consequence())));
  }

  private void assumptions() {
    Settings settings = m.plan().inventory().settings();
    note(StyleRole.PLAIN, "assumption", m.words().text("assumption.dates"));
    note(
        StyleRole.PLAIN,
        "assumption",
        m.words().text("assumption.margin", m.measures().difference(m.plan().caution().marginK())));
    note(
        StyleRole.PLAIN,
        "assumption",
        m.words().text("assumption.site", m.measures().difference(settings.siteColderByK())));
    note(
        StyleRole.PLAIN,
        "assumption",
        m.words()
            .text(
                "assumption.plateau",
                m.measures().temperature(0),
                m.measures().temperature(Rule.PLATEAU_SUFFICES_C)));
    note(StyleRole.PLAIN, "assumption", m.words().text("assumption.kept"));
  }

  private void accuracy() {
    long estimates =
        m.plan().plants().stream().filter(p -> Material.limitIsEstimate(p.plant())).count();
    note(StyleRole.PLAIN, "accuracy", m.words().text("accuracy.air"));
    note(
        StyleRole.PLAIN,
        "accuracy",
        m.words().text("accuracy.limits", estimates, m.plan().plants().size()));
    note(StyleRole.PLAIN, "accuracy", m.words().text("accuracy.winters", Overview.wintersUsed(m)));
    note(StyleRole.PLAIN, "accuracy", m.words().text("accuracy.poison"));
  }

  private void sources() {
    for (String key : List.of("lifting", "chill", "frosts", "contrast")) {
      note(StyleRole.PLAIN, "source", m.words().text("source." + key));
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
      note(StyleRole.PLAIN, "source", m.words().text("source.species", String.join(", ", keys)));
    }
  }

  private void origin() {
    RunFacts facts = m.facts();
    note(
        StyleRole.SUBTLE,
        "origin",
        m.words().text("origin.program", facts.programVersion(), facts.digest()));
    for (RunFacts.InputFile input : facts.inputs()) {
      note(
          StyleRole.SUBTLE, "origin", m.words().text("origin.input", input.name(), input.sha256()));
    }
    facts
        .options()
        .forEach(
            option -> note(StyleRole.SUBTLE, "origin", m.words().text("origin.option", option)));
    note(StyleRole.SUBTLE, "origin", Overview.wintersUsed(m));
  }

  private void note(StyleRole role, String kind, String text) {
    table.row(
        role,
        List.of(
            new Cell.Level(role, m.words().text("note.kind." + kind)),
            new Cell.Text(text),
            new Cell.Gap(),
            new Cell.Gap()));
  }
}
