package io.github.readfall.base.viewing;

import java.util.List;
import java.util.stream.Stream;

/**
 * Judges by its measured height alone whether existing lettering can be read.
 *
 * @param balloon id of its balloon; empty if a height alone was measured
 * @param kind of the letters measured
 * @param heightPx their height, in strip pixels; positive
 * @param stripWidthPx width of the strip; positive
 * @param leastArcmin the least height at which they can be read, in minutes of arc
 * @param betterArcmin the least height at which they are easy to read, in minutes of arc
 * @param own the phones of the series, at its distance from the eye
 * @param common every common width of a phone, each in the hand of every {@link Reader}
 */
public record Audit(
    String balloon,
    LetterKind kind,
    double heightPx,
    double stripWidthPx,
    double leastArcmin,
    double betterArcmin,
    List<AuditRow> own,
    List<AuditRow> common) {

  public Audit {
    if (!(heightPx > 0) || !(stripWidthPx > 0) || !(leastArcmin > 0)) {
      throw new IllegalArgumentException("no audit: " + heightPx + " of " + stripWidthPx);
    }
    own = List.copyOf(own);
    common = List.copyOf(common);
  }

  /**
   * Audits one height.
   *
   * @param balloon id of its balloon, or empty
   * @param leastCapitalArcmin the least height of a capital that the series asks for, in minutes of
   *     arc; the other kinds are in proportion
   * @param phones of the series; may be empty
   */
  public static Audit of(
      String balloon,
      LetterKind kind,
      double heightPx,
      double stripWidthPx,
      double leastCapitalArcmin,
      List<Phone> phones) {
    double least = kind.leastArcmin(leastCapitalArcmin);
    double better = Math.max(least, kind.betterArcmin());
    Stream<Phone> held =
        Reader.PHONE_WIDTHS_DP.stream()
            .flatMap(width -> Reader.ALL.stream().map(reader -> reader.holding(width)));
    return new Audit(
        balloon,
        kind,
        heightPx,
        stripWidthPx,
        least,
        better,
        phones.stream()
            .map(phone -> AuditRow.of(phone, heightPx, stripWidthPx, least, better))
            .toList(),
        held.map(phone -> AuditRow.of(phone, heightPx, stripWidthPx, least, better)).toList());
  }

  /** The audit on one phone. */
  public AuditRow on(Phone phone) {
    return AuditRow.of(phone, heightPx, stripWidthPx, leastArcmin, betterArcmin);
  }
}
