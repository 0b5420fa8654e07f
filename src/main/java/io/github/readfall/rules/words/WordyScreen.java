package io.github.readfall.rules.words;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.Screens;
import io.github.readfall.plan.WordCount;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** More new words on one phone screen than a printed page holds. Common practice. */
final class WordyScreen implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.SCREEN;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    double limit = WordLimits.onScreen(galley.style());
    double screenPx = Screens.screenPx(galley.style());
    Map<Integer, List<PlacedBalloon>> screens = new TreeMap<>();
    for (PlacedBalloon balloon : galley.balloons()) {
      int screen = Screens.index(balloon.box().centre().y(), screenPx);
      screens.computeIfAbsent(screen, n -> new ArrayList<>()).add(balloon);
    }
    return screens.entrySet().stream()
        .filter(screen -> words(screen.getValue()) > limit)
        .map(screen -> finding(screen.getKey() + 1, screen.getValue(), limit));
  }

  private static int words(List<PlacedBalloon> balloons) {
    return balloons.stream().mapToInt(balloon -> WordCount.of(balloon.cue().text())).sum();
  }

  private Finding finding(int screen, List<PlacedBalloon> balloons, double limit) {
    int words = words(balloons);
    String message =
        "Screen "
            + screen
            + " of the phone brings "
            + words
            + " new words, more than "
            + NumberText.down(limit, 1)
            + ".";
    String advice = "Shorten its balloons, or move some down into taller panels.";
    Box place = balloons.stream().map(PlacedBalloon::box).reduce(Box::union).orElseThrow();
    return BalloonFinding.of(
            balloons.stream().map(PlacedBalloon::set).toList(), RuleSpec.SCREEN, message, advice)
        .at(place)
        .measured(words, limit, RuleSpec.SCREEN.unit());
  }
}
