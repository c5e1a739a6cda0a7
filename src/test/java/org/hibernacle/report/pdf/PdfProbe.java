package org.hibernacle.report.pdf;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;

/** Reads a written file with another library than the one that wrote it. */
final class PdfProbe implements AutoCloseable {
  final PDDocument document;

  private PdfProbe(PDDocument document) {
    this.document = document;
  }

  static byte[] bytes(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.write(report, Palette.standard(), out);
    return out.toByteArray();
  }

  static PdfProbe of(SeasonReport report) throws IOException {
    return of(bytes(report));
  }

  static PdfProbe of(byte[] file) throws IOException {
    return new PdfProbe(Loader.loadPDF(file));
  }

  int pages() {
    return document.getNumberOfPages();
  }

  /** Text of that page, counted from 1, in the order in which it was written. */
  String text(int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.setLineSeparator("\n");
    return stripper.getText(document).strip();
  }

  String text() throws IOException {
    StringBuilder all = new StringBuilder();
    for (int page = 1; page <= pages(); page++) {
      all.append(text(page)).append('\n');
    }
    return all.toString();
  }

  /** The first page with these words, 0 if there is none. */
  int pageWith(String words) throws IOException {
    for (int page = 1; page <= pages(); page++) {
      if (squeezed(text(page)).contains(squeezed(words))) {
        return page;
      }
    }
    return 0;
  }

  /** Without any white space: lines may be wrapped anywhere. */
  static String squeezed(String text) {
    return text.replaceAll("\\s+", "");
  }

  /** A letter and where it stands, in points from the lower left of the page. */
  record Letter(String text, Rectangle2D box, float sizePt, String font) {}

  List<Letter> letters(int page) throws IOException {
    List<Letter> letters = new ArrayList<>();
    float height = document.getPage(page - 1).getMediaBox().getHeight();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> positions) {
            for (TextPosition p : positions) {
              if (!p.getUnicode().isBlank()) {
                letters.add(
                    new Letter(
                        p.getUnicode(),
                        new Rectangle2D.Float(
                            p.getX(), height - p.getY(), p.getWidth(), p.getHeight()),
                        p.getFontSizeInPt(),
                        p.getFont().getName()));
              }
            }
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(document);
    return letters;
  }

  /** The rectangles of that page that are filled with white: the days of the calendar. */
  List<Rectangle2D> whiteFields(int page) throws IOException {
    FieldFinder finder = new FieldFinder(document.getPage(page - 1));
    finder.processPage(document.getPage(page - 1));
    return finder.found;
  }

  /** Titles of the bookmarks, two blanks deeper at each level, with the number of the page. */
  List<String> bookmarks() {
    List<String> titles = new ArrayList<>();
    addBookmarks(document.getDocumentCatalog().getDocumentOutline().children(), "", titles);
    return titles;
  }

  private void addBookmarks(Iterable<PDOutlineItem> items, String indent, List<String> titles) {
    for (PDOutlineItem item : items) {
      try {
        int page = 1 + document.getPages().indexOf(item.findDestinationPage(document));
        titles.add(indent + item.getTitle() + " -> " + page);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      addBookmarks(item.children(), indent + "  ", titles);
    }
  }

  /** All that a reader would notice, as lines of text for the golden file. */
  String dump() throws IOException {
    StringBuilder out = new StringBuilder();
    var info = document.getDocumentInformation();
    out.append("title: ").append(info.getTitle()).append('\n');
    out.append("subject: ").append(info.getSubject()).append('\n');
    out.append("producer: ").append(info.getProducer()).append('\n');
    out.append("created: ").append(info.getCreationDate().toInstant()).append('\n');
    out.append("language: ").append(document.getDocumentCatalog().getLanguage()).append('\n');
    out.append("bookmarks:\n");
    bookmarks().forEach(b -> out.append("  ").append(b).append('\n'));
    for (int page = 1; page <= pages(); page++) {
      var box = document.getPage(page - 1).getMediaBox();
      out.append(
          "== page %d, %.0f x %.0f, %s\n"
              .formatted(page, box.getWidth(), box.getHeight(), fonts(page)));
      out.append(text(page).replaceAll(" +\n", "\n")).append('\n');
    }
    return out.toString();
  }

  private List<String> fonts(int page) throws IOException {
    List<String> fonts = new ArrayList<>();
    var resources = document.getPage(page - 1).getResources();
    for (COSName name : resources.getFontNames()) {
      fonts.add(resources.getFont(name).getName());
    }
    fonts.sort(null);
    return fonts;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }

  /** Collects the rectangles that are filled. */
  private static final class FieldFinder extends PDFGraphicsStreamEngine {
    final List<Rectangle2D> found = new ArrayList<>();
    private final List<Rectangle2D> path = new ArrayList<>();

    FieldFinder(PDPage page) {
      super(page);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
      Rectangle2D box = new Rectangle2D.Double(p0.getX(), p0.getY(), 0, 0);
      box.add(p2);
      path.add(box);
    }

    @Override
    public void fillPath(int windingRule) {
      try {
        if (getGraphicsState().getNonStrokingColor().toRGB() == 0xFFFFFF) {
          found.addAll(path);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      fillPath(windingRule);
    }

    @Override
    public void strokePath() {
      path.clear();
    }

    @Override
    public void endPath() {
      path.clear();
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void moveTo(float x, float y) {}

    @Override
    public void lineTo(float x, float y) {}

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

    @Override
    public Point2D getCurrentPoint() {
      return new Point2D.Float();
    }

    @Override
    public void closePath() {}

    @Override
    public void shadingFill(COSName shadingName) {}
  }
}
