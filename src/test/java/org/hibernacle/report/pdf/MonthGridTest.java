package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nothing of a day may be lost or leave its box, however much there is to do. */
class MonthGridTest {
  private static final String LONG_NAME =
      "Old man of the windy corner, the one with the broken saucer, to the glasshouse, number ";
  private static final String UNBREAKABLE =
      "Riesenmammutbaumkuebelpflanzenwinterquartierverwaltungsliste-";

  @ParameterizedTest
  @CsvSource({
    "MONDAY, false, 1, 1",
    "MONDAY, false, 1, 5",
    "MONDAY, false, 1, 30",
    "SUNDAY, true, 2, 30",
    "SATURDAY, false, 4, 8",
    "SUNDAY, true, 31, 3"
  })
  void eachLineStandsInItsDayOrInTheListBehind(
      DayOfWeek weekStart, boolean letter, int busyDays, int lines) throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    for (int day = 0; day < busyDays; day++) {
      for (int i = 0; i < lines; i++) {
        PaperReports.put(days, LocalDate.of(2026, 10, 1 + day * 30 / busyDays), line(day, i));
      }
    }
    try (PdfProbe pdf = PdfProbe.of(october(days, weekStart, letter))) {
      int page = pdf.pageWith("October 2026" + weekday(weekStart));
      List<Rectangle2D> boxes = dayBoxes(pdf, page);
      assertEquals(31, boxes.size());
      StringBuilder behind = new StringBuilder();
      for (int p = page + 1; p <= pdf.pages(); p++) {
        if (pdf.text(p).contains("October 2026, continued")) {
          behind.append(pdf.text(p));
        }
      }
      for (LocalDate date : days.keySet()) {
        String box = textIn(pdf, page, boxes.get(date.getDayOfMonth() - 1));
        assertTrue(box.startsWith("" + date.getDayOfMonth()), box);
        for (MonthPage.Line line : days.get(date)) {
          String words = PdfProbe.squeezed(line.text());
          assertTrue(
              box.contains(words) || PdfProbe.squeezed(behind.toString()).contains(words),
              line.text());
          assertTrue(
              !box.contains(words) || box.contains(PdfProbe.squeezed(line.mark())),
              "the mark in words beside " + line.text());
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1, 5", "1, 30", "9, 30", "31, 2"})
  void noLetterCrossesTheEdgeOfADay(int busyDays, int lines) throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    for (int day = 0; day < busyDays; day++) {
      for (int i = 0; i < lines; i++) {
        PaperReports.put(days, LocalDate.of(2026, 10, 1 + day * 30 / busyDays), line(day, i));
      }
    }
    try (PdfProbe pdf = PdfProbe.of(october(days, DayOfWeek.MONDAY, false))) {
      int page = pdf.pageWith("October 2026 Mon");
      List<Rectangle2D> boxes = dayBoxes(pdf, page);
      Rectangle2D grid = new Rectangle2D.Double();
      grid.setRect(boxes.get(0));
      boxes.forEach(grid::add);
      int inside = 0;
      for (PdfProbe.Letter letter : pdf.letters(page)) {
        Rectangle2D ink = letter.box();
        if (grid.contains(ink.getX(), ink.getY())) {
          inside++;
          assertTrue(
              boxes.stream().anyMatch(box -> box.contains(ink)),
              letter + " is in no box as a whole");
        }
      }
      assertTrue(inside > 31, "the numbers of the days at least");
    }
  }

  @Test
  void weekdaysBeginAsAskedFor() throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    PaperReports.put(days, LocalDate.of(2026, 10, 3), line(0, 1));
    try (PdfProbe pdf = PdfProbe.of(october(days, DayOfWeek.SATURDAY, false))) {
      int page = pdf.pageWith("October 2026SaturdaySundayMonday");
      List<Rectangle2D> boxes = dayBoxes(pdf, page);
      // 1 October 2026 is a Thursday: the sixth column of a week from Saturday, by any calendar.
      assertTrue(boxes.get(2).getX() < boxes.get(1).getX(), "the 3rd begins a row");
      assertTrue(boxes.get(2).getY() < boxes.get(1).getY(), "below the 2nd");
    }
  }

  @Test
  void lettersAreLargerWhereThereIsLittleToDo() throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> one = new TreeMap<>();
    PaperReports.put(one, LocalDate.of(2026, 10, 3), line(0, 1));
    TreeMap<LocalDate, List<MonthPage.Line>> many = new TreeMap<>();
    for (int i = 0; i < 30; i++) {
      PaperReports.put(many, LocalDate.of(2026, 10, 3), line(0, i));
    }
    Typefaces type = new Typefaces(Palette.standard(), Optional.empty());
    Words words = Words.of(Locale.ENGLISH);
    MonthLayout idle = layout(one, type, words);
    MonthLayout full = layout(many, type, words);
    assertTrue(idle.overfull().isEmpty());
    assertEquals(List.of(LocalDate.of(2026, 10, 3)), full.overfull());
    assertTrue(idle.sizePt() > full.sizePt());
    assertTrue(full.sizePt() >= 9, "never below 9 pt");
    assertTrue(full.shown(LocalDate.of(2026, 10, 3)) > 0, "some stand in the grid");
  }

