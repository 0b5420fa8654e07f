package io.github.readfall.strip.anchor;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import java.util.List;

/**
 * A layout matched to the present script.
 *
 * @param layout whose panels and balloons have their present numbers and ids, balloons in script
 *     order
 * @param findings what is gone from the script, and what has no place yet
 */
public record Anchored(Layout layout, List<Finding> findings) {

  public Anchored {
    findings = List.copyOf(findings);
  }

  /** Balloons whose cues are gone, kept in case they come back. */
  public List<LaidBalloon> parked() {
    return layout.parked().balloons();
  }
}
