package io.github.readfall.lettering.typeset;

import io.github.readfall.script.Cue;
import io.github.readfall.type.text.Language;
import java.util.List;
import java.util.Optional;

/**
 * A cue, and all that how it is set hangs on.
 *
 * @param cue its words
 * @param voice it is lettered in
 * @param language it is lettered in
 * @param joinedTo id of the balloon that it is joined to
 * @param wanted the request to it
 * @param cast everybody's name: lines keep those of several words whole
 * @param alone true if its panel has no other cue
 */
record CueToSet(
    Cue cue,
    String voice,
    Language language,
    Optional<String> joinedTo,
    BalloonRequest wanted,
    List<String> cast,
    boolean alone) {

  CueToSet {
    cast = List.copyOf(cast);
  }

  /** Returns true if a balloon is what is asked for. */
  boolean isFor(SetBalloon balloon) {
    return balloon.cue().equals(cue)
        && balloon.joinedTo().equals(joinedTo)
        && balloon.alone() == alone
        && balloon.wanted().equals(wanted);
  }
}
