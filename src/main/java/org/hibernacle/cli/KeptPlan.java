package org.hibernacle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Season;
import org.hibernacle.report.xlsx.Seal;

/**
 * Keeps a season plan beside the one that takes its place, if the keeper wrote anything into it
 * that the new one does not carry on.
 */
final class KeptPlan {
  private KeptPlan() {}

  /**
   * The file to be written beside, with a warning that says so; empty where nothing would be lost,
   * or where the very same file is kept already.
   *
   * @param dryRun whether nothing is going to be written
   */
  static Optional<OutputFile> of(
      OutputFolder folder, EarlierPlans earlier, Season planned, boolean dryRun, Problems problems)
      throws IOException {
    Path file = folder.target(PlanCommand.WORKBOOK);
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    byte[] bytes = Files.readAllBytes(file);
    Seal.State seal = Seal.of(bytes);
    if (seal == Seal.State.WHOLE && !earlier.wouldLoseTicks(planned)) {
      return Optional.empty();
    }
    int number = 1;
    while (Files.exists(folder.target(name(number))) && !holds(folder, number, bytes)) {
      number++;
    }
    String kept = name(number);
    problems.warning(
        seal == Seal.State.NONE ? "IN-470.unsealed" : "IN-470",
        PlanCommand.WORKBOOK,
        Phrase.of(dryRun ? "would-be-kept" : "is-kept", kept));
    return Files.exists(folder.target(kept))
        ? Optional.empty()
        : Optional.of(new OutputFile(kept, out -> out.write(bytes)));
  }

  private static String name(int number) {
    return PlanCommand.WORKBOOK.replace(".xlsx", "-kept-" + number + ".xlsx");
  }

  private static boolean holds(OutputFolder folder, int number, byte[] bytes) throws IOException {
    Path file = folder.target(name(number));
    return Files.isRegularFile(file) && Arrays.equals(Files.readAllBytes(file), bytes);
  }
}
