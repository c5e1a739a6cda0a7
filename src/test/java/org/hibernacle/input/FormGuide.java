package org.hibernacle.input;

import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.input.FormLooks.Look;

/** The Guide sheet of the blank form. */
final class FormGuide {
  private static final int WIDTH_CHARS = 96;
  private static final int CHARS_A_LINE = 106;

  private record Line(Look look, String text) {}

  private FormGuide() {}

  static void write(XSSFSheet sheet, FormLooks looks) {
    sheet.setColumnWidth(0, WIDTH_CHARS * 256);
    sheet.setDisplayGridlines(false);
    int row = 0;
    for (Line line : lines()) {
      Row target = sheet.createRow(row++);
      target.setHeightInPoints(heightPoints(line));
      target.createCell(0).setCellValue(line.text());
      target.getCell(0).setCellStyle(looks.of(line.look()));
    }
  }

  private static float heightPoints(Line line) {
    int points =
        switch (line.look()) {
          case TITLE -> 30;
          case SUBTITLE -> 22;
          case SECTION -> 20;
          default -> 16;
        };
    int lines = 1 + line.text().length() / CHARS_A_LINE;
    return lines == 1 ? points : points + (lines - 1) * 13.5f;
  }

  private static List<Line> lines() {
    return List.of(
        new Line(Look.TITLE, "Inventory for the winter plan"),
        new Line(
            Look.SUBTITLE,
            "Fill in what you have and where it can stand. The program works out the dates."),
        new Line(Look.TEXT, ""),
        new Line(Look.SECTION, "What to fill in"),
        new Line(
            Look.TEXT,
            "Plants: one row for each plant. Id, Species, Home and the size of the pot are needed;"
                + " for the pot a volume is enough. Everything else sharpens the plan."),
        new Line(
            Look.TEXT,
            "Places: one row for each place where plants can stand, in summer or in winter. Place"
                + " and Kind are needed. Measure Floor, for room is often what runs short."),
        new Line(
            Look.TEXT,
            "Settings: Latitude is needed. Look at Moving days and at Site colder than station by."),
        new Line(
            Look.TEXT,
            "Species: leave it alone, or write your own figures where you know better than the"
                + " built-in table."),
        new Line(Look.TEXT, ""),
        new Line(Look.SECTION, "How to fill it in"),
        new Line(
            Look.TEXT,
            "Dark green headings are needed, light ones may stay empty. Point at a heading to read"
                + " what it means, its unit and what is used when the cell is empty."),
        new Line(
            Look.TEXT,
            "The row in grey italics on each sheet is an invented example. Overwrite it or delete"
                + " it; the program reads it like any other row, and warns you."),
        new Line(
            Look.TEXT,
            "A heading names the unit of its numbers. Change cm to inches, L to gal or °C to °F in a"
                + " heading, and the numbers below are read in that unit."),
        new Line(
            Look.TEXT,
            "Columns may stand in any order, and columns or sheets of your own may be added. The"
                + " program does not read them, but carries them into the season plan."),
        new Line(
            Look.TEXT,
            "Write dates as dates of your spreadsheet program, or as text like 2026-11-01. Write"
                + " lists with a semicolon between."),
        new Line(
            Look.TEXT,
            "A name the program does not know stops the run and is shown with the nearest names it"
                + " knows. It guesses nothing."),
        new Line(Look.TEXT, ""),
        new Line(Look.SECTION, "Before you carry anything"),
        new Line(
            Look.CAUTION,
            "Heavy pots. Wet soil weighs up to two kilograms a litre. Lift large pots with two"
                + " people or move them on a trolley, and keep your back straight."),
        new Line(
            Look.CAUTION,
            "Ice. Steps, boards and paving are slippery when pots have to move. Clear and grit the"
                + " way first, and never carry in the dark alone."),
        new Line(
            Look.CAUTION,
            "Heaters. Anything that burns needs a flue or open air: carbon monoxide has no smell and"
                + " kills. Keep heaters away from fleece, straw and plastic, and fit alarms for"
                + " smoke and carbon monoxide."),
        new Line(
            Look.CAUTION,
            "Electricity near water. Fixed wiring, sockets in a glasshouse and gas are work for"
                + " licensed people under your local code. Use outdoor-rated leads with a"
                + " residual-current device."),
        new Line(
            Look.CAUTION,
            "Poisonous plants. Some plants harm children and animals once they stand indoors. Where"
                + " the species table says unknown, nobody has looked: unknown is not safe."),
        new Line(
            Look.CAUTION,
            "Pesticides. Read and follow the label, and do not spray in closed rooms where people or"
                + " animals live."),
        new Line(Look.TEXT, ""),
        new Line(Look.SECTION, "What the figures are worth"),
        new Line(
            Look.TEXT,
            "Most root limits are cautious estimates, and the air at your benches is not the air at"
                + " the weather station. Measure your coldest places with a minimum thermometer, and"
                + " write your own figures in when you have them."));
  }
}
