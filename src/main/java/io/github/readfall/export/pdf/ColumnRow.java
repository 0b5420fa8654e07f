package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.type.text.TextLine;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * A line of text in a column. Lengths are points.
 *
 * @param line of text
 * @param xPt where it begins, from the column's left edge
 * @param baselinePt from the row's top
 * @param heightPt of the row
 * @param colour of the letters
 * @param element of the structure that it belongs to
 */
record ColumnRow(
    TextLine line,
    double xPt,
    double baselinePt,
    double heightPt,
    Colour colour,
    PDStructureElement element) {

  /** Writes it with its upper left corner at a point. */
  void writeOn(Sheet sheet, XY at) {
    sheet.tagged(element, () -> sheet.painter().text(line, at.plus(xPt, baselinePt), colour));
  }
}
