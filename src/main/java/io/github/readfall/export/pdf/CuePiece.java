package io.github.readfall.export.pdf;

import io.github.readfall.script.Cue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * A cue of the script on a page.
 *
 * @param cue of the script
 * @param element of its balloon and of its words in the column
 * @param entry its words in the column
 */
record CuePiece(Cue cue, PDStructureElement element, Entry entry) {}
