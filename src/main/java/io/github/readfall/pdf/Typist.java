package io.github.readfall.pdf;

import io.github.readfall.text.Language;
import io.github.readfall.text.SizeBasis;
import io.github.readfall.text.TextLine;
import io.github.readfall.typeset.Labels;
import io.github.readfall.viewing.Colour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * Sets the texts of a proof.
 *
 * @param labels that set them
 */
record Typist(Labels labels) {

  /** Baseline to baseline over the em. House default, no source. */
  private static final double LEADING = 1.28;

  private static final double BASELINE = 0.95;

  /**
   * A text in rows; none where it says nothing.
   *
   * @param indentPt on the side where it begins to be read
   * @param measurePt width of the column
   * @param element that the rows belong to
   */
  List<Row> rows(
      String text,
      Hand hand,
      Language language,
      double indentPt,
      double measurePt,
      PDStructureElement element) {
    List<Row> rows = new ArrayList<>();
    if (text.isBlank()) {
      return rows;
    }
    double fontPt = hand.fontPt() * larger(language);
    List<TextLine> lines =
        labels.lines(text.strip(), fontPt, hand.bold(), language, measurePt - indentPt);
    for (TextLine line : lines) {
      double x = language.rightToLeft() ? measurePt - indentPt - line.advancePx() : indentPt;
      double baseline = Math.max(BASELINE * fontPt, -line.box().top());
      double height = Math.max(LEADING * fontPt, baseline + line.box().bottom());
      rows.add(new Row(line, x, baseline, height, hand.colour(), element));
    }
    return rows;
  }

  /** Scripts whose letters are small in their em are set larger. */
  private static double larger(Language language) {
    return language.sizeBasis() == SizeBasis.EM ? language.emFactor() : 1;
  }

  /** One quiet line, of what belongs to no part of the document. */
  TextLine aside(String text) {
    return labels.line(text, Hand.ASIDE.fontPt(), Hand.ASIDE.bold());
  }

  /** A key with a short text on it. */
  Key key(String text, Colour colour) {
    double fontPt = Key.FONT_PT * Math.min(1, Key.ROOMY / text.length());
    return new Key(Optional.of(labels.line(text, fontPt, true)), colour);
  }
}
