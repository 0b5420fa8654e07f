package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.Look;
import io.github.readfall.script.Cue;
import io.github.readfall.type.balloon.Enclosure;
import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.Passage;
import io.github.readfall.type.text.SizedFace;
import java.util.List;
import java.util.Optional;

/**
 * A cue ready to be fitted: shaped, with every possible line measured.
 *
 * @param cue its words
 * @param look of its lettering
 * @param language it is lettered in
 * @param type the face and size that the voice asks for
 * @param capitals true if it is all in capitals
 * @param whole its text, with every place where a line may end
 * @param passage its text, with the places where a line ends if its outline is chosen
 * @param table its lines
 * @param rules its outline keeps to
 * @param outlineStyle the measures its outline is drawn with
 * @param trackingPx letterspacing after each letter
 * @param joinedTo id of the balloon that it is joined to
 * @param alone true if its panel has no other cue
 * @param brokenWords words that had to be broken because they are wider than any balloon
 * @param wanted the request to it
 */
public record ShapedCue(
    Cue cue,
    Look look,
    Language language,
    SizedFace type,
    boolean capitals,
    Passage whole,
    Passage passage,
    LineTable table,
    FitRules rules,
    OutlineStyle outlineStyle,
    double trackingPx,
    Optional<String> joinedTo,
    boolean alone,
    List<String> brokenWords,
    BalloonRequest wanted) {

  public ShapedCue {
    brokenWords = List.copyOf(brokenWords);
  }

  /** The kind of its inner area. */
  Enclosure enclosure() {
    return look.shape().enclosure(outlineStyle.squareness());
  }

  /** Its rules for the number of lines that is asked for; empty if that is left open. */
  Optional<FitRules> rulesAsked() {
    return wanted.lines().stream().mapToObj(rules::withLines).findFirst();
  }

  /** The same cue, its lines centred as wide as they are: for an outline without room to spare. */
  ShapedCue centredByWidth() {
    return of(whole.centredByWidth(), passage.centredByWidth());
  }

  /**
   * The same cue, broken elsewhere than in the script too: for an outline without room for that.
   */
  ShapedCue brokenFreely() {
    return of(whole, whole);
  }

  private ShapedCue of(Passage otherWhole, Passage other) {
    return new ShapedCue(
        cue,
        look,
        language,
        type,
        capitals,
        otherWhole,
        other,
        other.measure(rules.maxWidthPx() - 2 * rules.marginPx()),
        rules,
        outlineStyle,
        trackingPx,
        joinedTo,
        alone,
        brokenWords,
        wanted);
  }
}
