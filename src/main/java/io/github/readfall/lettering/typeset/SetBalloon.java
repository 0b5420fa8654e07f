package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.script.Cue;
import io.github.readfall.type.balloon.InnerArea;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.LetterHeight;
import io.github.readfall.type.text.SizedFace;
import java.util.List;
import java.util.Optional;

/**
 * A cue with its text set inside its outline. It has no place on the strip yet: the top left corner
 * of {@code box} is the origin.
 *
 * @param cue its words
 * @param look of its lettering
 * @param language it is lettered in
 * @param type the face and size that the voice asks for
 * @param capitals true if it is all in capitals
 * @param leadingPx from baseline to baseline
 * @param outlineStyle the measures its outline is drawn with
 * @param trackingPx letterspacing after each letter
 * @param lines from top to bottom
 * @param box bounds of the drawn outline without the tail; of the ink if there is no outline
 * @param inner bounds of the area that the text keeps its margin from
 * @param outline as drawn without the tail; no steps if there is none
 * @param joinedTo id of the balloon that it is joined to
 * @param partedAfter lines, from 0, that part what no line should part
 * @param alone true if its panel has no other cue
 * @param missingLetters code points that no face has
 * @param brokenWords words that had to be broken because they are wider than any balloon
 * @param wanted the request to it
 * @param given the fit of its text in the requested box; empty if there was none, and if it has no
 *     outline
 */
public record SetBalloon(
    Cue cue,
    Look look,
    Language language,
    SizedFace type,
    boolean capitals,
    double leadingPx,
    OutlineStyle outlineStyle,
    double trackingPx,
    List<SetLine> lines,
    Box box,
    Box inner,
    Path outline,
    Optional<String> joinedTo,
    List<Integer> partedAfter,
    boolean alone,
    List<Integer> missingLetters,
    List<String> brokenWords,
    BalloonRequest wanted,
    Optional<GivenFit> given) {

  public SetBalloon {
    lines = List.copyOf(lines);
    partedAfter = List.copyOf(partedAfter);
    missingLetters = List.copyOf(missingLetters);
    brokenWords = List.copyOf(brokenWords);
  }

  /** The least distance kept between ink and outline. */
  public double marginPx() {
    return outlineStyle.marginPx();
  }

  /** The area that the text keeps its margin from, with the balloon at a place. */
  public InnerArea innerAt(XY at) {
    return new InnerArea(look.shape(), inner.movedBy(at.x(), at.y()), outlineStyle);
  }

  /**
   * The height of a character, by which a reader judges its size: of a capital or, in other
   * scripts, of the letter that is judged first. Strip pixels; positive.
   */
  public double characterPx() {
    return characterPx(type, language);
  }

  static double characterPx(SizedFace type, Language language) {
    return LetterHeight.of(type, language, false).get(0).px();
  }

  /** The letters by which its size is judged; a small x only if there is a small letter. */
  public List<LetterHeight> letters() {
    return LetterHeight.of(type, language, hasSmallLetters());
  }

  private boolean hasSmallLetters() {
    return lines.stream()
        .anyMatch(line -> line.line().text().codePoints().anyMatch(Character::isLowerCase));
  }

  /** The faces it is set in, each once. */
  public List<SizedFace> types() {
    return lines.stream()
        .flatMap(line -> line.line().runs().stream())
        .map(run -> run.type())
        .distinct()
        .toList();
  }
}
