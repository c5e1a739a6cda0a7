package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.report.HandOut;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.xlsx.WorkbookTemplate;
import org.junit.jupiter.api.Test;

/** What is warned of when files of reports have been made. */
class LookTest {
  private static HandOut handOut(int lines) {
    HandOut.Item item = new HandOut.Item(HandOut.Kind.POINT, "", "Carry pots.");
    HandOut.Part part =
        new HandOut.Part("Days", StyleRole.HEADING, Collections.nCopies(lines, item));
    LocalDate day = LocalDate.of(2026, 12, 20);
    return new HandOut("Title", "Days", List.of(part), "Foot", "d", false, Locale.UK, day);
  }

  private static String warnings(int lines) throws IOException {
    Look look = new Look(WorkbookTemplate.standard(), Optional.empty());
    OutputFile file = look.handOut("hand-out.pdf", List.of(handOut(lines)));
    assertTrue(file.bytes().length > 1000);
    StringWriter err = new StringWriter();
    ProblemPrinter.print(look.warnings(), new PrintWriter(err, true));
    return err.toString();
  }

  @Test
  void aHandOutOfMoreThanFourPagesIsToldOf() throws IOException {
    assertEquals("", warnings(20));
    String told = warnings(400);
    assertTrue(told.contains("hand-out.pdf") && told.contains("[OU-632]"), told);
  }
}
