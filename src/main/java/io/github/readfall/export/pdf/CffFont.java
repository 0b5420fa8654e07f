package io.github.readfall.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import org.apache.fontbox.cff.CFFCIDFont;
import org.apache.fontbox.cff.CFFFont;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;

/**
 * Describes an OpenType face with CFF outlines to PDF (ISO 32000-1, 9.7.4 and 9.9): the file is
 * embedded whole, because the library cannot subset it.
 */
final class CffFont {

  /** A font descriptor's flag: letters beyond the standard Latin ones. */
  private static final int SYMBOLIC = 4;

  /** Width of a stem in thousandths, which no file states; readers use it only for a substitute. */
  private static final int STEM = 80;

  private final PDDocument document;
  private final OpenTypeFont file;
  private final COSDictionary font = new COSDictionary();
  private final COSDictionary descendant = new COSDictionary();

  CffFont(PDDocument document, OpenTypeFont file) throws IOException {
    this.document = document;
    this.file = file;
    COSName name = COSName.getPDFName(file.getName());
    font.setItem(COSName.TYPE, COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TYPE0);
    font.setItem(COSName.BASE_FONT, name);
    font.setItem(COSName.ENCODING, COSName.IDENTITY_H);
    COSArray descendants = new COSArray();
    descendants.add(descendant);
    font.setItem(COSName.DESCENDANT_FONTS, descendants);
    descendant.setItem(COSName.TYPE, COSName.FONT);
    descendant.setItem(COSName.SUBTYPE, COSName.CID_FONT_TYPE0);
    descendant.setItem(COSName.BASE_FONT, name);
    descendant.setItem(COSName.CIDSYSTEMINFO, order());
    descendant.setItem(COSName.FONT_DESC, descriptor(name));
  }

  COSDictionary dictionary() {
    return font;
  }

  private static COSDictionary order() {
    COSDictionary order = new COSDictionary();
    order.setString(COSName.REGISTRY, "Adobe");
    order.setString(COSName.ORDERING, "Identity");
    order.setInt(COSName.SUPPLEMENT, 0);
    return order;
  }

  private COSDictionary descriptor(COSName name) throws IOException {
    COSDictionary descriptor = new COSDictionary();
    descriptor.setItem(COSName.TYPE, COSName.FONT_DESC);
    descriptor.setItem(COSName.FONT_NAME, name);
    descriptor.setInt(COSName.FLAGS, SYMBOLIC);
    BoundingBox box = file.getFontBBox();
    COSArray bounds = new COSArray();
    bounds.add(thousandths(box.getLowerLeftX()));
    bounds.add(thousandths(box.getLowerLeftY()));
    bounds.add(thousandths(box.getUpperRightX()));
    bounds.add(thousandths(box.getUpperRightY()));
    descriptor.setItem(COSName.FONT_BBOX, bounds);
    descriptor.setInt(COSName.ITALIC_ANGLE, 0);
    descriptor.setItem(COSName.ASCENT, thousandths(file.getHorizontalHeader().getAscender()));
    descriptor.setItem(COSName.DESCENT, thousandths(file.getHorizontalHeader().getDescender()));
    descriptor.setItem(COSName.CAP_HEIGHT, thousandths(file.getHorizontalHeader().getAscender()));
    descriptor.setInt(COSName.STEM_V, STEM);
    descriptor.setItem(COSName.FONT_FILE3, program());
    return descriptor;
  }

  private COSInteger thousandths(float units) throws IOException {
    return COSInteger.get(Math.round(units * (float) EmbeddedFace.EM / file.getUnitsPerEm()));
  }

  private COSStream program() throws IOException {
    try (InputStream whole = file.getOriginalData()) {
      COSStream stream = new PDStream(document, whole, COSName.FLATE_DECODE).getCOSObject();
      stream.setItem(COSName.SUBTYPE, COSName.getPDFName("OpenType"));
      return stream;
    }
  }

  /**
   * The code of a glyph in the text: its number, or the one in the outlines if they have numbers of
   * their own.
   */
  int code(int glyph) throws IOException {
    CFFFont outlines = file.getCFF().getFont();
    return outlines instanceof CFFCIDFont ? outlines.getCharset().getCIDForGID(glyph) : glyph;
  }

  /** States the widths of glyphs. */
  void setWidths(Set<Integer> glyphs) throws IOException {
    COSArray widths = new COSArray();
    for (int glyph : glyphs) {
      COSArray one = new COSArray();
      one.add(thousandths(file.getAdvanceWidth(glyph)));
      widths.add(COSInteger.get(code(glyph)));
      widths.add(one);
    }
    descendant.setItem(COSName.W, widths);
  }
}
