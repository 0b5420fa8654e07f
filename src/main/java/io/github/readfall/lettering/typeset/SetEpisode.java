package io.github.readfall.lettering.typeset;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.List;

/**
 * An episode with every cue set.
 *
 * @param script it was set from
 * @param style it was set by
 * @param balloons in script order
 * @param notSet cues that are lettered by hand, empty, or too long to be set, in script order
 * @param findings of setting itself, such as a face that is missing
 */
public record SetEpisode(
    Script script,
    HouseStyle style,
    List<SetBalloon> balloons,
    List<Cue> notSet,
    List<Finding> findings) {

  public SetEpisode {
    balloons = List.copyOf(balloons);
    notSet = List.copyOf(notSet);
    findings = List.copyOf(findings);
  }

  /** The phone that sizes are judged on. */
  public Phone phone() {
    return style.narrowestPhone();
  }
}
