package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A panel that is inside no other, with the insets inside it. Lengths are strip pixels.
 *
 * @param panel as in the script
 * @param balloons of the panel itself, in script order
 * @param insets in script order; they have no insets themselves
 */
record FramePanel(Panel panel, List<SetBalloon> balloons, List<FramePanel> insets) {

  /** Width of an inset, as a share of its panel's width. House default, no source. */
  private static final double INSET_WIDTH = 0.45;

  FramePanel {
    insets = List.copyOf(insets);
  }

  /** The width that its balloons and insets need. */
  double neededWidthPx(Spacing spacing) {
    double own = StackedHeight.neededWidthPx(balloons, spacing);
    return insets.stream()
        .mapToDouble(inset -> inset.neededWidthPx(spacing) + 2 * spacing.insetMarginPx())
        .reduce(own, Math::max);
  }

  /**
   * The height of the panel: the shot's or the one asked for, and never less than its words need.
   *
   * @param widthPx of the panel
   * @param pictureWidthPx the width from which the shot's height is computed
   */
  double heightPx(double widthPx, double pictureWidthPx, Spacing spacing) {
    double shot = ShotHeight.of(panel.hints()) * pictureWidthPx;
    double wish = panel.hints().heightPx().stream().asDoubleStream().findFirst().orElse(shot);
    double insetsPx = 0;
    for (FramePanel inset : insets) {
      insetsPx += inset.insetHeightPx(widthPx, spacing) + spacing.insetMarginPx();
    }
    double below = insets.isEmpty() ? 0 : insetsPx + spacing.insetMarginPx();
    double needed = StackedHeight.neededPx(balloons, widthPx, spacing) + below;
    return Math.max(Math.rint(wish), Math.ceil(needed));
  }

  private double insetHeightPx(double frameWidthPx, Spacing spacing) {
    double widthPx = insetWidthPx(frameWidthPx, spacing);
    return heightPx(widthPx, widthPx, spacing);
  }

  private double insetWidthPx(double frameWidthPx, Spacing spacing) {
    return Math.ceil(Math.max(INSET_WIDTH * frameWidthPx, neededWidthPx(spacing)));
  }

  /** Its own box and those of its insets, which are below its balloons on the trailing side. */
  Stream<PanelBox> boxes(Box place, ReadingSide reads, Spacing spacing) {
    List<PanelBox> boxes = new ArrayList<>();
    boxes.add(box(place));
    double bottom = Math.floor(place.bottom() - spacing.insetMarginPx());
    for (int i = insets.size() - 1; i >= 0; i--) {
      FramePanel inset = insets.get(i);
      double widthPx = inset.insetWidthPx(place.width(), spacing);
      double heightPx = inset.insetHeightPx(place.width(), spacing);
      double x =
          reads == ReadingSide.LTR
              ? Math.floor(place.right() - spacing.insetMarginPx() - widthPx)
              : Math.ceil(place.x() + spacing.insetMarginPx());
      boxes.add(1, inset.box(new Box(x, bottom - heightPx, widthPx, heightPx)));
      bottom = Math.floor(bottom - heightPx - spacing.insetMarginPx());
    }
    return boxes.stream();
  }

  private PanelBox box(Box place) {
    String heading = (panel.label() + " " + panel.heading()).strip();
    return new PanelBox(panel.number(), place, heading, Extra.NONE);
  }
}
