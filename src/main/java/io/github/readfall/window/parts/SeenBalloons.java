package io.github.readfall.window.parts;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Script;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.Optional;

/** The balloons of an episode, as sentences in the window name them. */
public record SeenBalloons(Script script, Galley galley) implements Phrase.Balloons {

  @Override
  public String name(String id) {
    return BalloonName.of(script, id);
  }

  @Override
  public Optional<Box> box(String id) {
    return galley.balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .map(PlacedBalloon::box)
        .findFirst();
  }

  /** Findings as the window says them. */
  public List<Finding> inWindow(List<Finding> findings) {
    return findings.stream().map(finding -> finding.inWindow(this)).toList();
  }
}
