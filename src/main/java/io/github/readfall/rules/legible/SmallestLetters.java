package io.github.readfall.rules.legible;

import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.RuleSpec;
import java.util.Comparator;
import java.util.Optional;

/**
 * The letters of an episode that are furthest from being read with ease, by the measure of {@code
 * legible/size}. They may be small on purpose, such as a whisper.
 *
 * @param balloon that they are in
 * @param kind which letters
 * @param heightPx their height, in strip pixels
 */
public record SmallestLetters(SetBalloon balloon, LetterKind kind, double heightPx) {

  /** The first of the smallest letters; empty if there is no balloon. */
  public static Optional<SmallestLetters> in(SetEpisode episode) {
    double limit = RuleSpec.SIZE.limitIn(episode.style());
    return episode.balloons().stream()
        .map(balloon -> new Seen(balloon, LetterSize.least(balloon, episode, limit)))
        .min(Comparator.comparingDouble(seen -> seen.size().share()))
        .map(Seen::letters);
  }

  private record Seen(SetBalloon balloon, LetterSize size) {
    SmallestLetters letters() {
      return new SmallestLetters(balloon, size.height().kind(), size.height().px());
    }
  }
}
