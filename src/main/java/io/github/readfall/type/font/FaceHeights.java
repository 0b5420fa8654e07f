package io.github.readfall.type.font;

/**
 * The heights of a face that legibility is judged by, in design units; 0 if it has no such letter.
 *
 * @param unitsPerEm design units in an em; positive
 * @param capital a flat capital, baseline to top: as the file states, else the ink of H
 * @param xHeight a flat small letter: as the file states, else the ink of x
 * @param ideograph the ink of a full ideograph or, in a Korean face, of a full syllable
 */
public record FaceHeights(int unitsPerEm, double capital, double xHeight, double ideograph) {}
