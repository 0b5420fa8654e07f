package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.plan.place.Shortfall;
import java.util.List;
import java.util.OptionalInt;

/** Reports panels with less room than their balloons need. */
final class PlaceFindings {

  private static final String RULE = "place/room";

  private PlaceFindings() {}

  /**
   * A finding for each panel without room.
   *
   * @param asLaid whether balloons that have a place were left there, though some might be moved
   */
  static List<Finding> of(List<Shortfall> shortfalls, boolean asLaid) {
    return shortfalls.stream().map(shortfall -> of(shortfall, asLaid)).toList();
  }

  private static Finding of(Shortfall shortfall, boolean asLaid) {
    Where where =
        new Where(
            "",
            OptionalInt.empty(),
            OptionalInt.empty(),
            OptionalInt.of(shortfall.panel()),
            shortfall.balloons());
    String message = "Panel " + shortfall.panel() + " has not enough room for its balloons.";
    if (shortfall.byPx().isEmpty()) {
      String advice =
          asLaid
              ? "Run readfall place: it moves other balloons of the panel that are in the way."
              : "No room below it would help: move what is pinned or kept clear, or make the panel"
                  + " wider.";
      return Finding.of(RULE, Severity.WARNING, where, message, advice);
    }
    double by = Math.ceil(shortfall.byPx().getAsDouble());
    String advice =
        "Open the strip at "
            + Math.round(shortfall.atPx())
            + " px by "
            + Math.round(by)
            + " px; readfall place --open-gutters does it, and moves all below.";
    return Finding.of(RULE, Severity.WARNING, where, message, advice).measured(by, 0, "px");
  }
}
