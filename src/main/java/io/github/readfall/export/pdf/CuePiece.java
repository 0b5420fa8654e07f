package io.github.readfall.export.pdf;

import io.github.readfall.script.Cue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * A cue of the script on a page.
 *
 * @param cue what is said
 * @param element that its balloon and its words in the column belong to
 * @param entry its words in the column
 */
record CuePiece(Cue cue, PDStructureElement element, Entry entry) {}
