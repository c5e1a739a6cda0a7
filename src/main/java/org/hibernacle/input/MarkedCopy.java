package org.hibernacle.input;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row.MissingCellPolicy;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;

/**
 * A copy of a workbook in which the cells with problems are hatched, each with the problem in a
 * comment, so that it can be read without colours. Whatever else the workbook holds stays as it is.
 * Problems of a whole sheet stand in its first cell, those of the whole file in the first sheet's.
 */
public final class MarkedCopy {
  private static final String AUTHOR = "Hibernacle";

  /** Size of a comment's box, in columns and rows. */
  private static final int WIDE = 4;

  private static final int TALL = 7;

  private record CellOfSheet(String sheet, CellAddress cell) {}

  private final XSSFWorkbook book;
  private final boolean macros;
  private byte[] bytes = {};
  private final Map<List<Object>, XSSFCellStyle> styles = new HashMap<>();

  private MarkedCopy(XSSFWorkbook book) {
    this.book = book;
    this.macros = book.isMacroEnabled();
  }

  /**
   * The copy; empty if the file is no workbook that can be opened.
   *
   * @param file read only
   * @param problems all of them, also those of other files; notes are not marked
   */
  public static Optional<MarkedCopy> of(Path file, List<Diagnostic> problems) throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readAllBytes();
    }
    String name = String.valueOf(file.getFileName());
    Optional<XSSFWorkbook> opened =
        WorkbookFile.open(new ByteArrayInputStream(bytes), name, new Problems());
    if (opened.isEmpty()) {
      return Optional.empty();
    }
    try (XSSFWorkbook book = opened.get()) {
      MarkedCopy copy = new MarkedCopy(book);
      copy.mark(name, problems);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      copy.bytes = out.toByteArray();
      return Optional.of(copy);
    }
  }

  /** The content of the copy's file. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** Whether its file has to have a name that ends in {@code .xlsm}. */
  public boolean hasMacros() {
    return macros;
  }

  private void mark(String file, List<Diagnostic> problems) {
    Map<CellOfSheet, List<Diagnostic>> found = new LinkedHashMap<>();
    for (Diagnostic problem : problems) {
      ProblemSpot spot = ProblemSpot.of(problem);
      if (problem.severity() != Severity.NOTE && spot.file().equals(file)) {
        String sheet = spot.sheet().orElse(book.getSheetName(0));
        CellAddress cell = spot.cell().map(CellAddress::new).orElse(CellAddress.A1);
        found.computeIfAbsent(new CellOfSheet(sheet, cell), c -> new ArrayList<>()).add(problem);
      }
    }
    found.forEach(this::mark);
  }

  private static String words(Diagnostic problem) {
    String expected = problem.expected().isBlank() ? "" : "; expected " + problem.expected();
    return problem.code() + ": " + problem.found() + expected + ".";
  }

  private void mark(CellOfSheet where, List<Diagnostic> problems) {
    XSSFSheet sheet = book.getSheet(where.sheet());
    if (sheet == null) {
      return;
    }
    XSSFRow row = sheet.getRow(where.cell().getRow());
    if (row == null) {
      row = sheet.createRow(where.cell().getRow());
    }
    XSSFCell cell = row.getCell(where.cell().getColumn(), MissingCellPolicy.CREATE_NULL_AS_BLANK);
    boolean error = problems.stream().anyMatch(p -> p.severity() == Severity.ERROR);
    cell.setCellStyle(style(cell.getCellStyle(), error));
    comment(
        sheet, cell, problems.stream().map(MarkedCopy::words).collect(Collectors.joining("\n")));
  }

  /** The cell's own style under a hatch, which shows on a screen and in black and white. */
  private XSSFCellStyle style(XSSFCellStyle own, boolean error) {
    return styles.computeIfAbsent(
        List.of(own.getIndex(), error),
        key -> {
          XSSFCellStyle style = book.createCellStyle();
          style.cloneStyleFrom(own);
          style.setFillPattern(
              error ? FillPatternType.THIN_FORWARD_DIAG : FillPatternType.SPARSE_DOTS);
          style.setFillForegroundColor(
              (error ? IndexedColors.RED : IndexedColors.DARK_YELLOW).getIndex());
          style.setFillBackgroundColor(IndexedColors.LIGHT_YELLOW.getIndex());
          return style;
        });
  }

  /** Adds to what the keeper wrote there; what an earlier check wrote is replaced. */
  private void comment(XSSFSheet sheet, XSSFCell cell, String text) {
    XSSFComment old = cell.getCellComment();
    String before = "";
    if (old != null) {
      before = AUTHOR.equals(old.getAuthor()) ? "" : old.getString().getString() + "\n\n";
      old.setString(book.getCreationHelper().createRichTextString(before + text));
      return;
    }
    XSSFClientAnchor anchor = book.getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setRow1(cell.getRowIndex());
    anchor.setCol2(cell.getColumnIndex() + 1 + WIDE);
    anchor.setRow2(cell.getRowIndex() + TALL);
    XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setAddress(cell.getAddress());
    comment.setAuthor(AUTHOR);
    comment.setString(book.getCreationHelper().createRichTextString(text));
  }
}
