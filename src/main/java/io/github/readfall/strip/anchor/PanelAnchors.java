package io.github.readfall.strip.anchor;

import io.github.readfall.script.Letters;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The panel boxes of a layout, each with its panel in the present script.
 *
 * @param panels by their present numbers, in order, with those that came back
 * @param numbers the present number of each panel in the layout, by the one it had
 * @param gone boxes whose panels have just gone from the script
 * @param parked boxes whose panels went earlier and have not come back
 * @param missing panels of the script without a box
 */
record PanelAnchors(
    List<PanelBox> panels,
    Map<Integer, Integer> numbers,
    List<PanelBox> gone,
    List<PanelBox> parked,
    List<Panel> missing) {

  static PanelAnchors of(Layout layout, Script script) {
    Map<Integer, Integer> numbers = PanelMatcher.numbers(layout, script);
    List<PanelBox> panels = new ArrayList<>();
    List<PanelBox> gone = new ArrayList<>();
    for (PanelBox box : layout.panels()) {
      Optional<Integer> now = Optional.ofNullable(numbers.get(box.panel()));
      now.ifPresentOrElse(number -> panels.add(box.of(number)), () -> gone.add(box));
    }
    Set<Integer> placed = new HashSet<>();
    panels.forEach(panel -> placed.add(panel.panel()));
    List<Panel> missing = new ArrayList<>(script.panels());
    missing.removeIf(panel -> placed.contains(panel.number()));
    List<PanelBox> parked = new ArrayList<>(layout.parked().panels());
    panels.addAll(comeBack(layout.parked().balloons(), parked, missing));
    panels.sort(Comparator.comparingInt(PanelBox::panel));
    return new PanelAnchors(panels, new HashMap<>(numbers), gone, parked, missing);
  }

  /** Gives missing panels their parked boxes, the box parked last first. */
  private static List<PanelBox> comeBack(
      List<LaidBalloon> balloons, List<PanelBox> parked, List<Panel> missing) {
    List<PanelBox> back = new ArrayList<>();
    for (int i = parked.size() - 1; i >= 0 && !missing.isEmpty(); i--) {
      PanelBox box = parked.get(i);
      PanelTraits was = traits(box, balloons);
      Optional<Panel> panel =
          missing.stream().filter(now -> was.isSurely(PanelTraits.of(now))).findFirst();
      if (panel.isPresent()) {
        parked.remove(i);
        missing.remove(panel.get());
        back.add(box.of(panel.get().number()));
      }
    }
    return back;
  }

  /** The traits of a parked panel, from its parked balloons: their numbers may be old. */
  private static PanelTraits traits(PanelBox box, List<LaidBalloon> balloons) {
    List<String> texts =
        balloons.stream()
            .filter(balloon -> balloon.box().filter(b -> box.box().covers(b.centre())).isPresent())
            .flatMap(balloon -> balloon.cue().stream())
            .map(mark -> CueKey.of(mark).text())
            .toList();
    return new PanelTraits(box.panel(), Letters.fold(box.heading()), texts);
  }

  /** The box of a panel by its present number. */
  Optional<PanelBox> box(int number) {
    return panels.stream().filter(panel -> panel.panel() == number).findFirst();
  }

  /** The present number of a mark's panel; 0 if it is gone. */
  int numberNow(CueMark mark) {
    return numbers.getOrDefault(mark.panel(), 0);
  }
}
