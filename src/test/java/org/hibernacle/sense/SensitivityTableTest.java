package org.hibernacle.sense;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

class SensitivityTableTest {
  private static final Path PAGE = Path.of("docs", "sensitivity.md");

  /** Rewritten by {@code mvn -Pproof test -Dtest=SensitivityTableTest -Dgolden.update=true}. */
  @Test
  @EnabledIfSystemProperty(named = "proof.pages", matches = "true")
  void thePageIsWhatTheProgramWrites() throws IOException {
    String fresh = new SensitivityTable().page();
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(PAGE, fresh);
    }
    assertEquals(Files.readString(PAGE), fresh);
  }

  /** The first of its tables every time, the others in the profile: they take a while. */
  @Test
  void thePageRestsOnTodaysPlans() throws IOException {
    assertTrue(Files.readString(PAGE).contains(new SensitivityTable().usualTable()));
  }
}
