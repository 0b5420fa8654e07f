package io.github.readfall.rules.words;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.ReadWords;
import io.github.readfall.plan.Screens;
import io.github.readfall.plan.ScrollStretch;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** More words on some screens' length of scroll than leave time for pictures. */
final class WordyStretch implements Rule {

  /** Length of a stretch, in screens. House default, no source. */
  private static final int SCREENS = 3;

  @Override
  public RuleSpec spec() {
    return RuleSpec.PACE;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limit = RuleSpec.PACE.limitIn(galley.style());
    double lengthPx = SCREENS * Screens.screenPx(galley.style());
    return ScrollStretch.over(limit, lengthPx, ReadWords.of(galley)).stream()
        .map(stretch -> finding(stretch, galley, limit));
  }

  private Finding finding(ScrollStretch stretch, Galley galley, double limit) {
    Set<String> ids = stretch.met().stream().map(ReadWords::cue).collect(Collectors.toSet());
    List<PlacedBalloon> balloons =
        galley.balloons().stream().filter(balloon -> ids.contains(balloon.id())).toList();
    String message =
        "From "
            + BalloonFinding.name(balloons.get(0).set())
            + " on, three screens of scroll hold "
            + stretch.words()
            + " words, more than "
            + NumberText.down(limit, 1)
            + ".";
    String advice = "Shorten the talk, or let a picture without words stand in the midst of it.";
    Box place = balloons.stream().map(PlacedBalloon::box).reduce(Box::union).orElseThrow();
    return BalloonFinding.of(
            balloons.stream().map(PlacedBalloon::set).toList(), RuleSpec.PACE, message, advice)
        .at(place)
        .measured(stretch.words(), limit, RuleSpec.PACE.unit());
  }
}
