package io.github.readfall.render;

import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.geom.Box;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Lists the marks of a drawing, groups taken apart, each with the heights that its ink reaches. */
final class Reaches implements Painter {

  /** Ink is spread over the pixels that it only touches. */
  private static final double BLUR_PX = 1;

  private final List<Reach> found = new ArrayList<>();

  /** A mark that is no group, from its highest ink to its lowest in strip pixels. */
  record Reach(Mark mark, double topPx, double bottomPx) {
    boolean meets(double fromPx, double toPx) {
      return bottomPx >= fromPx && topPx <= toPx;
    }
  }

  private Reaches() {}

  /** The marks from back to front. */
  static List<Reach> of(Drawing drawing) {
    Reaches reaches = new Reaches();
    drawing.marks().forEach(mark -> mark.paintOn(reaches));
    return List.copyOf(reaches.found);
  }

  @Override
  public void fill(Mark.Fill fill) {
    Box bounds = fill.outline().bounds();
    add(fill, bounds.y(), bounds.bottom());
  }

  @Override
  public void line(Mark.Line line) {
    Box bounds = line.outline().bounds().grownBy(line.widthPx());
    add(line, bounds.y(), bounds.bottom());
  }

  @Override
  public void glyphs(Mark.Glyphs glyphs) {
    Rectangle2D bounds = GlyphOutlines.of(glyphs).getBounds2D();
    add(glyphs, bounds.getMinY(), bounds.getMaxY());
  }

  @Override
  public void group(Mark.Group group) {
    group.marks().forEach(mark -> mark.paintOn(this));
  }

  private void add(Mark mark, double topPx, double bottomPx) {
    found.add(new Reach(mark, topPx - BLUR_PX, bottomPx + BLUR_PX));
  }
}
