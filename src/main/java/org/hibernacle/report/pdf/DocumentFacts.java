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

/**
 * Title, language, dates and identity of the file. All are taken from the report, so that two runs
 * give the same bytes.
 */
final class DocumentFacts {
  private static final String MAKER = "Hibernacle";

  private final Imprint imprint;

  DocumentFacts(Imprint imprint) {
    this.imprint = imprint;
  }

  void beforeOpen(Document document, PdfWriter writer) {
    document.addTitle(imprint.title());
    document.addSubject(imprint.subtitle());
    document.addCreator(MAKER);
    writer.setViewerPreferences(PdfWriter.PageModeUseOutlines | PdfWriter.PageLayoutSinglePage);
    writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
  }

  void afterOpen(PdfWriter writer) {
    // Put here and not through the document, which would answer with the clock.
    PdfDate when =
        new PdfDate(GregorianCalendar.from(imprint.dated().atStartOfDay(ZoneOffset.UTC)));
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(imprint.language().toLanguageTag()));
    PdfDictionary info = writer.getInfo();
    info.put(PdfName.PRODUCER, new PdfString(MAKER));
    info.put(PdfName.CREATIONDATE, when);
    info.put(PdfName.FILEID, PdfEncryption.createInfoId(identity(), identity()));
    writer.createXmpMetadata();
  }

  private byte[] identity() {
    UUID id = UUID.nameUUIDFromBytes(imprint.digest().getBytes(StandardCharsets.UTF_8));
    return ByteBuffer.allocate(2 * Long.BYTES)
        .putLong(id.getMostSignificantBits())
        .putLong(id.getLeastSignificantBits())
        .array();
  }
}
