package io.github.readfall.art.panels;

import io.github.readfall.base.finding.Finding;
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
        "Panel " + panel.number() + " was not found in the art" + place(panel, matched) + ".",
        "Check that a gutter separates it from the panels beside it, or write its box into"
            + " layout.json.");
  }

  /** The heights between which it should be. */
  private static String place(Panel panel, MatchedPanels matched) {
    Optional<Box> above = Optional.empty();
    Optional<Box> below = Optional.empty();
    for (MatchedPanel other : matched.panels()) {
      if (other.number() < panel.number()) {
        above = Optional.of(other.found().box());
      } else if (below.isEmpty()) {
        below = Optional.of(other.found().box());
      }
    }
    String from = above.map(box -> ", below " + px(box.y())).orElse("");
    Optional<String> to =
        below.map(box -> (from.isEmpty() ? ", above " : " and above ") + px(box.bottom()));
    return from + to.orElse("");
  }

  private static Finding extra(FoundPanel found) {
    Box box = found.box();
    String message =
        String.format(
            Locale.ROOT,
            "A box of %.0f × %.0f px at %.0f, %.0f in the art matches no panel of the script.",
            box.width(),
            box.height(),
            box.x(),
            box.y());
    return Finding.of(
            "art/panel-extra",
            Severity.WARNING,
            Where.everywhere(),
            message,
            "Add its panel to the script; if it is not a panel, there is nothing to do.")
        .at(box);
  }

  private static String px(double place) {
    return Math.round(place) + " px";
  }
}
