package org.hibernacle.report.pdf;

import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.StyleRole;

/** The last words: what may hurt people. */
final class Cautions {
  private static final float GAP_ABOVE = 16;

  private final Pages pages;
  private final Typefaces type;
  private final Labels labels;

  Cautions(Pages pages, Typefaces type, Labels labels) {
    this.pages = pages;
    this.type = type;
    this.labels = labels;
  }

  void add(List<String> cautions) {
    if (cautions.isEmpty()) {
      return;
    }
    Look look = Looks.of(StyleRole.CAUTION);
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(pages.portraitWidth());
    table.setSplitRows(false);
    for (String caution : cautions) {
      table.addCell(
          Cells.dressed(
              Cells.padded(
                  Cells.of(type.phrase(caution, Style.BODY.at(11).in(look.text()))), 10, 6),
              look));
      table.addCell(Cells.gap(5));
    }
    String title = labels.of("cautions");
    PdfPTable heading = pages.heading(title, Style.HEADING);
    // All on one page where they fit on one.
    pages.room(false, GAP_ABOVE + heading.getTotalHeight() + table.getTotalHeight());
    if (!pages.atTop()) {
      pages.addGap(GAP_ABOVE);
    }
    pages.bookmark(pages.root(), title);
    pages.add(heading);
    pages.add(table);
  }
}
