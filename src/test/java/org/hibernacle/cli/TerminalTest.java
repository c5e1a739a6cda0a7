package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is asked, in which order. Device names are those of Linux's devices.txt. */
class TerminalTest {
  @ParameterizedTest
  @CsvSource({
    "true,  /tmp/log,    true",
    "false, /dev/pts/0,  false",
    "true,  ,            true",
    ",      /dev/pts/0,  true",
    ",      /dev/tty1,   true",
    ",      /tmp/log,    false",
    ",      pipe:[4711], false",
    ",      /dev/null,   false",
    ",      ,            false"
  })
  void theLauncherIsBelievedFirstThenTheSystem(String told, String errorStream, boolean watched) {
    assertEquals(
        watched, Terminal.isWatched(Optional.ofNullable(told), Optional.ofNullable(errorStream)));
  }
}
