package io.github.readfall.art.panels;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reports panels without a box in the art, and boxes without a panel. */
public final class MatchFindings {

  private static final Phrase NOWHERE = Phrase.of("");

  private MatchFindings() {}

  /** A finding for each, from the top of the script, then from the top of the strip. */
  public static List<Finding> of(MatchedPanels matched) {
    List<Finding> findings = new ArrayList<>();
    matched.missing().forEach(panel -> findings.add(missing(panel, matched)));
    matched.extra().forEach(box -> findings.add(extra(box)));
    return findings;
  }

  private static Finding missing(Panel panel, MatchedPanels matched) {
    Where where = Where.panel(panel.number(), panel.line());
    return Finding.of(
        "art/panel-missing",
        Severity.WARNING,
        where,
        Phrase.of("Panel " + panel.number() + " was not found in the art")
            .then(place(panel, matched))
            .then("."),
        Phrase.of("Check that a gutter separates it from the panels beside it, or ")
            .either("write its box into layout.json.", "draw its box on the strip."));
  }

  /** The panels, or heights, between which it should be. */
  private static Phrase place(Panel panel, MatchedPanels matched) {
    Optional<MatchedPanel> above = Optional.empty();
    Optional<MatchedPanel> below = Optional.empty();
    for (MatchedPanel other : matched.panels()) {
      if (other.number() < panel.number()) {
        above = Optional.of(other);
      } else if (below.isEmpty()) {
        below = Optional.of(other);
      }
    }
    Phrase from = above.map(one -> beside(", below ", one, one.found().box().y())).orElse(NOWHERE);
    String next = from.equals(NOWHERE) ? ", above " : " and above ";
    return from.then(
        below.map(one -> beside(next, one, one.found().box().bottom())).orElse(NOWHERE));
  }

  private static Phrase beside(String side, MatchedPanel panel, double px) {
    return Phrase.of(side).either(Math.round(px) + " px", "panel " + panel.number());
  }

  private static Finding extra(FoundPanel found) {
    Box box = found.box();
    String size = String.format(Locale.ROOT, "%.0f × %.0f px", box.width(), box.height());
    Phrase message =
        Phrase.of("A box of " + size)
            .either(String.format(Locale.ROOT, " at %.0f, %.0f", box.x(), box.y()), "")
            .then(" in the art matches no panel of the script.");
    return Finding.of(
            "art/panel-extra",
            Severity.WARNING,
            Where.everywhere(),
            message,
            Phrase.of("Add its panel to the script; if it is not a panel, there is nothing to do."))
        .at(box);
  }
}
