package io.github.readfall.export.pdf;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * A finding on a page.
 *
 * @param finding with a place on the strip
 * @param section of the structure that it belongs to
 * @param entry its words in the column
 */
record FoundNote(Finding finding, PDStructureElement section, Entry entry) {

  /** The height of a finding on the strip; 0 if it has no place. */
  static double topPx(Finding finding) {
    return finding.box().map(Box::y).orElse(0.0);
  }

  /** Its whole text. */
  String text() {
    String advice = finding.advice().isEmpty() ? "" : " " + finding.advice();
    String reason = finding.reason().map(why -> " Ignored: " + why).orElse("");
    return finding.severity().word()
        + " "
        + finding.rule()
        + ": "
        + finding.message()
        + advice
        + reason;
  }
}
