package org.hibernacle.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Supplier;
import org.hibernacle.planning.Pace;

/**
 * One line at the foot of a terminal that tells what takes so long, rewritten in place and wiped
 * away before anything else is written. Runs that are soon over never show it.
 */
final class ProgressLine implements Pace {
  /** How long a run goes on before it says what it does. */
  static final Duration PATIENCE = Duration.ofSeconds(2);

  /** Time between two looks: five a second. */
  private static final Duration BETWEEN = Duration.ofMillis(200);

  private final PrintWriter terminal;
  private final Supplier<Duration> sinceStart;
  private String text = "";
  private String shown = "";
  private Part part = Part.WINTERS;
  private int done;
  private boolean ended;

  /**
   * A line that is drawn when it is told to.
   *
   * @param terminal where it stands; nothing but this line may be written to it directly
   * @param sinceStart how long the run has gone on
   */
  ProgressLine(PrintWriter terminal, Supplier<Duration> sinceStart) {
    this.terminal = terminal;
    this.sinceStart = sinceStart;
  }

  /** A line that is never drawn. */
  static ProgressLine silent() {
    return new ProgressLine(new PrintWriter(Writer.nullWriter()), () -> Duration.ZERO);
  }

  /** A line that is drawn a few times a second, until the program ends. */
  static ProgressLine drawn(PrintWriter terminal) {
    long startNanos = System.nanoTime();
    ProgressLine line =
        new ProgressLine(terminal, () -> Duration.ofNanos(System.nanoTime() - startNanos));
    TimerTask look =
        new TimerTask() {
          @Override
          public void run() {
            line.draw();
          }
        };
    new Timer("progress line", true).schedule(look, BETWEEN.toMillis(), BETWEEN.toMillis());
    Runtime.getRuntime().addShutdownHook(new Thread(line::end));
    return line;
  }

  /** Says what is done next, until that is over or something is printed. */
  synchronized void tell(String what) {
    text = what;
    done = 0;
  }

  @Override
  public synchronized void reached(Part now, int doneNow, int of) {
    done = now == part ? Math.max(done, doneNow) : doneNow;
    part = now;
    text = sentence(now, done, of);
  }

  private static String sentence(Part part, int done, int of) {
    return switch (part) {
      case WINTERS -> "simulating " + of + " winters";
      case PLANTS -> "planning plants, " + done + " of " + of;
      case SHARING -> "sharing out room and hands";
      case REMEDIES -> "looking for what would help, " + done + " of at most " + of + " trials";
      case REASONS -> "giving reasons and tasks, " + done + " of " + of + " plants";
      case JUDGED -> "judging winters, " + done + " of " + of;
    };
  }

  /** Draws the line if there is something new to say and the run has gone on for long enough. */
  synchronized void draw() {
    if (ended || text.equals(shown) || sinceStart.get().compareTo(PATIENCE) < 0) {
      return;
    }
    String rest = " ".repeat(Math.max(0, shown.length() - text.length()));
    terminal.print("\r" + text + rest);
    terminal.flush();
    shown = text;
  }

  /** Takes the line away, until there is something new to say. */
  synchronized void wipe() {
    text = "";
    if (!shown.isEmpty()) {
      terminal.print("\r" + " ".repeat(shown.length()) + "\r");
      terminal.flush();
      shown = "";
    }
  }

  /** Takes the line away for good: the program is asked to end. */
  synchronized void end() {
    ended = true;
    wipe();
  }

  /** The same writer, before whose words the line makes way. */
  Writer makingWay(Writer other) {
    return new FilterWriter(other) {
      @Override
      public void write(int character) throws IOException {
        wipe();
        out.write(character);
      }

      @Override
      public void write(char[] characters, int from, int length) throws IOException {
        wipe();
        out.write(characters, from, length);
      }

      @Override
      public void write(String words, int from, int length) throws IOException {
        wipe();
        out.write(words, from, length);
      }
    };
  }
}