  /** An arm's length asks for letters of 12 points at least: common practice, no source. */
  @Test
  void aBusyDayTakesTheRoomThatOthersLeave() throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    for (int i = 0; i < 12; i++) {
      String pots = "to Mulch bed: P0" + i + " Larch grove to be, P1" + i + " Hinoki";
      PaperReports.put(
          days, LocalDate.of(2026, 10, 3), new MonthPage.Line(StyleRole.MOVE_DOWN, "down", pots));
    }
    for (int day : List.of(7, 8, 9)) {
      PaperReports.put(
          days,
          LocalDate.of(2026, 10, day),
          new MonthPage.Line(StyleRole.TASK, "do", "Porch: warm at warmth"));
    }
    Typefaces type = new Typefaces(Palette.standard(), Optional.empty());
    MonthLayout layout = layout(days, type, Words.of(Locale.ENGLISH));
    assertTrue(layout.overfull().isEmpty());
    assertTrue(layout.sizePt() >= 12, layout.sizePt() + " pt");
    float saturday = layout.columns()[5];
    float thursday = layout.columns()[3];
    assertTrue(saturday > 2 * thursday, saturday + " and " + thursday + " pt");
    float sum = 0;
    for (float column : layout.columns()) {
      assertTrue(column >= 28, "room for the name of the weekday");
      sum += column;
    }
    assertEquals(760, sum, 0.01);
  }

  private static MonthLayout layout(
      TreeMap<LocalDate, List<MonthPage.Line>> days, Typefaces type, Words words) {
    MonthPage month = PaperReports.month(YearMonth.of(2026, 10), days);
    return new MonthLayout(month, DayOfWeek.MONDAY, type, words, 760, 420);
  }

  private static MonthPage.Line line(int day, int i) {
    StyleRole role = i % 2 == 0 ? StyleRole.MOVE_DOWN : StyleRole.RETURN;
    String name = i % 3 == 0 ? LONG_NAME : i % 3 == 1 ? "Larch " : UNBREAKABLE;
    return new MonthPage.Line(role, i % 2 == 0 ? "DOWN" : "HOME", name + day + "/" + i + ".");
  }

  private static SeasonReport october(
      TreeMap<LocalDate, List<MonthPage.Line>> days, DayOfWeek weekStart, boolean letter) {
    List<MonthPage> months = List.of(PaperReports.month(YearMonth.of(2026, 10), days));
    return PaperReports.of(months, "Full days", weekStart, letter);
  }

  private static String weekday(DayOfWeek day) {
    return day.name().charAt(0) + day.name().substring(1, 3).toLowerCase(Locale.ROOT);
  }

  /** The white boxes of the days, in the order of the calendar. */
  private static List<Rectangle2D> dayBoxes(PdfProbe pdf, int page) throws IOException {
    List<Rectangle2D> boxes = new ArrayList<>(pdf.whiteFields(page));
    boxes.sort(
        (a, b) -> {
          int row = Double.compare(Math.rint(b.getMaxY()), Math.rint(a.getMaxY()));
          return row != 0 ? row : Double.compare(a.getX(), b.getX());
        });
    return boxes;
  }

  private static String textIn(PdfProbe pdf, int page, Rectangle2D box) throws IOException {
    StringBuilder text = new StringBuilder();
    for (PdfProbe.Letter letter : pdf.letters(page)) {
      if (box.contains(letter.box().getX(), letter.box().getY())) {
        text.append(letter.text());
      }
    }
    return text.toString();
  }
}
