package io.github.readfall.art.panels;

import io.github.readfall.script.Panel;
import io.github.readfall.script.align.SequenceAlignment;
import java.util.ArrayList;
import java.util.List;

/**
 * The panels of a script matched with the boxes found in its art.
 *
 * @param panels in script order
 * @param extra boxes without a panel, in reading order
 * @param missing panels without a box, in script order
 */
public record MatchedPanels(
    List<MatchedPanel> panels, List<FoundPanel> extra, List<Panel> missing) {

  public MatchedPanels {
    panels = List.copyOf(panels);
    extra = List.copyOf(extra);
    missing = List.copyOf(missing);
  }

  /**
   * Pairs panels and boxes in their order so that each box best suits what the script says of its
   * panel; a box that is hardly certain is the first to be left over.
   *
   * @param stripWidthPx positive
   * @param leftToRight true if the strip is read from the left
   */
  public static MatchedPanels of(
      List<ExpectedPanel> wanted,
      List<FoundPanel> found,
      double stripWidthPx,
      boolean leftToRight) {
    List<FoundPanel> boxes = PanelOrder.of(found, leftToRight);
    MatchScore score = new MatchScore(wanted, boxes, stripWidthPx);
    int[] pairs = SequenceAlignment.pairs(wanted.size(), boxes.size(), score::of);
    List<MatchedPanel> panels = new ArrayList<>();
    List<FoundPanel> extra = new ArrayList<>(boxes);
    List<Panel> missing = new ArrayList<>();
    for (int i = 0; i < pairs.length; i++) {
      Panel panel = wanted.get(i).panel();
      if (pairs[i] == SequenceAlignment.NONE) {
        missing.add(panel);
      } else {
        FoundPanel box = boxes.get(pairs[i]);
        panels.add(new MatchedPanel(panel.number(), box));
        extra.remove(box);
      }
    }
    return new MatchedPanels(panels, extra, missing);
  }
}
