package org.hibernacle.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkbookTemplateTest {
  @Test
  void theCommittedFileIsWhatItsProgramBuilds() throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      SeasonPlanTemplate.write();
    }
    assertEquals(
        Parts.of(SeasonPlanTemplate.bytes()),
        Parts.of(Files.readAllBytes(SeasonPlanTemplate.FILE)),
        "run with -Dgolden.update=true, look, commit");
  }

  @Test
  void theCommittedFileMeetsTheContract() {
    assertEquals(List.of(), WorkbookTemplate.standard().check());
  }
}
