package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.FilledLog;
import org.hibernacle.input.Problems;
import org.hibernacle.model.InAndOut;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.Words;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.junit.jupiter.api.Test;

/** What a plan's workbook says is read back as it was planned. */
class ReadBackTest {
  private static final Words WORDS = Words.of(Locale.UK);
  private static final SeasonPlan PLAN = CityGarden.plan(City.SEATTLE);

  private static byte[] workbook() throws IOException {
    RunFacts facts =
        new RunFacts("0", List.of(), List.of(), List.of(), List.of(), Optional.empty());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(ReportAuthor.write(PLAN, facts, WORDS), out);
    return out.toByteArray();
  }

  private static SeasonLog read(byte[] bytes) throws IOException {
    Problems problems = new Problems();
    Optional<SeasonLog> log =
        FilledLog.read(
            new ByteArrayInputStream(bytes),
            "season-plan.xlsx",
            PLAN.inventory(),
            WORDS.text("task.IN_AND_OUT"),
            problems);
    assertEquals(List.of(), problems.sorted());
    return log.orElseThrow();
  }

  @Test
  void aPlanComesBackAsItWasPlanned() throws IOException {
    SeasonLog log = read(workbook());
    assertEquals(PLAN.season(), log.season());
    assertEquals(
        PLAN.movesByDate().stream()
            .map(
                m ->
                    new PlannedMove(
                        m.plan().plant().id(),
                        m.move().date(),
                        m.move().from().name(),
                        m.move().to().name()))
            .toList(),
        log.moves());
    assertEquals(
        PLAN.plants().stream()
            .filter(p -> p.shuttle().isPresent())
            .map(p -> p.plant().id())
            .collect(Collectors.toSet()),
        log.inAndOut().stream().map(InAndOut::id).collect(Collectors.toSet()));
    assertEquals(PLAN.winters().size(), log.winters().size());
    assertEquals(PLAN.winters().get(0).coldestNightC(), log.winters().get(0).coldestNightC());
    assertEquals(PLAN.plants().size(), log.entries().size());
    assertTrue(log.entries().stream().allMatch(e -> e.equals(LogEntry.blank(e.id()))));
  }

  /** The planned stays are the plan's, so a blank log lived in a known winter is the plan lived. */
  @Test
  void aBlankLogIsThePlanLived() throws IOException {
    SeasonLog planned = read(workbook());
    for (PlantPlan plant : PLAN.plants()) {
      RealStays stays =
          RealStays.of(
              plant.plant(),
              planned.moves().stream().filter(m -> m.id().equals(plant.plant().id())).toList(),
              LogEntry.blank(plant.plant().id()),
              PLAN.inventory(),
              PLAN.season());
      assertEquals(plant.stays(), stays.planned(), plant.plant().id());
      assertEquals(plant.stays(), stays.real(), plant.plant().id());
    }
  }

  @Test
  void whatIsFilledInIsReadBack() throws IOException {
    XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook()));
    XSSFSheet sheet = book.getSheet("Log");
    Map<String, String> filled =
        Map.of("A blank day means", "not moved", "Stood in", "Shed", "Outcome", "branches lost");
    Row headings = sheet.getRow(0);
    for (Cell heading : headings) {
      String value = filled.get(heading.getStringCellValue());
      if (value != null) {
        sheet.getRow(1).createCell(heading.getColumnIndex()).setCellValue(value);
      } else if (heading.getStringCellValue().equals("Real move-in")) {
        Cell day = sheet.getRow(1).createCell(heading.getColumnIndex());
        day.setCellValue("2015-12-05");
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    book.write(out);
    book.close();
    String id = sheet.getRow(1).getCell(0).getStringCellValue();
    SeasonLog log = read(out.toByteArray());
    LogEntry entry =
        log.entries().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
    assertEquals(Optional.of(LogEntry.IfBlank.NOT_MOVED), entry.ifBlank());
    assertEquals(Optional.of("Shed"), entry.stoodIn());
    assertEquals(Optional.of(Outcome.BRANCHES), entry.outcome());
    assertEquals(Optional.of(LocalDate.of(2015, 12, 5)), entry.movedIn());
    assertFalse(Set.of(LogEntry.blank(id)).contains(entry));
  }
}
