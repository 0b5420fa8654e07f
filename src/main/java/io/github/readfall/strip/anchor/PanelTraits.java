package io.github.readfall.strip.anchor;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Panel;
import io.github.readfall.script.align.SequenceAlignment;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * The traits by which a panel is found again.
 *
 * @param number its place in the script, from 1
 * @param heading its PANEL line, case folded
 * @param texts its cues' texts, case folded, without speakers, so that a new name does not hide it
 */
record PanelTraits(int number, String heading, List<String> texts) {

  // Likeness from which two panels are taken to be the same. House defaults, no source: texts tell
  // more than a heading, and a number tells next to nothing, since people renumber.
  static final double SURE = 0.5;
  private static final double CUES = 0.7;
  private static final double NUMBER_LABEL = 0.05;
  private static final double NUMBER_LABEL_ALONE = 0.3;
  private static final double CUES_WERE_ADDED = 0.8;

  PanelTraits {
    texts = List.copyOf(texts);
  }

  static PanelTraits of(Panel panel) {
    List<String> texts =
        panel.cues().stream().map(cue -> CueKey.of(CueMark.of(cue)).text()).toList();
    return new PanelTraits(panel.number(), Letters.fold(PanelBox.heading(panel)), texts);
  }

  boolean isSilent() {
    return texts.isEmpty();
  }

  /** Returns true if its heading has no word. */
  boolean isBare() {
    return heading.codePoints().noneMatch(Character::isLetter);
  }

  /** The likelihood that this panel of the layout is that panel of the script: 0 to 1. */
  double likeness(PanelTraits now, ToDoubleBiFunction<String, String> alike) {
    double headed = heading.isEmpty() ? 0 : Spelling.likeness(heading, now.heading, 0);
    if (isSilent()) {
      boolean same = isBare() && headed == 1;
      double alone = same ? NUMBER_LABEL_ALONE : isBare() ? 0 : headed;
      return now.isSilent() ? alone : alone * CUES_WERE_ADDED;
    }
    double said = saidInBoth(now, alike);
    if (heading.isEmpty()) {
      return said;
    }
    double weight = isBare() ? NUMBER_LABEL : 1 - CUES;
    return (1 - weight) * said + weight * headed;
  }

  /** Returns true if it is almost certainly that panel, wherever that is. */
  boolean isSurely(PanelTraits now) {
    return isSilent()
        ? !isBare() && heading.equals(now.heading)
        : saidInBoth(now, PanelTraits::equal) >= SURE;
  }

  /** Returns true if the two panels share a text. */
  boolean saysAnyOf(PanelTraits now) {
    for (String text : texts) {
      if (now.texts.contains(text)) {
        return true;
      }
    }
    return false;
  }

  static double equal(String a, String b) {
    return a.equals(b) ? 1 : 0;
  }

  /** The share of texts that both have (Dice 1945, Ecology 26(3)). */
  double saidInBoth(PanelTraits now, ToDoubleBiFunction<String, String> alike) {
    List<String> left = new ArrayList<>(now.texts);
    double both = 0;
    for (String text : texts) {
      int best = SequenceAlignment.NONE;
      double bestAlike = 0;
      for (int i = 0; i < left.size(); i++) {
        double here = alike.applyAsDouble(text, left.get(i));
        if (here > bestAlike) {
          best = i;
          bestAlike = here;
        }
      }
      if (best != SequenceAlignment.NONE) {
        left.remove(best);
        both += bestAlike;
      }
    }
    int all = texts.size() + now.texts.size();
    return all == 0 ? 0 : 2 * both / all;
  }
}
