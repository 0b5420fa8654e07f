package io.github.readfall.strip.anchor;

import io.github.readfall.script.Letters;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The mouths of a layout, each in its panel of the present script.
 *
 * @param mouths in panels that are there
 * @param parked in panels that are gone
 */
record MouthAnchors(List<Mouth> mouths, List<Mouth> parked) {

  static MouthAnchors of(Layout layout, Script script, PanelAnchors panels, CueAnchors cues) {
    Map<String, String> names = newNames(script, cues);
    List<Mouth> mouths = new ArrayList<>();
    List<Mouth> parked = new ArrayList<>();
    for (Mouth mouth : layout.mouths()) {
      Optional.ofNullable(panels.numbers().get(mouth.panel()))
          .ifPresentOrElse(
              panel -> mouths.add(moved(mouth, panel, names)), () -> parked.add(mouth));
    }
    for (Mouth mouth : layout.parked().mouths()) {
      panelRound(mouth, panels)
          .ifPresentOrElse(
              panel -> mouths.add(moved(mouth, panel, names)), () -> parked.add(mouth));
    }
    return new MouthAnchors(mouths, parked);
  }

  /** The panel whose box holds a parked mouth, if it has come back. */
  private static Optional<Integer> panelRound(Mouth mouth, PanelAnchors panels) {
    return panels.panels().stream()
        .filter(panel -> panel.box().covers(mouth.at()))
        .map(PanelBox::panel)
        .findFirst();
  }

  private static Mouth moved(Mouth mouth, int panel, Map<String, String> names) {
    String speaker = names.getOrDefault(Letters.fold(mouth.speaker()), mouth.speaker());
    return new Mouth(panel, speaker, mouth.at(), mouth.extra());
  }

  /** New names of speakers, each of whom lost all balloons to one new speaker. */
  private static Map<String, String> newNames(Script script, CueAnchors cues) {
    Set<String> present =
        script.cues().stream()
            .flatMap(cue -> cue.speakers().stream())
            .map(Letters::fold)
            .collect(Collectors.toSet());
    Map<String, String> names = new HashMap<>();
    for (CueAnchors.Pair pair : cues.pairs()) {
      pair.balloon()
          .cue()
          .map(mark -> Letters.fold(mark.speaker()))
          .filter(old -> !present.contains(old))
          .ifPresent(old -> names.merge(old, pair.cue().speaker(), (a, b) -> a.equals(b) ? a : ""));
    }
    names.values().removeIf(String::isEmpty);
    return names;
  }
}
