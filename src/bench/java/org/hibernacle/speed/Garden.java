package org.hibernacle.speed;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes the input of a large garden: the demo's plants over and over, in the pots of those next in
 * size, and invented weather of many winters. That makes some three hundred kinds of plant and pot,
 * as in a nursery that pots in batches.
 */
final class Garden {
  private static final int FIRST_YEAR = 1990;

  private static final Set<String> OF_THE_POT =
      Set.of("Pot shape", "Length cm", "Width cm", "Depth cm", "Volume L", "Pot material");

  /** Pots next in size that a plant of the demo comes in. */
  private static final int NEIGHBOURS = 7;

  private Garden() {}

  /**
   * Writes {@code inventory.xlsx} and {@code temperatures.csv}.
   *
   * @param args folder, number of plants, number of winters, {@code daily} or {@code hourly}
   */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    inventory(folder.resolve("inventory.xlsx"), Integer.parseInt(args[1]));
    weather(
        folder.resolve("temperatures.csv"), Integer.parseInt(args[2]), args[3].equals("hourly"));
  }

  private static void inventory(Path file, int count) throws IOException {
    try (XSSFWorkbook book =
            new XSSFWorkbook(Files.newInputStream(Path.of("demo-data", "inventory.xlsx")));
        OutputStream out = Files.newOutputStream(file)) {
      Sheet plants = book.getSheet("Plants");
      List<String> headings = texts(plants.getRow(0));
      List<List<Cell>> demo = new ArrayList<>();
      for (Row row : plants) {
        if (row.getRowNum() > 0 && !text(row.getCell(0)).isEmpty()) {
          demo.add(cells(row, headings.size()));
        }
      }
      int volume = headings.indexOf("Volume L");
      List<List<Cell>> bySize = new ArrayList<>(demo);
      bySize.sort(Comparator.comparingDouble(cells -> number(cells.get(volume))));
      for (int i = demo.size(); i < count; i++) {
        Row row = plants.createRow(i + 1);
        int copy = i / demo.size();
        List<Cell> like = demo.get(i % demo.size());
        int size = bySize.indexOf(like) + copy % NEIGHBOURS - NEIGHBOURS / 2;
        List<Cell> pot = bySize.get(Math.max(0, Math.min(size, demo.size() - 1)));
        for (int c = 0; c < like.size(); c++) {
          boolean ofThePot = OF_THE_POT.contains(headings.get(c));
          copy((ofThePot ? pot : like).get(c), row.createCell(c));
        }
        row.getCell(0).setCellValue(text(like.get(0)) + "-" + copy);
      }
      Sheet places = book.getSheet("Places");
      int floor = texts(places.getRow(0)).indexOf("Floor m2");
      for (int r = 1; r <= places.getLastRowNum(); r++) {
        Cell cell = places.getRow(r) == null ? null : places.getRow(r).getCell(floor);
        if (cell != null && cell.getCellType() == CellType.NUMERIC) {
          cell.setCellValue(cell.getNumericCellValue() * Math.max(1, 1.0 * count / demo.size()));
        }
      }
      book.write(out);
    }
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    for (int c = 0; c < row.getLastCellNum(); c++) {
      texts.add(text(row.getCell(c)));
    }
    return texts;
  }

  private static String text(Cell cell) {
    return cell == null ? "" : cell.toString();
  }

  private static List<Cell> cells(Row row, int count) {
    List<Cell> cells = new ArrayList<>();
    for (int c = 0; c < count; c++) {
      cells.add(row.getCell(c, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK));
    }
    return cells;
  }

  private static double number(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC ? cell.getNumericCellValue() : 0;
  }

  private static void copy(Cell from, Cell to) {
    to.setCellStyle(from.getCellStyle());
    if (from.getCellType() == CellType.NUMERIC) {
      to.setCellValue(from.getNumericCellValue());
    } else if (!text(from).isEmpty()) {
      to.setCellValue(text(from));
    }
  }

  /** A yearly wave with a daily swing and weather that lasts some days. */
  private static void weather(Path file, int winters, boolean hourly) throws IOException {
    Random random = new Random(11);
    LocalDate day = LocalDate.of(FIRST_YEAR, 1, 1);
    LocalDate end = day.plusYears(winters + 1L);
    double anomalyK = 0;
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write(hourly ? "time,temp_c\n" : "date,tmin_c,tmax_c\n");
      for (; day.isBefore(end); day = day.plusDays(1)) {
        anomalyK = 0.8 * anomalyK + 2.2 * random.nextGaussian();
        double yearC = 9.5 - 9 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
        double swingK = 4 + 1.5 * random.nextDouble();
        double meanC = yearC + anomalyK;
        if (!hourly) {
          out.write(
              String.format(Locale.ROOT, "%s,%.1f,%.1f%n", day, meanC - swingK, meanC + swingK));
          continue;
        }
        for (int hour = 0; hour < 24; hour++) {
          LocalDateTime time = day.atTime(hour, 0);
          double tempC = meanC + swingK * Math.cos(2 * Math.PI * (hour - 14) / 24.0);
          out.write(
              String.format(
                  Locale.ROOT,
                  "%s,%.1f%n",
                  time.format(DateTimeFormatter.ISO_LOCAL_DATE_TIME),
                  tempC));
        }
      }
    }
  }
}
