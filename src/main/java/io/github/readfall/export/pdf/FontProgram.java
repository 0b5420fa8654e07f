package io.github.readfall.export.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A font file in a document. */
sealed interface FontProgram {

  /** The font's dictionary in the document. */
  COSDictionary dictionary();

  /** The code in the text of a glyph, by its number in the file. */
  int code(int glyph);

  /** The way of the pen after a glyph, in whole thousandths of the em. */
  double advance(int glyph);

  /** Completes it, when it is known which glyphs are shown. */
  void finish(Set<Integer> shown) throws IOException;

  /** The advance, rounded as the library rounds it when it states the widths of a face. */
  private static double advance(TrueTypeFont file, int glyph) {
    try {
      return Math.round(file.getAdvanceWidth(glyph) * (1000f / file.getUnitsPerEm()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** TrueType outlines, only those that are shown if the file allows it. */
  record TrueType(TrueTypeFont file, PDType0Font font) implements FontProgram {

    @Override
    public COSDictionary dictionary() {
      return font.getCOSObject();
    }

    @Override
    public int code(int glyph) {
      return glyph;
    }

    @Override
    public double advance(int glyph) {
      return FontProgram.advance(file, glyph);
    }

    @Override
    public void finish(Set<Integer> shown) throws IOException {
      if (font.willBeSubset()) {
        font.addGlyphsToSubset(shown);
        font.subset();
      }
    }
  }

  /** CFF outlines, all of them. */
  record Cff(TrueTypeFont file, CffFont font) implements FontProgram {

    @Override
    public COSDictionary dictionary() {
      return font.dictionary();
    }

    @Override
    public int code(int glyph) {
      try {
        return font.code(glyph);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public double advance(int glyph) {
      return FontProgram.advance(file, glyph);
    }

    @Override
    public void finish(Set<Integer> shown) throws IOException {
      font.setWidths(shown);
    }
  }
}
