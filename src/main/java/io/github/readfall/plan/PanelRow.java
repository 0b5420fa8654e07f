package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Panels side by side, in reading order; mostly one. Lengths are strip pixels.
 *
 * @param frames at least one
 */
record PanelRow(List<FramePanel> frames) {

  PanelRow {
    frames = List.copyOf(frames);
  }

  /** Returns true if its panels have room beside one another. */
  boolean fits(double stripWidthPx, Spacing spacing) {
    double needed = frames.stream().mapToDouble(frame -> frame.neededWidthPx(spacing)).sum();
    return needed <= sharedPx(stripWidthPx, spacing);
  }

  /** The width left to its panels between margins and gutters. */
  private double sharedPx(double stripWidthPx, Spacing spacing) {
    double gutters = (frames.size() - 1) * Math.ceil(spacing.tightGutterPx());
    return Math.floor(stripWidthPx - 2 * Math.ceil(spacing.sideMarginPx()) - gutters);
  }

  /** The places of its panels, all as tall as the tallest. */
  List<Box> places(double topPx, double stripWidthPx, ReadingSide reads, Spacing spacing) {
    List<Double> widths = widths(stripWidthPx, spacing);
    double heightPx =
        IntStream.range(0, frames.size())
            .mapToDouble(i -> frames.get(i).heightPx(widths.get(i), stripWidthPx, spacing))
            .max()
            .orElse(0);
    double x = bleeds(stripWidthPx, spacing) ? 0 : Math.ceil(spacing.sideMarginPx());
    List<Box> places = new ArrayList<>();
    for (double width : widths) {
      double left = reads == ReadingSide.LTR ? x : stripWidthPx - x - width;
      places.add(new Box(left, topPx, width, heightPx));
      x += width + Math.ceil(spacing.tightGutterPx());
    }
    return places;
  }

  Stream<PanelBox> boxes(double topPx, double stripWidthPx, ReadingSide reads, Spacing spacing) {
    List<Box> places = places(topPx, stripWidthPx, reads, spacing);
    return IntStream.range(0, frames.size())
        .boxed()
        .flatMap(i -> frames.get(i).boxes(places.get(i), reads, spacing));
  }

  /** Returns true if its panel runs from edge to edge, because it is wide or its words need it. */
  private boolean bleeds(double stripWidthPx, Spacing spacing) {
    boolean wide = frames.get(0).panel().hints().wide();
    return frames.size() == 1 && (wide || !fits(stripWidthPx, spacing));
  }

  /**
   * Equal shares if all panels have room in them; else what each needs, and the rest shared out.
   */
  private List<Double> widths(double stripWidthPx, Spacing spacing) {
    if (bleeds(stripWidthPx, spacing)) {
      return List.of(stripWidthPx);
    }
    double shared = sharedPx(stripWidthPx, spacing);
    List<Double> needed = frames.stream().map(frame -> frame.neededWidthPx(spacing)).toList();
    double equal = Math.floor(shared / frames.size());
    if (needed.stream().allMatch(width -> width <= equal)) {
      return needed.stream().map(width -> equal).toList();
    }
    double spare = shared - needed.stream().mapToDouble(width -> Math.ceil(width)).sum();
    double more = Math.max(0, Math.floor(spare / frames.size()));
    return needed.stream().map(width -> Math.ceil(width) + more).toList();
  }
}
