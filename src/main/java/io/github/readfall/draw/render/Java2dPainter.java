package io.github.readfall.draw.render;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;

/** Paints marks on a Java2D surface. */
public final class Java2dPainter implements Painter {

  private final Graphics2D g;

  /** Paints on a surface that is already scaled and moved to strip pixels. */
  public Java2dPainter(Graphics2D g) {
    this.g = g;
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  @Override
  public void fill(Mark.Fill fill) {
    g.setColor(color(fill.colour()));
    g.fill(fill.outline().toShape());
  }

  @Override
  public void line(Mark.Line line) {
    g.setColor(color(line.colour()));
    g.setStroke(stroke(line));
    g.draw(line.outline().toShape());
  }

  private static BasicStroke stroke(Mark.Line line) {
    float width = (float) line.widthPx();
    if (line.dashesPx().isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] dashes = new float[line.dashesPx().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = line.dashesPx().get(i).floatValue();
    }
    return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, dashes, 0);
  }

  @Override
  public void glyphs(Mark.Glyphs glyphs) {
    g.setColor(color(glyphs.colour()));
    g.fill(GlyphOutlines.of(glyphs));
  }

  @Override
  public void clip(Mark.Clip clip) {
    Shape before = g.getClip();
    g.clip(clip.within().toShape());
    clip.marks().forEach(mark -> mark.paintOn(this));
    g.setClip(before);
  }

  @Override
  public void group(Mark.Group group) {
    group.marks().forEach(mark -> mark.paintOn(this));
  }

  private static Color color(Colour colour) {
    return new Color(colour.rgb());
  }
}
