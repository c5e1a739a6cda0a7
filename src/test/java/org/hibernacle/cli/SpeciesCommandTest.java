package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

class SpeciesCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private String line(String start) {
    return out.toString().lines().filter(l -> l.strip().startsWith(start)).findFirst().orElse("");
  }

  @Test
  void listsEveryTaxonAndMarksEstimates() {
    assertEquals(ExitCode.DONE, run("species"));
    List<Species> species = SpeciesCatalogue.builtIn().species();
    for (Species s : species) {
      String line = line(s.taxon() + "  ");
      assertTrue(line.contains(s.zone().toString()), s.taxon());
      assertTrue(line.contains(s.rootLimitIsEstimate() ? " estimate " : " published "), line);
    }
    long estimates = species.stream().filter(Species::rootLimitIsEstimate).count();
    assertTrue(out.toString().contains(estimates + " of " + species.size() + " root limits"));
  }

  // Pinus contorta: LT50 of roots -7.5 °C, Coleman, Hinckley, McNaughton and Smit 1992, abstract.
  @Test
  void showsOneSpeciesWithBasisAndSource() {
    assertEquals(ExitCode.DONE, run("species", "lodgepole", "pine"));
    assertTrue(out.toString().startsWith("Pinus contorta"), out::toString);
    assertTrue(line("root limit").contains("rests on the figure on record"), out::toString);
    assertEquals(
        "root death on record  -7.5 °C half of roots of whole plants die (coleman1992; read in a"
            + " text)",
        line("root death").strip());
    assertTrue(line("sources").contains("coleman1992"));
  }

  @Test
  void marksEstimatesAndMemory() {
    run("species", "Pinus mugo");
    assertTrue(line("root limit").contains("ESTIMATE, by the rule "), out::toString);
    assertTrue(line("hardiness zone").endsWith(" *"), out::toString);
    assertTrue(out.toString().contains("* common practice or memory"), out::toString);
    out.getBuffer().setLength(0);
    run("species", "Picea", "omorika");
    assertTrue(line("root death").contains("FROM MEMORY, not read"), out::toString);
  }

  @Test
  void saysThatABoundIsABoundAndUnknownIsNotSafe() {
    run("species", "Picea abies");
    assertTrue(line("root death").contains("survive: a bound"), out::toString);
    assertTrue(line("poisonous").contains("so not safe"), out::toString);
  }

  @Test
  void showsPublishedChillPortions() {
    run("species", "Prunus mume");
    assertTrue(line("chill need").contains("24 to 82 chill portions published"), out::toString);
    run("species", "Malus domestica");
    assertTrue(out.toString().contains(", 50 chill portions published"), out::toString);
  }

  @Test
  void aGenusShowsTheCautiousRowAndWhatItStandsFor() {
    assertEquals(ExitCode.DONE, run("species", "Cornus", "sp."));
    assertTrue(line("root limit").contains("ESTIMATE, by the rule most-cautious"));
    assertTrue(
        out.toString().contains("figures of: Cornus florida, Cornus kousa, Cornus mas."),
        out::toString);
  }

  @Test
  void anUnknownNameBringsTheNearestOnes() {
    assertEquals(ExitCode.WRONG_USE, run("species", "Acer", "plamatum"));
    assertEquals("", out.toString());
    assertTrue(
        err.toString().startsWith("The species table has no \"Acer plamatum\"."), err::toString);
    assertTrue(err.toString().contains("Nearest: Acer palmatum,"), err::toString);
  }

  @Test
  void bothCommandsAreListedInTheHelp() {
    run("--help");
    assertTrue(line("blank").contains("Writes a blank inventory workbook"), out::toString);
    assertTrue(line("species").contains("species table"), out::toString);
  }
}
