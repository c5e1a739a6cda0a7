package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.hibernacle.planning.Pace;
import org.junit.jupiter.api.Test;

/** What stands at the foot of a terminal, by a clock that the test moves on. */
class ProgressLineTest {
  private final StringWriter screen = new StringWriter();
  private Duration time = ProgressLine.PATIENCE;
  private final ProgressLine line = new ProgressLine(new PrintWriter(screen), () -> time);

  /** What a terminal shows in the line in the end: a carriage return goes back to its start. */
  private String seen() {
    char[] cells = " ".repeat(100).toCharArray();
    int column = 0;
    for (char c : screen.toString().toCharArray()) {
      column = c == '\r' || c == '\n' ? 0 : column + 1;
      if (column > 0) {
        cells[column - 1] = c;
      }
    }
    return new String(cells).stripTrailing();
  }

  @Test
  void aRunThatIsSoonOverSaysNothing() {
    time = ProgressLine.PATIENCE.minusMillis(1);
    line.tell("reading the files");
    line.draw();
    line.reached(Pace.Part.PLANTS, 3, 9);
    line.draw();
    line.wipe();
    assertEquals("", screen.toString());
  }

  @Test
  void aLongOneSaysWhatItDoesInOneLine() {
    line.tell("reading the files");
    line.draw();
    assertEquals("reading the files", seen());
    line.reached(Pace.Part.PLANTS, 3, 9);
    line.draw();
    assertEquals("planning plants, 3 of 9", seen());
    line.reached(Pace.Part.SHARING, 0, 0);
    line.draw();
    line.tell("ok");
    line.draw();
    assertEquals("ok", seen(), "nothing is left of a longer line");
    assertEquals(-1, screen.toString().indexOf('\n'));
  }

  @Test
  void nothingIsDrawnTwice() {
    line.tell("reading the files");
    line.draw();
    int before = screen.toString().length();
    line.draw();
    assertEquals(before, screen.toString().length());
  }

  @Test
  void threadsThatOvertakeEachOtherCountForward() {
    line.reached(Pace.Part.PLANTS, 5, 9);
    line.reached(Pace.Part.PLANTS, 4, 9);
    line.draw();
    assertEquals("planning plants, 5 of 9", seen());
    line.reached(Pace.Part.REASONS, 0, 9);
    line.draw();
    assertEquals("giving reasons and tasks, 0 of 9 plants", seen());
  }

  @Test
  void itMakesWayForWhatIsPrinted() {
    StringWriter printed = new StringWriter();
    PrintWriter out = new PrintWriter(line.makingWay(printed));
    line.tell("reading the files");
    line.draw();
    out.println("Warning");
    assertEquals("", seen());
    line.draw();
    assertEquals("", seen(), "it stays away until there is something new to say");
    line.tell("writing the plan");
    line.draw();
    assertEquals("writing the plan", seen());
    assertEquals("Warning" + System.lineSeparator(), printed.toString());
  }

  @Test
  void whenTheProgramIsAskedToEndItStaysAway() {
    line.tell("reading the files");
    line.draw();
    line.end();
    assertEquals("", seen());
    line.reached(Pace.Part.PLANTS, 3, 9);
    line.draw();
    assertEquals("", seen(), "work goes on for a moment, the line does not");
  }

  @Test
  void everyPartHasASentenceThatFitsANarrowTerminal() {
    for (Pace.Part part : Pace.Part.values()) {
      line.reached(part, 99_999, 99_999);
      line.draw();
      assertEquals(true, seen().length() < 72, seen());
    }
  }
}
