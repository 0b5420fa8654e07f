package io.github.readfall.plan;

import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans the panels of an episode that is not drawn yet, from its script alone: as tall as the shot
 * asks for, and never less than the words need. Panels do not overlap, except that an inset is
 * wholly inside its panel. All edges are whole strip pixels.
 */
public final class PanelPlanner {

  private final SetEpisode set;
  private final Spacing spacing;
  private final double widthPx;

  private PanelPlanner(SetEpisode set) {
    this.set = set;
    this.spacing = Spacing.of(set.style());
    this.widthPx = set.style().strip().widthPx();
  }

  /** A strip with every panel of the script, and no balloon yet. */
  public static Layout plan(SetEpisode set) {
    return new PanelPlanner(set).plan();
  }

  private Layout plan() {
    List<PanelBox> boxes = new ArrayList<>();
    ReadingSide reads = set.style().strip().reads();
    double bottom = 0;
    Optional<Panel> before = Optional.empty();
    for (PanelRow row : rows(frames())) {
      FramePanel first = row.frames().get(0);
      double gutterPx =
          before
              .map(panel -> GutterPacing.px(panel, first.panel(), spacing))
              .orElse(spacing.gutterPx());
      double top = bottom + Math.rint(gutterPx);
      row.boxes(top, widthPx, reads, spacing).forEach(boxes::add);
      bottom = top + row.places(top, widthPx, reads, spacing).get(0).height();
      before = Optional.of(lastPanel(row));
    }
    return Layout.of(widthPx, Math.max(1, bottom + Math.rint(spacing.gutterPx())), boxes);
  }

  private static Panel lastPanel(PanelRow row) {
    FramePanel last = row.frames().get(row.frames().size() - 1);
    return last.insets().isEmpty()
        ? last.panel()
        : last.insets().get(last.insets().size() - 1).panel();
  }

  /** Every panel, with insets inside the panel before them. */
  private List<FramePanel> frames() {
    Map<Integer, List<SetBalloon>> balloons = new HashMap<>();
    for (SetBalloon balloon : set.balloons()) {
      balloons.computeIfAbsent(balloon.cue().panel(), n -> new ArrayList<>()).add(balloon);
    }
    List<FramePanel> frames = new ArrayList<>();
    for (Panel panel : set.script().panels()) {
      FramePanel frame =
          new FramePanel(panel, balloons.getOrDefault(panel.number(), List.of()), List.of());
      int last = frames.size() - 1;
      if (last >= 0 && panel.hints().inset() && goesInto(frames.get(last), frame)) {
        frames.set(last, with(frames.get(last), frame));
      } else {
        frames.add(frame);
      }
    }
    return frames;
  }

  private boolean goesInto(FramePanel frame, FramePanel inset) {
    double needed = inset.neededWidthPx(spacing) + 2 * spacing.insetMarginPx();
    return sameScene(frame.panel(), inset.panel())
        && needed <= widthPx - 2 * spacing.sideMarginPx();
  }

  private static FramePanel with(FramePanel frame, FramePanel inset) {
    List<FramePanel> insets = new ArrayList<>(frame.insets());
    insets.add(inset);
    return new FramePanel(frame.panel(), frame.balloons(), insets);
  }

  /** Rows of panels: one beside the previous if both have room, all others one below another. */
  private List<PanelRow> rows(List<FramePanel> frames) {
    List<PanelRow> rows = new ArrayList<>();
    for (FramePanel frame : frames) {
      int last = rows.size() - 1;
      boolean beside = last >= 0 && frame.panel().hints().besidePrevious();
      List<FramePanel> together = new ArrayList<>(beside ? rows.get(last).frames() : List.of());
      together.add(frame);
      PanelRow row = new PanelRow(together);
      if (beside
          && sameScene(together.get(0).panel(), frame.panel())
          && row.fits(widthPx, spacing)) {
        rows.set(last, row);
      } else {
        rows.add(new PanelRow(List.of(frame)));
      }
    }
    return rows;
  }

  private static boolean sameScene(Panel one, Panel other) {
    return one.scene().equals(other.scene());
  }
}
