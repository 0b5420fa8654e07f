package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.text.TextLine;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * A page that is drawn on. Lengths are points from its upper left corner, y downwards. Everything
 * on it either belongs to an element of the structure or is decoration.
 */
final class Sheet {

  private final PDPage page;
  private final TagStructure structure;
  private final ContentWriter out = new ContentWriter();
  private final PdfPainter painter;
  private final PDResources resources = new PDResources();
  private final COSArray elements = new COSArray();

  Sheet(PDPage page, TagStructure structure, PdfFaces faces, TextLine carrier) {
    this.page = page;
    this.structure = structure;
    this.painter = new PdfPainter(out, faces, carrier);
    resources.getCOSObject().setItem(COSName.FONT, faces.resources());
    page.setResources(resources);
    out.save(1, 0, 0, -1, 0, page.getMediaBox().getHeight());
    out.op("J", 1);
    out.op("j", 1);
  }

  PDPage page() {
    return page;
  }

  ContentWriter out() {
    return out;
  }

  PdfPainter painter() {
    return painter;
  }

  /** Draws the content of an element. */
  void tagged(PDStructureElement element, Runnable drawing) {
    out.beginTagged(element.getStructureType(), elements.size());
    PDMarkedContentReference reference = new PDMarkedContentReference();
    reference.setPage(page);
    reference.setMCID(elements.size());
    element.appendKid(reference);
    elements.add(element.getCOSObject());
    drawing.run();
    out.end();
  }

  /** Draws decoration. */
  void decoration(Runnable drawing) {
    out.beginArtifact();
    drawing.run();
    out.end();
  }

  /**
   * Draws in another unit of length.
   *
   * @param origin its zero, in points
   * @param scale points in one unit
   */
  void at(XY origin, double scale, Runnable drawing) {
    out.save(scale, 0, 0, scale, origin.x(), origin.y());
    drawing.run();
    out.restore();
  }

  /** Draws inside a box alone. */
  void within(Box box, Runnable drawing) {
    out.save();
    out.box(box);
    out.op("W");
    out.op("n");
    drawing.run();
    out.restore();
  }

  /** Draws a picture so that it fills a box. */
  void picture(PDImageXObject picture, Box box) {
    out.save(box.width(), 0, 0, -box.height(), box.x(), box.bottom());
    out.name(resources.add(picture).getName(), "Do");
    out.restore();
  }

  /** Lays a note over the page. */
  void note(PDAnnotation note, PDStructureElement element) throws IOException {
    PDObjectReference reference = new PDObjectReference();
    reference.setReferencedObject(note);
    element.appendKid(reference);
    element.setPage(page);
    note.setPage(page);
    note.setStructParent(structure.number(element.getCOSObject()));
    page.getAnnotations().add(note);
  }

  /** A box of the page in PDF's terms: from the lower left corner, y upwards. */
  PDRectangle rectangle(Box box) {
    return new PDRectangle(
        (float) box.x(),
        (float) (page.getMediaBox().getHeight() - box.bottom()),
        (float) box.width(),
        (float) box.height());
  }

  /** Puts the drawing on the page. */
  void finish(PDDocument document) throws IOException {
    out.restore();
    PDStream content = new PDStream(document);
    try (OutputStream stream = content.createOutputStream(COSName.FLATE_DECODE)) {
      stream.write(out.bytes());
    }
    page.setContents(content);
    page.setStructParents(structure.number(elements));
    page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
  }
}
