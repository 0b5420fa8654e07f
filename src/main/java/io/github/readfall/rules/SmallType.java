package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.text.SizeBasis;
import java.util.stream.Stream;

/**
 * Letters of a voice of full size that are too small to read on the narrowest phone. Sources: see
 * {@link LetterHeight}.
 */
final class SmallType implements Rule {

  static final String ID = "legible/size";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    SetEpisode episode = galley.set();
    double limit = episode.style().limit(id());
    return episode.balloons().stream()
        .filter(balloon -> balloon.look().size() >= 1)
        .flatMap(
            balloon ->
                LetterSize.tooSmall(balloon, episode, limit).stream()
                    .map(size -> finding(balloon, size, advice(balloon, size, episode))));
  }

  private static String advice(SetBalloon balloon, LetterSize size, SetEpisode episode) {
    return balloon.wanted().isLettered()
        ? size.enlarged(balloon)
        : "Raise "
            + size.height().key()
            + " under [lettering] in series.toml to "
            + NumberWords.up(needed(balloon, size, episode), 1)
            + " or more.";
  }

  /** The least angle to ask for that makes these letters large enough, in minutes of arc. */
  private static double needed(SetBalloon balloon, LetterSize size, SetEpisode episode) {
    if (balloon.language().sizeBasis() == SizeBasis.EM) {
      return episode.style().lettering().capArcmin() / size.share();
    }
    double stripWidthPx = episode.style().strip().widthPx();
    double seenOnNarrowest =
        episode.phone().angleOf(size.height().px(), stripWidthPx).arcmin(); // letters go by it
    return size.limit() / balloon.look().size() * seenOnNarrowest / size.arcmin();
  }

  private Finding finding(SetBalloon balloon, LetterSize size, String advice) {
    return Fault.in(balloon, this, size.message(balloon), advice)
        .measured(size.arcmin(), size.limit(), LetterSize.UNIT);
  }
}
