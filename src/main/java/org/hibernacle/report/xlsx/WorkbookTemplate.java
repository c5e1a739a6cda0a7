package org.hibernacle.report.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrase;
import org.hibernacle.report.Palette;
import org.hibernacle.report.StyleRole;

/**
 * The workbook that holds the look of the reports and no logic: defined names that cover pattern
 * rows, and a hidden sheet that shows each role as it is to look. A keeper may restyle a copy.
 *
 * <p>Only the bytes are kept; the file itself is never written to. {@code templates/README.md}
 * tells a keeper what may be changed.
 */
public final class WorkbookTemplate {
  private static final String RESOURCE = "/templates/season-plan.xlsx";

  /** Largest file, and largest unpacked part of it, in bytes. */
  private static final int LARGEST = 64 << 20;

  private final String file;
  private final byte[] bytes;
  private final List<Diagnostic> problems;
  private final Palette palette;
  private final Map<StyleRole, RoleSheet.Letters> letters;

  private WorkbookTemplate(
      String file, byte[] bytes, List<Diagnostic> problems, Optional<RoleSheet> roles) {
    this.file = file;
    this.bytes = bytes;
    this.problems = List.copyOf(problems);
    this.palette = roles.map(r -> new Palette(r.looks())).orElse(Palette.standard());
    this.letters = roles.map(RoleSheet::letters).orElse(Map.of());
  }

  /** The look that the program brings along. */
  public static WorkbookTemplate standard() {
    return Standard.TEMPLATE;
  }

  private static final class Standard {
    static final WorkbookTemplate TEMPLATE = load();

    private static WorkbookTemplate load() {
      try (InputStream in =
          Objects.requireNonNull(WorkbookTemplate.class.getResourceAsStream(RESOURCE), RESOURCE)) {
        return read(in, "season-plan.xlsx");
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Reads a stream to its end without closing it. Whatever is wrong is told by {@link #check}.
   *
   * @param file name for messages
   * @throws IOException if the stream breaks off
   */
  public static WorkbookTemplate read(InputStream in, String file) throws IOException {
    byte[] bytes = in.readNBytes(LARGEST + 1);
    if (bytes.length > LARGEST || FileMagic.valueOf(bytes) != FileMagic.OOXML) {
      return unreadable(file, TemplateProblem.UNREADABLE);
    }
    ZipSecureFile.setMaxEntrySize(LARGEST);
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      List<Diagnostic> problems = new ArrayList<>();
      Anchor.all().forEach(anchor -> check(file, book, anchor).ifPresent(problems::add));
      RoleSheet roles = RoleSheet.read(file, Optional.ofNullable(book.getSheet(RoleSheet.NAME)));
      problems.addAll(roles.problems());
      return new WorkbookTemplate(file, bytes, problems, Optional.of(roles));
    } catch (IOException
        | POIXMLException
        | OpenXML4JRuntimeException
        | IllegalArgumentException
        | IllegalStateException e) {
      // Every one of these means the same to the keeper.
      return unreadable(file, TemplateProblem.DAMAGED);
    }
  }

  private static WorkbookTemplate unreadable(String file, String key) {
    Diagnostic problem = TemplateProblem.of(key, Phrase.verbatim(file));
    return new WorkbookTemplate(file, new byte[0], List.of(problem), Optional.empty());
  }

  private static Optional<Diagnostic> check(String file, XSSFWorkbook book, Anchor anchor) {
    List<XSSFName> found =
        book.getAllNames().stream()
            .filter(name -> name.getNameName().equalsIgnoreCase(anchor.name()))
            .toList();
    Phrase where = Phrase.of("where.name", file, anchor.name());
    if (found.isEmpty()) {
      return Optional.of(TemplateProblem.of(TemplateProblem.ANCHOR_MISSING, where, anchor.sheet()));
    } else if (found.size() > 1) {
      return Optional.of(
          TemplateProblem.of(TemplateProblem.ANCHOR_TWICE, where, anchor.sheet(), found.size()));
    }
    String cells = String.valueOf(found.get(0).getRefersToFormula());
    boolean isThere =
        attempt(() -> cells(book, cells).getFirstCell())
            .filter(first -> anchor.sheet().equals(first.getSheetName()) && first.getRow() >= 0)
            .isPresent();
    return isThere
        ? Optional.empty()
        : Optional.of(
            TemplateProblem.of(TemplateProblem.ANCHOR_ELSEWHERE, where, anchor.sheet(), cells));
  }

  static AreaReference cells(XSSFWorkbook book, String formula) {
    return new AreaReference(formula, book.getSpreadsheetVersion());
  }

  /** What a name means may be anything. */
  private static <T> Optional<T> attempt(Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  /** Everything that is wrong with it, in no order; nothing if reports can be written by it. */
  public List<Diagnostic> check() {
    return problems;
  }

  /** Its colours, for other writers. */
  public Palette palette() {
    return palette;
  }

  /** Letters of every role. */
  Map<StyleRole, RoleSheet.Letters> letters() {
    return letters;
  }

  /**
   * A workbook to be filled, the caller's to close.
   *
   * @throws IllegalStateException if {@link #check} finds anything
   */
  XSSFWorkbook open() throws IOException {
    if (!problems.isEmpty()) {
      throw new IllegalStateException(file + " is no template: " + problems);
    }
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }
}
