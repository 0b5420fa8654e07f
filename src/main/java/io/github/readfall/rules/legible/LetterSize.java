package io.github.readfall.rules.legible;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.type.text.LetterHeight;
import java.util.Comparator;
import java.util.Optional;

/**
 * The letters of a balloon that are furthest from being read with ease, as the phone shows them on
 * which they look smallest.
 *
 * @param height of which letters
 * @param arcmin how high they are seen
 * @param limit how high they must be seen, in minutes of arc
 * @param phone name of the phone
 */
record LetterSize(LetterHeight height, double arcmin, double limit, String phone) {

  /**
   * The worst letters of a balloon; empty if all can be read.
   *
   * @param capitalLimit least height of a capital in minutes of arc; the other heights are in
   *     proportion
   */
  static Optional<LetterSize> tooSmall(
      SetBalloon balloon, SetEpisode episode, double capitalLimit) {
    return Optional.of(least(balloon, episode, capitalLimit))
        .filter(size -> NumberText.isShort(size.arcmin(), size.limit()));
  }

  /**
   * The letters of a balloon that are nearest to being too small.
   *
   * @param capitalLimit least height of a capital in minutes of arc; the other heights are in
   *     proportion
   */
  static LetterSize least(SetBalloon balloon, SetEpisode episode, double capitalLimit) {
    return balloon.letters().stream()
        .map(height -> seen(height, episode, capitalLimit))
        .min(Comparator.comparingDouble(LetterSize::share))
        .orElseThrow();
  }

  private static LetterSize seen(LetterHeight height, SetEpisode episode, double capitalLimit) {
    double widthPx = episode.style().strip().widthPx();
    double limit = height.kind().leastArcmin(capitalLimit);
    return episode.style().phones().stream()
        .map(phone -> new LetterSize(height, arcmin(height, phone, widthPx), limit, phone.name()))
        .min(Comparator.comparingDouble(LetterSize::arcmin))
        .orElseThrow();
  }

  private static double arcmin(LetterHeight height, Phone phone, double stripWidthPx) {
    return phone.angleOf(height.px(), stripWidthPx).arcmin();
  }

  /** The share of the limit that is reached. */
  double share() {
    return arcmin / limit;
  }

  /** A sentence about what is wrong. */
  String message(SetBalloon balloon) {
    return "In "
        + BalloonFinding.name(balloon)
        + " "
        + height.kind().inWords()
        + " is "
        + NumberText.down(arcmin, 1)
        + " minutes of arc high on the phone \""
        + phone
        + "\", less than "
        + NumberText.up(limit, 1)
        + ".";
  }

  /** A sentence about the size that existing lettering needs. */
  String enlarged(SetBalloon balloon) {
    return "Enlarge the lettering until "
        + height.kind().inWords()
        + " is "
        + NumberText.up(height.px() / share(), 1)
        + " px high or more, at an em of "
        + NumberText.up(balloon.type().fontPx() / share(), 1)
        + " px.";
  }
}
