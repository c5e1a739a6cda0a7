package org.hibernacle.report.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.PageSize;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;
import java.io.OutputStream;

/** The file being written: paper, flow from page to page, bookmarks. */
final class Pages {
  /** Left and right of the words, in points. */
  static final float SIDE = 36;

  private final Document document;
  private final PdfWriter writer;
  private final Typefaces type;
  private final Rectangle paper;
  private boolean landscape;
  private boolean full;

  /**
   * Opens the file.
   *
   * @param frame of each page
   */
  Pages(Imprint imprint, PageFrame frame, Typefaces type, OutputStream out) {
    this.type = type;
    paper = imprint.letterPaper() ? PageSize.LETTER : PageSize.A4;
    float narrow = paper.getWidth() - 2 * SIDE;
    document = new Document(paper, SIDE, SIDE, frame.topMargin(narrow), frame.bottomMargin(narrow));
    document.setGlyphSubstitutionEnabled(false);
    writer = PdfWriter.getInstance(document, out);
    writer.setCloseStream(false);
    writer.setPageEvent(frame);
    DocumentFacts facts = new DocumentFacts(imprint);
    facts.beforeOpen(document, writer);
    document.open();
    facts.afterOpen(writer);
  }

  /** Width of the words on portrait paper, in points. */
  float portraitWidth() {
    return paper.getWidth() - 2 * SIDE;
  }

  /** Width of the words on landscape paper, in points. */
  float landscapeWidth() {
    return paper.getHeight() - 2 * SIDE;
  }

  /** Height for words on a whole page, in points. */
  float height(boolean onLandscape) {
    float paperHeight = onLandscape ? paper.getWidth() : paper.getHeight();
    return paperHeight - document.topMargin() - document.bottomMargin();
  }

  float width() {
    return landscape ? landscapeWidth() : portraitWidth();
  }

  /** Height that is left on this page, in points. */
  float spaceLeft() {
    return writer.getVerticalPosition(false) - document.bottom();
  }

  float bottom() {
    return document.bottom();
  }

  /** Whether nothing stands on this page yet. */
  boolean atTop() {
    return writer.isPageEmpty();
  }

  /** Nothing more may go on this page. */
  void full() {
    full = true;
  }

  /** Begins a page, unless this one is still empty and of that shape. */
  void newPage(boolean onLandscape) {
    landscape = onLandscape;
    full = false;
    // A rectangle of its own: a rotated one would write a portrait page with a turn.
    document.setPageSize(onLandscape ? new Rectangle(paper.getHeight(), paper.getWidth()) : paper);
    document.newPage();
  }

  /** Goes on where this page is of that shape and has that much room; else begins a page. */
  void room(boolean onLandscape, float height) {
    if (full || onLandscape != landscape || spaceLeft() < height) {
      newPage(onLandscape);
    }
  }

  void add(Element element) {
    document.add(element);
  }

  void addGap(float height) {
    PdfPTable table = Cells.table(1);
    table.addCell(Cells.gap(height));
    document.add(table);
  }

  PdfWriter writer() {
    return writer;
  }

  /** The bookmark all others stand under. */
  PdfOutline root() {
    return writer.getRootOutline();
  }

  /** A bookmark to this place. */
  PdfOutline bookmark(PdfOutline parent, String title) {
    return new PdfOutline(
        parent,
        new PdfDestination(
            PdfDestination.XYZ, document.left(), writer.getVerticalPosition(false), 0),
        title);
  }

  /** A heading over the whole width. */
  PdfPTable heading(String words, Style style) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width());
    table.addCell(Cells.padded(Cells.of(type.phrase(words, style)), 0, 4));
    return table;
  }

  /** Ends the file and tells how many pages it has. */
  int close() {
    document.close();
    return writer.getPageNumber() - 1;
  }
}
