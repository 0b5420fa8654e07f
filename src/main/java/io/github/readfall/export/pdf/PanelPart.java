package io.github.readfall.export.pdf;

import io.github.readfall.script.Cue;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The part of a panel of the script that one page shows.
 *
 * @param panel of the script
 * @param continued true if it began on a page before
 * @param cues those whose balloons are on the page, and those without a balloon that follow them
 */
record PanelPart(Panel panel, boolean continued, List<Cue> cues) {

  PanelPart {
    cues = List.copyOf(cues);
  }

  /** The parts of each segment, by its number, in script order; -1 for those without a place. */
  static Map<Integer, List<PanelPart>> of(Galley galley, List<Segment> segments) {
    Map<Integer, List<PanelPart>> parts = new TreeMap<>();
    Map<String, PlacedBalloon> balloons =
        galley.balloons().stream().collect(Collectors.toMap(PlacedBalloon::id, b -> b));
    for (Panel panel : galley.set().script().panels()) {
      Map<Integer, List<Cue>> cues = cues(panel, galley, balloons, segments);
      int home = cues.keySet().iterator().next();
      cues.forEach(
          (segment, some) ->
              parts
                  .computeIfAbsent(segment, s -> new ArrayList<>())
                  .add(new PanelPart(panel, segment != home, some)));
    }
    return parts;
  }

  /** The panel's cues by segment, that in which it begins first. */
  private static Map<Integer, List<Cue>> cues(
      Panel panel, Galley galley, Map<String, PlacedBalloon> balloons, List<Segment> segments) {
    Map<Integer, List<Cue>> cues = new LinkedHashMap<>();
    int segment = home(panel, galley, balloons, segments);
    cues.put(segment, new ArrayList<>());
    for (Cue cue : panel.cues()) {
      segment =
          Optional.ofNullable(balloons.get(cue.id()))
              .map(balloon -> Segment.at(balloon.box().centre().y(), segments).index())
              .orElse(segment);
      cues.computeIfAbsent(segment, s -> new ArrayList<>()).add(cue);
    }
    return cues;
  }

  private static int home(
      Panel panel, Galley galley, Map<String, PlacedBalloon> balloons, List<Segment> segments) {
    if (segments.isEmpty()) {
      return -1;
    }
    Optional<Double> top = galley.panel(panel.number()).map(PanelBox::box).map(box -> box.y());
    return top.or(
            () ->
                panel.cues().stream()
                    .flatMap(cue -> Optional.ofNullable(balloons.get(cue.id())).stream())
                    .map(balloon -> balloon.box().centre().y())
                    .findFirst())
        .map(y -> Segment.at(y, segments).index())
        .orElse(-1);
  }

  /** Its number and heading in the script. */
  String heading() {
    String label = panel.label().strip();
    String number = Integer.toString(panel.number());
    String name = label.isEmpty() || label.equals(number) ? "" : " (" + label + ")";
    String hints = panel.heading().isBlank() ? "" : ": " + panel.heading().strip();
    return "Panel " + number + name + (continued ? ", continued" : hints);
  }

  /** The description of its picture. */
  String description() {
    return String.join(" ", panel.description()).strip();
  }
}
