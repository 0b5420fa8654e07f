package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.AuditRow;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.legible.SizeTier;
import io.github.readfall.rules.legible.SmallestLetters;
import io.github.readfall.type.text.LetterHeight;
import java.util.List;
import java.util.Optional;

/** Audits lettering that exists. */
public final class LetteringAudit {

  private static final String RULE = "legible/size";

  private LetteringAudit() {}

  /**
   * Audits a measured height.
   *
   * @param heightPx in strip pixels; positive
   * @param stripWidthPx positive
   * @param style of the series, whose limit is kept to
   * @param itsPhones whether the series' own phones are shown besides the common ones
   */
  public static Audit of(
      LetterKind kind, double heightPx, double stripWidthPx, HouseStyle style, boolean itsPhones) {
    return Audit.of(
        "",
        kind,
        heightPx,
        stripWidthPx,
        style.limit(RULE),
        itsPhones ? style.phones() : List.of());
  }

  /** Audits every balloon whose lettering exists, by the letter that is judged first. */
  public static List<Audit> of(SetEpisode set) {
    return set.balloons().stream()
        .filter(balloon -> balloon.wanted().isLettered())
        .map(balloon -> of(balloon, set.style()))
        .toList();
  }

  private static Audit of(SetBalloon balloon, HouseStyle style) {
    LetterHeight letter = balloon.letters().get(0);
    return Audit.of(
        balloon.cue().id(),
        letter.kind(),
        letter.px(),
        style.strip().widthPx(),
        style.limit(RULE),
        style.phones());
  }

  /** Audits the smallest letters of a strip; empty if nothing is lettered. */
  public static Optional<Audit> ofSmallest(SetEpisode set) {
    HouseStyle style = set.style();
    return SmallestLetters.in(set)
        .map(
            letters ->
                Audit.of(
                    letters.balloon().cue().id(),
                    letters.kind(),
                    letters.heightPx(),
                    style.strip().widthPx(),
                    style.limit(RULE),
                    style.phones()));
  }

  /** The finding about a measured height on the narrowest phone of a series, if there is one. */
  public static Optional<Finding> finding(Audit audit, HouseStyle style) {
    AuditRow row = audit.on(style.narrowestPhone());
    return Optional.of(finding(audit, row, style))
        .filter(finding -> !row.passes())
        .filter(finding -> finding.measurement().orElseThrow().canBeSeen());
  }

  private static Finding finding(Audit audit, AuditRow row, HouseStyle style) {
    String name = audit.kind().inWords();
    String message =
        Character.toUpperCase(name.charAt(0))
            + name.substring(1)
            + " of "
            + AuditRow.down(audit.heightPx())
            + " px is seen at "
            + AuditRow.down(row.arcmin())
            + " minutes of arc on the phone \""
            + row.phone().name()
            + "\", less than "
            + AuditRow.up(audit.leastArcmin())
            + ".";
    String advice =
        "Letter it "
            + AuditRow.up(row.leastPx())
            + " px high or more; "
            + AuditRow.up(row.betterPx())
            + " px is read with ease.";
    Severity severity = SizeTier.of(audit.kind(), row.arcmin(), style);
    return Finding.of(RULE, severity, Where.everywhere(), message, advice)
        .measured(row.arcmin(), audit.leastArcmin(), "arcmin");
  }
}
