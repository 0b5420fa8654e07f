package io.github.readfall.plan;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.strip.Layout;
import java.util.Optional;

/** Findings about an episode as a whole before it is drawn. */
final class PlanFindings {

  private static final String TOO_TALL = "plan/too-tall";

  private PlanFindings() {}

  /** A finding if the episode is taller than the publisher accepts. */
  static Optional<Finding> tooTall(HouseStyle style, Layout layout, Optional<Split> split) {
    double tallPx = EpisodeLimit.delivered(layout.heightPx(), style, layout.widthPx());
    int limitPx = style.delivery().maxEpisodeHeightPx();
    if (tallPx <= limitPx) {
      return Optional.empty();
    }
    String message =
        "The episode comes out "
            + (long) Math.ceil(tallPx)
            + " px tall at the publisher's width, more than "
            + limitPx
            + ".";
    String advice =
        split
            .map(parts -> "Split it into " + parts.parts().size() + " parts, or shorten it.")
            .orElse("Lower its panels, or give them fewer words.");
    return Optional.of(
        Finding.of(TOO_TALL, Severity.WARNING, Where.everywhere(), message, advice)
            .measured(tallPx, limitPx, "px"));
  }
}
