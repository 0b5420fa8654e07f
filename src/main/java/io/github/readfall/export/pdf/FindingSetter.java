package io.github.readfall.export.pdf;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.StripLayers;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * Sets findings, and gives them their place in the structure.
 *
 * @param measurePt width of the column
 */
record FindingSetter(
    TagStructure structure, TextSetter setter, ProofLanguages languages, double measurePt) {

  private static final int LETTERS = 26;

  /** A part of the structure for findings. */
  PDStructureElement section() {
    PDStructureElement section = structure.add(TagStructure.SECTION);
    languages.mark(section, languages.notes());
    return section;
  }

  /**
   * Sets a finding.
   *
   * @param wantedPt wanted place on the page
   */
  FoundNote set(Finding finding, PDStructureElement section, double wantedPt, FindingKey key) {
    Colour colour = StripLayers.colourOf(finding);
    PDStructureElement element = structure.add(TagStructure.TEXT, section);
    List<ColumnRow> rows = new ArrayList<>();
    String head = finding.severity().word() + "  " + finding.rule() + figure(finding);
    rows.addAll(rows(head, TextStyle.STRONG.in(colour), element));
    rows.addAll(rows(finding.message(), TextStyle.TEXT, element));
    rows.addAll(rows(finding.advice(), TextStyle.ASIDE, element));
    String fix = finding.fix().map(one -> one.sentence().inReports()).orElse("");
    if (!finding.advice().contains(fix)) {
      rows.addAll(rows(fix, TextStyle.ASIDE, element));
    }
    finding
        .reason()
        .ifPresent(why -> rows.addAll(rows("Ignored: " + why, TextStyle.TEXT, element)));
    if (finding.box().isEmpty()) {
      rows.addAll(rows(where(finding.where()), TextStyle.ASIDE, element));
    }
    return new FoundNote(finding, section, new Entry(wantedPt, rows, key));
  }

  private List<ColumnRow> rows(String text, TextStyle style, PDStructureElement element) {
    return setter.rows(text, style, languages.notes(), 0, measurePt, element);
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
  FindingKey letter(int index, Finding finding) {
    String last = Character.toString('a' + index % LETTERS);
    String letters = index < LETTERS ? last : letters(index / LETTERS - 1) + last;
    return setter.key(letters, StripLayers.colourOf(finding));
  }

  private static String letters(int index) {
    return Character.toString('a' + index % LETTERS);
  }
}
