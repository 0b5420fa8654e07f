package io.github.readfall.export.pdf;

import io.github.readfall.type.text.TextLine;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A document of A4 pages that is being written. It has no dates, so that it is always the same. */
final class Book implements Closeable {

  private static final String PRODUCER = "Readfall";
  private static final String COVER = "cover";
  private static final float VERSION = 1.7f;

  private final PDDocument document;
  private final TagStructure structure;
  private final PdfFaces faces;
  private final TextLine carrier;
  private final PDDocumentOutline outline = new PDDocumentOutline();
  private final List<Sheet> sheets = new ArrayList<>();

  /**
   * An empty document.
   *
   * @param title for a reader's window
   * @param language BCP 47
   * @param id one for each content
   * @param carrier a letter that may be embedded, invisible in place of letters that may not
   */
  Book(String title, String language, long id, TextLine carrier) throws IOException {
    this.document = new PDDocument(IOUtils.createTempFileOnlyStreamCache());
    this.structure = new TagStructure(document);
    this.faces = new PdfFaces(document);
    this.carrier = carrier;
    document.setVersion(VERSION);
    document.setDocumentId(id);
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setProducer(PRODUCER);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(language);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    catalog.setPageMode(PageMode.USE_OUTLINES);
    catalog.setDocumentOutline(outline);
    catalog.setMetadata(metadata(title));
  }

  private PDMetadata metadata(String title) throws IOException {
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(Xmp.of(title, PRODUCER).getBytes(StandardCharsets.UTF_8));
    return metadata;
  }

  PDDocument document() {
    return document;
  }

  TagStructure structure() {
    return structure;
  }

  PdfFaces faces() {
    return faces;
  }

  PDDocumentOutline outline() {
    return outline;
  }

  /** Pages so far. */
  List<Sheet> sheets() {
    return List.copyOf(sheets);
  }

  /** A new page after the others. */
  Sheet add() {
    PDPage page = new PDPage(PDRectangle.A4);
    document.addPage(page);
    Sheet sheet = new Sheet(page, structure, faces, carrier);
    sheets.add(sheet);
    return sheet;
  }

  /** Writes it out, when everything is drawn. */
  void writeTo(OutputStream out) throws IOException {
    for (Sheet sheet : sheets) {
      sheet.finish(document);
    }
    faces.finish();
    structure.finish();
    document.getDocumentCatalog().setPageLabels(labels());
    document.save(out);
  }

  /** Labels as the pages are numbered on paper: the cover has no number. */
  private PDPageLabels labels() {
    PDPageLabels labels = new PDPageLabels(document);
    PDPageLabelRange cover = new PDPageLabelRange();
    cover.setPrefix(COVER);
    labels.setLabelItem(0, cover);
    if (sheets.size() > 1) {
      PDPageLabelRange others = new PDPageLabelRange();
      others.setStyle(PDPageLabelRange.STYLE_DECIMAL);
      others.setStart(2);
      labels.setLabelItem(1, others);
    }
    return labels;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
