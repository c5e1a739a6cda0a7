package org.hibernacle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hibernacle.input.Problems;
import org.hibernacle.report.xlsx.WorkbookTemplate;
import picocli.CommandLine.Option;

/** The look of the files that are written. */
final class TemplateOption {
  @Option(
      names = "--template",
      paramLabel = "FILE",
      description =
          "Workbook with the look of the output: a restyled copy of templates/season-plan.xlsx."
              + " The standard look if not given.")
  private Optional<Path> file = Optional.empty();

  /** The template, which is never written to; what is wrong with it is an error. */
  WorkbookTemplate read(Problems problems) {
    if (file.isEmpty()) {
      return WorkbookTemplate.standard();
    }
    try (InputStream in = Files.newInputStream(file.get())) {
      WorkbookTemplate template =
          WorkbookTemplate.read(in, String.valueOf(file.get().getFileName()));
      template.check().forEach(p -> problems.error(p.key(), p.place(), p.arguments().toArray()));
      return template;
    } catch (IOException e) {
      problems.error("OU-600", file.get().toString(), String.valueOf(e.getMessage()));
      return WorkbookTemplate.standard();
    }
  }

  /** The file, if one was given. */
  List<Path> files() {
    return file.stream().toList();
  }
}
