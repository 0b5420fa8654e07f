package io.github.readfall.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * A panel of the script on a page.
 *
 * @param part of the panel on the page
 * @param figure the element of its picture
 * @param entry its heading and description in the column
 * @param cues in script order
 */
record PanelPiece(PanelPart part, PDStructureElement figure, Entry entry, List<CuePiece> cues) {

  PanelPiece {
    cues = List.copyOf(cues);
  }

  /** All of its entries in the column. */
  Stream<Entry> entries() {
    return Stream.concat(Stream.of(entry), cues.stream().map(CuePiece::entry));
  }
}
