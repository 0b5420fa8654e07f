package io.github.readfall.plan;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Finds hints of panel lines that could not be followed because of the words. */
final class UnmetHints {

  private UnmetHints() {}

  /** A note for each such hint, in script order. */
  static List<Finding> of(Script script, Layout layout) {
    Map<Integer, PanelBox> places = new HashMap<>();
    layout.panels().forEach(place -> places.put(place.panel(), place));
    List<Finding> findings = new ArrayList<>();
    for (Panel panel : script.panels()) {
      Optional.ofNullable(places.get(panel.number()))
          .ifPresent(
              place -> {
                height(panel, place.box()).ifPresent(findings::add);
                apart(panel, place.box(), places).ifPresent(findings::add);
              });
    }
    return findings;
  }

  private static Optional<Finding> height(Panel panel, Box box) {
    OptionalInt wish = panel.hints().heightPx();
    if (wish.isEmpty() || box.height() <= wish.getAsInt()) {
      return Optional.empty();
    }
    String message =
        "Panel "
            + panel.number()
            + " is "
            + (long) Math.ceil(box.height())
            + " px tall, not "
            + wish.getAsInt()
            + ": its words need the room.";
    return Optional.of(
        note("plan/taller-than-asked", panel, message, "Give it fewer words, or more height.")
            .at(box)
            .measured(box.height(), wish.getAsInt(), "px"));
  }

  private static Optional<Finding> apart(Panel panel, Box box, Map<Integer, PanelBox> places) {
    boolean inset = panel.hints().inset();
    boolean asked = inset || panel.hints().besidePrevious();
    boolean met =
        places.values().stream()
            .filter(place -> place.panel() < panel.number())
            .map(PanelBox::box)
            .anyMatch(other -> other.y() < box.bottom() && other.bottom() > box.y());
    if (!asked || met) {
      return Optional.empty();
    }
    String message =
        "Panel "
            + panel.number()
            + (inset
                ? " does not lie in the panel before."
                : " does not stand beside the panel before.");
    String advice =
        panel.number() == 1
            ? "It is the first: there is none before."
            : "Give both fewer words or shorter lines, and keep them in one scene.";
    return Optional.of(note("plan/apart", panel, message, advice).at(box));
  }

  private static Finding note(String id, Panel panel, String message, String advice) {
    Where where = Where.panel(panel.number(), panel.line());
    return Finding.of(id, Severity.NOTE, where, message, advice);
  }
}
