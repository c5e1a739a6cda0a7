package org.hibernacle.sense;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SensitivityTableTest {
  private static final Path PAGE = Path.of("docs", "sensitivity.md");

  /**
   * All of it in the profile, where it is also rewritten ({@code mvn -Pproof test
   * -Dtest=SensitivityTableTest -Dgolden.update=true}); the plans it rests on every time.
   */
  @Test
  void thePageIsWhatTheProgramWrites() throws IOException {
    SensitivityTable table = new SensitivityTable();
    if (Boolean.getBoolean("proof.pages")) {
      String fresh = table.page();
      if (Boolean.getBoolean("golden.update")) {
        Files.writeString(PAGE, fresh);
      }
      assertEquals(Files.readString(PAGE), fresh);
    }
    String page = Files.readString(PAGE);
    assertTrue(page.contains(table.usualTable()), "plans have changed: run the profile");
  }
}
