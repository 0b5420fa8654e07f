package io.github.readfall.rules.legible;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.stream.Stream;

/**
 * Letters whose colour is too near that of their balloon (WCAG 2.2, success criterion 1.4.3). One
 * dp of the phone is taken for one CSS pixel. Without a balloon the art is the ground, and nothing
 * is known of it.
 */
final class PoorContrast implements Rule {

  private static final double LARGE_SHARE = 3 / 4.5;

  /** 18 point, in CSS pixels. */
  private static final double LARGE_DP = 24;

  /** 14 point bold, in CSS pixels, by Understanding 1.4.3. */
  private static final double LARGE_BOLD_DP = 18.5;

  private static final int BOLD = 700;

  @Override
  public RuleSpec spec() {
    return RuleSpec.CONTRAST;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    SetEpisode episode = galley.set();
    return episode.balloons().stream()
        .filter(balloon -> balloon.look().shape() != ShapeKind.NONE)
        .flatMap(balloon -> check(balloon, episode));
  }

  private Stream<Finding> check(SetBalloon balloon, SetEpisode episode) {
    double usual = RuleSpec.CONTRAST.limitIn(episode.style());
    double limit = isLarge(balloon, episode) ? usual * LARGE_SHARE : usual;
    double ratio = balloon.look().text().contrastWith(balloon.look().fill());
    return ratio < limit ? Stream.of(finding(balloon, ratio, limit)) : Stream.empty();
  }

  private static boolean isLarge(SetBalloon balloon, SetEpisode episode) {
    double dp = episode.phone().dp(balloon.type().fontPx(), episode.style().strip().widthPx());
    boolean bold = balloon.type().face().file().weight() >= BOLD;
    return dp >= (bold ? LARGE_BOLD_DP : LARGE_DP);
  }

  private Finding finding(SetBalloon balloon, double ratio, double limit) {
    Look look = balloon.look();
    String message =
        "In "
            + BalloonFinding.name(balloon)
            + " the letters, "
            + look.text().hex()
            + ", stand out from the balloon, "
            + look.fill().hex()
            + ", by only "
            + NumberText.down(ratio, 2)
            + ":1, less than "
            + NumberText.up(limit, 2)
            + ":1.";
    Phrase advice =
        Phrase.of("Make ")
            .either("text", "the letters")
            .then(" darker or ")
            .either("fill", "the balloon")
            .then(" lighter, or the other way round, ")
            .either("under [voices] or [manners] in ", "for the voice or manner in ")
            .houseStyle()
            .then(".");
    return BalloonFinding.of(balloon, RuleSpec.CONTRAST, Phrase.of(message), advice)
        .measured(ratio, limit, RuleSpec.CONTRAST.unit());
  }
}
