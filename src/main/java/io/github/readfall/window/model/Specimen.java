package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A balloon that shows a voice or a manner, set as on the strip.
 *
 * @param set an episode with that balloon alone
 * @param balloon the balloon itself
 * @param findings of the rules about legibility
 */
public record Specimen(SetEpisode set, SetBalloon balloon, List<Finding> findings) {

  public Specimen {
    findings = List.copyOf(findings);
  }

  /**
   * The specimen of a subject; empty if it has none, such as the limit of a rule.
   *
   * @param like the episode that the balloon would be in
   * @param sample the words if the script has none
   */
  public static Optional<Specimen> of(
      StyleSubject subject, HouseStyle style, Episode like, String sample) {
    if (subject instanceof StyleSubject.Limit) {
      return Optional.empty();
    }
    Script script = new SpecimenCue(like.script(), sample).of(subject);
    SetEpisode set = new Typesetter(like.shelf(), like.lettered(style)).set(script);
    return set.balloons().stream()
        .findFirst()
        .map(balloon -> new Specimen(set, balloon, unread(set)));
  }

  /** The findings about legibility; all others depend on the strip. */
  private static List<Finding> unread(SetEpisode set) {
    return RuleBook.check(Galley.unplaced(set)).stream()
        .filter(finding -> finding.rule().startsWith("legible/"))
        .toList();
  }

  /** The look of the balloon. */
  public Look look() {
    return balloon.look();
  }

  /** The contrast ratio of its letters, 1 to 21; empty if it has no outline. */
  public OptionalDouble contrast() {
    return look().shape() == ShapeKind.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(look().text().contrastWith(look().fill()));
  }

  /** The height of a character on the narrowest phone, in minutes of arc. */
  public double arcmin() {
    return set.phone().angleOf(balloon.characterPx(), set.style().strip().widthPx()).arcmin();
  }
}
