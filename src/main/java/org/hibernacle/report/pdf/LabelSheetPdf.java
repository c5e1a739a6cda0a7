package org.hibernacle.report.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.PageSize;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.hibernacle.report.LabelSheet;
import org.hibernacle.report.LabelSheet.Grid;
import org.hibernacle.report.LabelSheet.Label;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;

/**
 * The labels of the pots on paper, in a grid. Each stands within its own cell, in letters of 9
 * points at least, of one size where they hold all its words.
 *
 * <p>Equal labels give equal bytes, whatever the machine's language, zone and clock.
 */
public final class LabelSheetPdf {
  static final float PT_PER_MM = 72 / 25.4f;

  /** Between the edge of a label and its words, in points. */
  static final float PADDING = 5;

  private static final float HAIRLINE = 0.4f;

  private final SeasonReport report;
  private final LabelSheet sheet;
  private final Typefaces type;
  private final LabelText text;
  private final float roomPt;

  /**
   * A label that its cell does not hold.
   *
   * @param id on the label
   * @param tooNarrow whether a word is wider than the label, else the label is too low
   * @param neededMm width or height that it takes at the least size of letters
   * @param availableMm width or height that the grid leaves
   */
  public record TooSmall(String id, boolean tooNarrow, double neededMm, double availableMm) {}

  /**
   * What came of the writing.
   *
   * @param missing characters that the fonts lack
   * @param shortened Ids of labels whose name or place is cut or broken within a word, as even the
   *     least letters do not hold it
   */
  public record Result(List<Missing> missing, List<String> shortened) {
    public Result {
      missing = List.copyOf(missing);
      shortened = List.copyOf(shortened);
    }
  }

  private LabelSheetPdf(
      SeasonReport report, LabelSheet sheet, Palette palette, Optional<PaperFont> font)
      throws IOException {
    type = new Typefaces(palette, font);
    this.report = report;
    this.sheet = sheet;
    float widthPt = (float) sheet.grid().widthMm() * PT_PER_MM - 2 * PADDING;
    roomPt = (float) sheet.grid().heightMm() * PT_PER_MM - 2 * PADDING;
    text = new LabelText(type, report.language(), Math.max(1, widthPt));
  }

  /** The label that the grid holds least of all; empty if it holds every one. */
  public static Optional<TooSmall> check(
      SeasonReport report, LabelSheet sheet, Palette palette, Optional<PaperFont> font)
      throws IOException {
    return new LabelSheetPdf(report, sheet, palette, font).tooSmall();
  }

  private Optional<TooSmall> tooSmall() {
    LabelLayout least = LabelLayout.at(text, LabelLayout.LEAST_PT);
    TooSmall worst = null;
    for (Label label : sheet.labels()) {
      float wordPt = least.widestWordPt(label);
      double neededMm = Math.ceil(10 * (wordPt + 2 * PADDING) / PT_PER_MM) / 10;
      if (neededMm > sheet.grid().widthMm() && (worst == null || neededMm > worst.neededMm())) {
        worst = new TooSmall(label.id(), true, neededMm, sheet.grid().widthMm());
      }
    }
    if (worst != null) {
      return Optional.of(worst);
    }
    for (Label label : sheet.labels()) {
      double neededMm = Math.ceil(10 * (least.heightPt(label) + 2 * PADDING) / PT_PER_MM) / 10;
      if (neededMm > sheet.grid().heightMm() && (worst == null || neededMm > worst.neededMm())) {
        worst = new TooSmall(label.id(), false, neededMm, sheet.grid().heightMm());
      }
    }
    return Optional.ofNullable(worst);
  }

  /**
   * Writes the labels. Nothing reaches {@code out} unless the whole file could be laid out; the
   * stream stays open.
   *
   * @param report that the labels belong to: paper, language, day and identity
   * @param sheet that {@link #check} has passed
   * @param palette colours of the letters
   * @param font for characters that the program's own fonts lack
   */
  public static Result write(
      SeasonReport report,
      LabelSheet sheet,
      Palette palette,
      Optional<PaperFont> font,
      OutputStream out)
      throws IOException {
    LabelSheetPdf pdf = new LabelSheetPdf(report, sheet, palette, font);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    pdf.layOut(file);
    file.writeTo(out);
    LabelLayout least = LabelLayout.at(pdf.text, LabelLayout.LEAST_PT);
    List<String> shortened =
        sheet.labels().stream().filter(l -> !least.whole(l)).map(Label::id).toList();
    return new Result(pdf.type.missing(), shortened);
  }

  private void layOut(OutputStream out) {
    Document document = new Document(report.letterPaper() ? PageSize.LETTER : PageSize.A4);
    document.setGlyphSubstitutionEnabled(false);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    writer.setCloseStream(false);
    DocumentFacts facts = new DocumentFacts(Imprint.of(report).titled(sheet.title()));
    facts.beforeOpen(document, writer);
    document.open();
    facts.afterOpen(writer);
    LabelLayout layout = LabelLayout.largest(text, sheet.labels(), roomPt);
    int perSheet = sheet.grid().perSheet();
    for (int first = 0; first < sheet.labels().size(); first += perSheet) {
      document.newPage();
      int end = Math.min(first + perSheet, sheet.labels().size());
      page(writer, layout, sheet.labels().subList(first, end));
    }
    document.close();
  }

  private void page(PdfWriter writer, LabelLayout layout, List<Label> labels) {
    PdfContentByte canvas = writer.getDirectContent();
    Grid grid = sheet.grid();
    float paperPt = writer.getPageSize().getHeight();
    for (int i = 0; i < labels.size(); i++) {
      int row = i / grid.columns();
      int column = i % grid.columns();
      double leftMm = grid.leftMm() + column * (grid.widthMm() + grid.acrossMm());
      double topMm = grid.topMm() + row * (grid.heightMm() + grid.downMm());
      float left = (float) leftMm * PT_PER_MM;
      float top = paperPt - (float) topMm * PT_PER_MM;
      frame(canvas, left, top);
      for (LabelLayout.Line line : layout.lines(labels.get(i))) {
        ColumnText.showTextAligned(
            canvas,
            Element.ALIGN_LEFT,
            type.phrase(line.words(), line.style()),
            left + PADDING,
            top - PADDING - line.baselinePt(),
            0);
      }
    }
    String title = labels.get(0).id() + " \u2013 " + labels.get(labels.size() - 1).id();
    new PdfOutline(
        writer.getRootOutline(), new PdfDestination(PdfDestination.XYZ, 0, paperPt, 0), title);
  }

  /** Along the edge, to cut by. */
  private void frame(PdfContentByte canvas, float left, float top) {
    float width = (float) sheet.grid().widthMm() * PT_PER_MM;
    float height = (float) sheet.grid().heightMm() * PT_PER_MM;
    canvas.saveState();
    canvas.setLineWidth(HAIRLINE);
    canvas.setColorStroke(new Color(type.palette().rule()));
    canvas.rectangle(left, top - height, width, height);
    canvas.stroke();
    canvas.restoreState();
  }
}
