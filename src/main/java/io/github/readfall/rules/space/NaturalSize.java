package io.github.readfall.rules.space;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;

/** Advises a balloon of another size than its text would have by itself. */
final class NaturalSize {

  private NaturalSize() {}

  /** The start of a sentence that offers another choice as well. */
  static String cut(PlacedBalloon balloon, GivenFit given) {
    int many = given.lettersTooMany();
    String text = balloon.cue().text().plain();
    boolean all = many >= text.codePointCount(0, text.length());
    return all
        ? "Not a word has room, so "
        : "Take " + many + (many == 1 ? " letter" : " letters") + " or more out of it, or ";
  }

  /** For example {@code 13 % wider and higher; by itself it would be 612 × 398 px}. */
  static String grown(GivenFit given) {
    return NumberText.up(100 * (given.growBy() - 1), 0)
        + " % wider and higher; by itself it would be "
        + size(given);
  }

  /** For example {@code 612 × 398 px}. */
  static String size(GivenFit given) {
    Box own = given.ownSize();
    return NumberText.up(own.width(), 0) + " × " + NumberText.up(own.height(), 0) + " px";
  }

  /**
   * A finding with the balloon's natural size about the same middle as its fix, as far as the strip
   * is wide enough, unless the balloon is pinned.
   */
  static Finding withFix(PlacedBalloon balloon, GivenFit given, Galley galley, Finding finding) {
    Finding placed = finding.at(balloon.box());
    return balloon.pinned()
        ? placed
        : placed.withFix(new Fix.Resize(balloon.id(), own(balloon.box(), given, galley)));
  }

  private static Box own(Box box, GivenFit given, Galley galley) {
    Box own = given.ownSize();
    double left = box.centre().x() - own.width() / 2;
    double top = box.centre().y() - own.height() / 2;
    return own.movedBy(
        Math.max(0, Math.min(left, galley.widthPx() - own.width())), Math.max(0, top));
  }
}
