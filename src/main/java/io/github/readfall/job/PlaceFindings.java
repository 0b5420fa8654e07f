package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
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
    Phrase message =
        Phrase.of("Panel " + shortfall.panel() + " has not enough room for its balloons.");
    if (shortfall.byPx().isEmpty()) {
      Phrase advice =
          asLaid
              ? Phrase.of("")
                  .either("Run readfall place: it", "Place all balloons: that")
                  .then(" moves other balloons of the panel that are in the way.")
              : Phrase.of(
                  "No room below it would help: move what is pinned or kept clear, or make the"
                      + " panel wider.");
      return Finding.of(RULE, Severity.WARNING, where, message, advice);
    }
    double by = Math.ceil(shortfall.byPx().getAsDouble());
    Phrase advice =
        Phrase.of("Open the ")
            .either("strip at " + Math.round(shortfall.atPx()) + " px", "gutter below the panel")
            .then(" by " + Math.round(by) + " px; ")
            .either("readfall place --open-gutters", "placing balloons with gutters opened")
            .then(" does it, and moves all below.");
    return Finding.of(RULE, Severity.WARNING, where, message, advice).measured(by, 0, "px");
  }
}
