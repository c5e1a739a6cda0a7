package org.hibernacle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * What a shell and the command {@code man} want to know of the commands, told from the commands
 * themselves: a completion script for bash, and a manual page a command.
 */
public final class CommandPages {
  private static final String NAME = "hibernacle";

  private CommandPages() {}

  /** Writes {@code completion/hibernacle} and {@code man/man1} into a folder. */
  public static void write(Path folder, String version) throws IOException {
    CommandLine line = Hibernacle.commandLine(ProgressLine.silent());
    Path completion = Files.createDirectories(folder.resolve("completion"));
    Files.writeString(completion.resolve(NAME), AutoComplete.bash(NAME, line));
    Path manual = Files.createDirectories(folder.resolve("man").resolve("man1"));
    for (Map.Entry<String, String> page : pages(line, version).entrySet()) {
      Files.writeString(manual.resolve(page.getKey() + ".1"), page.getValue());
    }
  }

  private static Map<String, String> pages(CommandLine line, String version) {
    Map<String, String> pages = new TreeMap<>();
    pages.put(NAME, page(NAME, line.getCommandSpec(), version));
    line.getSubcommands()
        .forEach(
            (name, command) -> {
              if (!name.equals("help")) {
                pages.put(
                    NAME + "-" + name, page(NAME + "-" + name, command.getCommandSpec(), version));
              }
            });
    return pages;
  }

  private static String page(String title, CommandSpec spec, String version) {
    UsageMessageSpec usage = spec.usageMessage();
    List<String> lines = new ArrayList<>();
    lines.add(".TH " + title.toUpperCase(Locale.ROOT) + " 1 \"\" \"" + NAME + " " + version + "\"");
    lines.add(".SH NAME");
    lines.add(text(title + " - " + usage.description()[0].replaceAll("\\.$", "")));
    lines.add(".SH SYNOPSIS");
    lines.add(".B " + text(title.replace('-', ' ')));
    lines.add(text(synopsis(spec)));
    lines.add(".SH DESCRIPTION");
    for (String paragraph : usage.description()) {
      lines.add(text(paragraph));
      lines.add(".PP");
    }
    arguments(spec, lines);
    options(spec, lines);
    commands(spec, lines);
    if (usage.footer().length > 0) {
      lines.add(usage.footerHeading().isBlank() ? ".SH NOTES" : ".SH EXAMPLES");
      footer(usage.footer(), lines);
    }
    lines.add(".SH EXIT STATUS");
    spec.root()
        .usageMessage()
        .exitCodeList()
        .forEach((code, meaning) -> item("\\fB" + text(code) + "\\fR", text(meaning), lines));
    return String.join("\n", lines) + "\n";
  }

  private static String synopsis(CommandSpec spec) {
    List<String> words = new ArrayList<>(List.of("[OPTIONS]"));
    for (PositionalParamSpec parameter : spec.positionalParameters()) {
      boolean several = parameter.arity().max() > 1;
      String word = parameter.paramLabel() + (several ? " ..." : "");
      words.add(parameter.required() ? word : "[" + word + "]");
    }
    if (!spec.subcommands().isEmpty()) {
      words.add("COMMAND");
    }
    return String.join(" ", words);
  }

  private static void arguments(CommandSpec spec, List<String> lines) {
    if (!spec.positionalParameters().isEmpty()) {
      lines.add(".SH ARGUMENTS");
    }
    for (PositionalParamSpec parameter : spec.positionalParameters()) {
      item("\\fI" + text(parameter.paramLabel()) + "\\fR", description(parameter), lines);
    }
  }

  private static void options(CommandSpec spec, List<String> lines) {
    lines.add(".SH OPTIONS");
    for (OptionSpec option : spec.options()) {
      if (option.hidden()) {
        continue;
      }
      List<String> names = new ArrayList<>();
      for (String name : option.names()) {
        names.add("\\fB" + text(name) + "\\fR");
      }
      String value = option.arity().max() > 0 ? " \\fI" + text(option.paramLabel()) + "\\fR" : "";
      item(String.join(", ", names) + value, description(option), lines);
    }
  }

  private static void commands(CommandSpec spec, List<String> lines) {
    if (spec.subcommands().isEmpty()) {
      return;
    }
    lines.add(".SH COMMANDS");
    spec.subcommands()
        .forEach(
            (name, command) ->
                item(
                    "\\fB" + text(name) + "\\fR",
                    text(sentence(command.getCommandSpec().usageMessage())),
                    lines));
  }

  private static String sentence(UsageMessageSpec usage) {
    return usage.header().length > 0 ? usage.header()[0] : usage.description()[0];
  }

  private static String description(ArgSpec argument) {
    return text(String.join(" ", argument.description()));
  }

  private static void item(String term, String meaning, List<String> lines) {
    lines.addAll(List.of(".TP", term, meaning));
  }

  /** Lines with a margin are examples, which are not joined. */
  private static void footer(String[] footer, List<String> lines) {
    for (String line : footer) {
      if (line.isBlank()) {
        lines.add(".PP");
      } else if (line.startsWith(" ")) {
        lines.addAll(List.of(".nf", text(line), ".fi"));
      } else {
        lines.add(text(line));
      }
    }
  }

  /** Plain text for troff: hyphens stay hyphens, and no line begins like a request. */
  private static String text(String plain) {
    String escaped = plain.replace("\\", "\\e").replace("-", "\\-");
    return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
  }
}
