package io.github.readfall.export.pdf;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * Sets the texts of a proof.
 *
 * @param labels that set them
 */
record TextSetter(Labels labels) {

  /** Baseline to baseline over the em. House default, no source. */
  private static final double LEADING = 1.28;

  private static final double BASELINE = 0.95;

  /**
   * A text in rows; none if it is empty.
   *
   * @param indentPt on the side where reading begins
   * @param measurePt width of the column
   * @param element that the rows belong to
   */
  List<ColumnRow> rows(
      String text,
      TextStyle style,
      Language language,
      double indentPt,
      double measurePt,
      PDStructureElement element) {
    List<ColumnRow> rows = new ArrayList<>();
    if (text.isBlank()) {
      return rows;
    }
    double fontPt = style.fontPt() * labels.emOf(language);
    List<TextLine> lines =
        labels.lines(text.strip(), fontPt, style.bold(), language, measurePt - indentPt);
    for (TextLine line : lines) {
      double x = language.rightToLeft() ? measurePt - indentPt - line.advancePx() : indentPt;
      double baseline = Math.max(BASELINE * fontPt, -line.box().top());
      double height = Math.max(LEADING * fontPt, baseline + line.box().bottom());
      rows.add(new ColumnRow(line, x, baseline, height, style.colour(), element));
    }
    return rows;
  }

  /** One secondary line that belongs to no part of the document. */
  TextLine aside(String text) {
    return labels.line(text, TextStyle.ASIDE.fontPt(), TextStyle.ASIDE.bold());
  }

  /** A key with a short text on it. */
  FindingKey key(String text, Colour colour) {
    double fontPt = FindingKey.FONT_PT * Math.min(1, FindingKey.ROOMY / text.length());
    return new FindingKey(Optional.of(labels.line(text, fontPt, true)), colour);
  }
}
