package org.hibernacle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.input.Problems;
import picocli.CommandLine.Mixin;

/** What the keeper says about the look of files; shared by the commands that write reports. */
final class LookOptions {
  @Mixin private TemplateOption template = new TemplateOption();

  @Mixin private FontOption font = new FontOption();

  /** Reads what was given; what is wrong with it is an error. */
  Look read(Problems problems) {
    return new Look(template.read(problems), font.read(problems));
  }

  /** The files given, which are never written to. */
  List<Path> files() {
    List<Path> files = new ArrayList<>(template.files());
    files.addAll(font.files());
    return files;
  }
}
