package io.github.readfall.pdf;

import io.github.readfall.draw.StripLayers;
import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Measurement;
import io.github.readfall.finding.Mend;
import io.github.readfall.finding.Where;
import io.github.readfall.viewing.Colour;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * Sets findings, and gives them their place in the structure.
 *
 * @param measurePt width of the column
 */
record FindingSetter(Structure structure, Typist typist, Tongues tongues, double measurePt) {

  private static final int LETTERS = 26;

  /** A part of the structure for findings. */
  PDStructureElement section() {
    PDStructureElement section = structure.add(Structure.SECTION);
    tongues.mark(section, tongues.notes());
    return section;
  }

  /**
   * Sets a finding.
   *
   * @param wantedPt where it should stand on the page
   */
  FoundNote set(Finding finding, PDStructureElement section, double wantedPt, Key key) {
    Colour colour = StripLayers.colourOf(finding);
    PDStructureElement element = structure.add(Structure.TEXT, section);
    List<Row> rows = new ArrayList<>();
    String head = finding.severity().word() + "  " + finding.rule() + figure(finding);
    rows.addAll(rows(head, Hand.STRONG.in(colour), element));
    rows.addAll(rows(finding.message(), Hand.TEXT, element));
    rows.addAll(rows(finding.advice(), Hand.ASIDE, element));
    String mend = finding.mend().map(Mend::sentence).orElse("");
    if (!finding.advice().contains(mend)) {
      rows.addAll(rows(mend, Hand.ASIDE, element));
    }
    finding.reason().ifPresent(why -> rows.addAll(rows("Set aside: " + why, Hand.TEXT, element)));
    if (finding.box().isEmpty()) {
      rows.addAll(rows(where(finding.where()), Hand.ASIDE, element));
    }
    return new FoundNote(finding, section, new Entry(wantedPt, rows, key));
  }

  private List<Row> rows(String text, Hand hand, PDStructureElement element) {
    return typist.rows(text, hand, tongues.notes(), 0, measurePt, element);
  }

  private static String figure(Finding finding) {
    return finding.measurement().map(Measurement::figure).map(f -> "  " + f).orElse("");
  }

  private static String where(Where where) {
    List<String> parts = new ArrayList<>();
    if (!where.file().isEmpty()) {
      parts.add(where.file());
    }
    where.line().ifPresent(line -> parts.add("line " + line));
    where.panel().ifPresent(panel -> parts.add("panel " + panel));
    parts.addAll(where.balloons());
    return String.join(", ", parts);
  }

  /** The letter of a page's finding, from 0: a to z, then aa, ab and on. */
  Key letter(int index, Finding finding) {
    String last = Character.toString('a' + index % LETTERS);
    String letters = index < LETTERS ? last : letters(index / LETTERS - 1) + last;
    return typist.key(letters, StripLayers.colourOf(finding));
  }

  private static String letters(int index) {
    return Character.toString('a' + index % LETTERS);
  }
}
