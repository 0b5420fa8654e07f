package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * A piece of art in a document.
 *
 * @param picture of the piece
 * @param box in strip pixels
 */
record PageArt(PDImageXObject picture, Box box) {}
