package org.hibernacle.report;

import java.util.List;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrasebook;

/** The rows of a notes table: problems met, remarks, where a file came from. */
final class NoteRows {
  private final Words words;
  private final Table table;

  NoteRows(String id, String intro, Words words) {
    this.words = words;
    this.table =
        new Table(words, id, Table.EVERYWHERE)
            .intro(intro)
            .column("note-kind", 14)
            .column("note", 76)
            .column("where", 40)
            .column("consequence", 40);
  }

  Section build() {
    return table.build();
  }

  void problem(Diagnostic d) {
    StyleRole role =
        switch (d.severity()) {
          case ERROR -> StyleRole.DANGER;
          case WARNING -> StyleRole.CAUTION;
          case NOTE -> StyleRole.PLAIN;
        };
    Phrasebook messages = words.messages();
    String found = messages.found(d);
    String expected = messages.expected(d);
    String consequence = messages.consequence(d);
    table.row(
        role,
        List.of(
            new Cell.Level(role, words.of("severity", d.severity())),
            new Cell.Text(
                expected.isBlank() ? found : words.text("note.found-expected", found, expected)),
            new Cell.Text(words.text("note.where", messages.where(d), d.code())),
            consequence.isBlank() ? new Cell.Gap() : new Cell.Text(consequence)));
  }

  void note(StyleRole role, String kind, String text) {
    table.row(
        role,
        List.of(
            new Cell.Level(role, words.text("note.kind." + kind)),
            new Cell.Text(text),
            new Cell.Gap(),
            new Cell.Gap()));
  }

  /** Program, inputs and options. */
  void origin(RunFacts facts) {
    note(
        StyleRole.SUBTLE,
        "origin",
        words.text("origin.program", facts.programVersion(), facts.digest()));
    for (RunFacts.InputFile input : facts.inputs()) {
      note(StyleRole.SUBTLE, "origin", words.text("origin.input", input.name(), input.sha256()));
    }
    facts
        .options()
        .forEach(option -> note(StyleRole.SUBTLE, "origin", words.text("origin.option", option)));
  }
}
