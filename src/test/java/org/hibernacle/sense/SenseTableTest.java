package org.hibernacle.sense;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hibernacle.planning.LeftOnBench.Night;
import org.junit.jupiter.api.Test;

class SenseTableTest {
  private static final Path PAGE = Path.of("docs", "sense.md");

  /** Rewritten by {@code -Dgolden.update=true}; to be read as a grower would. */
  @Test
  void thePageIsWhatTheProgramWrites() throws IOException {
    String fresh = SenseTable.page();
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(PAGE, fresh);
    }
    assertEquals(Files.readString(PAGE), fresh);
  }

  /** Three winters by hand: 1 is the coldest; the limit is that of the coldest night. */
  @Test
  void figuresAreThoseOfTheColdestNightOfTheMonth() {
    SiteYear year = new SiteYear(Stream.of(-4, -9, -2).map(SenseTableTest::winter).toList());
    assertEquals(1, year.coldestWinter());
    assertEquals(new SiteYear.Figure(-4, -9), year.coldestBall(Month.JANUARY));
    assertEquals(new SiteYear.Figure(-12, -12), year.rootLimit(Month.JANUARY));
    assertEquals(new SiteYear.Figure(-7, -12), year.coldestAir(Month.JANUARY));
    assertEquals(new SiteYear.Figure(-21, -21), year.shootLimit(Month.JANUARY));
  }

  /** The ball is coldest on the 12th, the air on the 11th. */
  private static List<Night> winter(int coldestBallC) {
    return IntStream.of(10, 11, 12, 13)
        .mapToObj(
            d ->
                new Night(
                    LocalDate.of(2021, 1, d),
                    d == 11 ? coldestBallC - 3 : 2,
                    d == 12 ? coldestBallC : 1,
                    -d,
                    -10 - d))
        .toList();
  }
}
