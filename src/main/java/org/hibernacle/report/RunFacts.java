package org.hibernacle.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.LogSheet;

/**
 * What the run knows beside the plan.
 *
 * @param programVersion as the program tells it
 * @param inputs files read, in the order of the command line
 * @param diagnostics met while reading
 * @param options of the command line that decide the result, one text each
 * @param remarks further lines for the notes, such as what changed since the last plan
 * @param earlierLog the log of an earlier plan, to be carried over; empty if there was none
 * @param before the plan of the same season that this one takes the place of; empty if there was
 *     none
 */
public record RunFacts(
    String programVersion,
    List<InputFile> inputs,
    List<Diagnostic> diagnostics,
    List<String> options,
    List<String> remarks,
    Optional<LogSheet> earlierLog,
    Optional<AsPlanned> before) {

  /** A run without a plan before it. */
  public RunFacts(
      String programVersion,
      List<InputFile> inputs,
      List<Diagnostic> diagnostics,
      List<String> options,
      List<String> remarks,
      Optional<LogSheet> earlierLog) {
    this(programVersion, inputs, diagnostics, options, remarks, earlierLog, Optional.empty());
  }

  /**
   * A file read.
   *
   * @param name without folders
   * @param sha256 digest of its bytes, hexadecimal
   */
  public record InputFile(String name, String sha256) {}

  public RunFacts {
    inputs = List.copyOf(inputs);
    diagnostics = List.copyOf(diagnostics);
    options = List.copyOf(options);
    remarks = List.copyOf(remarks);
  }

  /**
   * Sixteen hexadecimal digits that change when the program's version, a byte of the inputs, or an
   * option does. File names play no part.
   */
  public String digest() {
    List<String> lines = new ArrayList<>();
    lines.add(programVersion);
    inputs.forEach(input -> lines.add("input " + input.sha256()));
    options.forEach(option -> lines.add("option " + option));
    return digest(lines);
  }

  /** Sixteen hexadecimal digits that change when a line does. */
  public static String digest(List<String> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(line).append('\n'));
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      byte[] hash = sha.digest(text.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
