package org.hibernacle.report.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.UUID;
import org.hibernacle.report.SeasonReport;

/**
 * Title, language, dates and identity of the file. All are taken from the report, so that two runs
 * give the same bytes.
 */
final class DocumentFacts {
  private static final String MAKER = "Hibernacle";

  private final SeasonReport report;
  private final String title;

  DocumentFacts(SeasonReport report) {
    this(report, report.title());
  }

  /** A file of another title that belongs to that report. */
  DocumentFacts(SeasonReport report, String title) {
    this.report = report;
    this.title = title;
  }

  void beforeOpen(Document document, PdfWriter writer) {
    document.addTitle(title);
    document.addSubject(report.subtitle());
    document.addCreator(MAKER);
    writer.setViewerPreferences(PdfWriter.PageModeUseOutlines | PdfWriter.PageLayoutSinglePage);
    writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
  }

  void afterOpen(PdfWriter writer) {
    // Put here and not through the document, which would answer with the clock.
    PdfDate when = new PdfDate(GregorianCalendar.from(report.dated().atStartOfDay(ZoneOffset.UTC)));
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(report.language().toLanguageTag()));
    PdfDictionary info = writer.getInfo();
    info.put(PdfName.PRODUCER, new PdfString(MAKER));
    info.put(PdfName.CREATIONDATE, when);
    info.put(PdfName.FILEID, PdfEncryption.createInfoId(identity(), identity()));
    writer.createXmpMetadata();
  }

  private String identifying() {
    return title.equals(report.title()) ? report.digest() : report.digest() + title;
  }

  private byte[] identity() {
    UUID id = UUID.nameUUIDFromBytes(identifying().getBytes(StandardCharsets.UTF_8));
    return ByteBuffer.allocate(2 * Long.BYTES)
        .putLong(id.getMostSignificantBits())
        .putLong(id.getLeastSignificantBits())
        .array();
  }
}
