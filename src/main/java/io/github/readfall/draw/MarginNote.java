package io.github.readfall.draw;

import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes short texts beside the lettering.
 *
 * @param labels that set them
 * @param fontPx em; positive
 */
record MarginNote(Labels labels, double fontPx) {

  private static final double LEADING_EM = 1.25;

  /** Writes one line. */
  List<Mark> line(String text, XY at, boolean bold, Colour colour) {
    return marks(labels.line(text, fontPx, bold), at, colour);
  }

  /** Writes one line with its middle at a point across. */
  List<Mark> centred(String text, XY at, boolean bold, Colour colour) {
    TextLine line = labels.line(text, fontPx, bold);
    return marks(line, at.plus(-line.advancePx() / 2, 0), colour);
  }

  double widthPx(String text, boolean bold) {
    return labels.line(text, fontPx, bold).advancePx();
  }

  /** The distance from baseline to baseline. */
  double leadingPx() {
    return LEADING_EM * fontPx;
  }

  /** A text broken at its spaces into lines no wider than a measure. */
  List<String> wrapped(String text, double measurePx) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && widthPx(longer, false) > measurePx) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  private static List<Mark> marks(TextLine line, XY at, Colour colour) {
    List<Mark> marks = new ArrayList<>();
    for (PlacedRun run : line.runs()) {
      marks.add(new Mark.Glyphs(run, at, colour));
    }
    return marks;
  }
}
