package io.github.readfall.draw.render;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.type.text.PlacedRun;
import java.util.List;

/**
 * A number that tells whether marks look the same: equal for equal marks, and different, but for
 * chance of one in 2^64, for others.
 */
public final class MarksHash implements Painter {

  private static final long PRIME = 0x9E3779B97F4A7C15L; // 2^64 over the golden ratio
  private static final int TURN = 29;

  private final long[] sum = {1};

  private MarksHash() {}

  /** Of marks in their order. */
  public static long of(List<Mark> marks) {
    MarksHash print = new MarksHash();
    marks.forEach(mark -> mark.paintOn(print));
    return print.sum[0];
  }

  private void add(long value) {
    sum[0] = Long.rotateLeft((sum[0] ^ value) * PRIME, TURN);
  }

  private void add(double value) {
    add(Double.doubleToLongBits(value));
  }

  private void add(XY at) {
    add(at.x());
    add(at.y());
  }

  private void add(Path path) {
    for (Path.Step step : path.steps()) {
      if (step instanceof Path.Move move) {
        add(1);
        add(move.to());
      } else if (step instanceof Path.Line line) {
        add(2);
        add(line.to());
      } else if (step instanceof Path.Curve curve) {
        add(3);
        add(curve.control1());
        add(curve.control2());
        add(curve.to());
      } else {
        add(4);
      }
    }
  }

  @Override
  public void fill(Mark.Fill fill) {
    add(fill.colour().rgb());
    add(fill.outline());
  }

  @Override
  public void line(Mark.Line line) {
    add(line.colour().rgb());
    add(line.widthPx());
    line.dashesPx().forEach(this::add);
    add(line.outline());
  }

  @Override
  public void glyphs(Mark.Glyphs glyphs) {
    PlacedRun run = glyphs.run();
    add(glyphs.colour().rgb());
    add(glyphs.at());
    add(run.type().face().file().hashCode());
    add(run.type().face().ornament().name().hashCode());
    add(run.type().pxPerUnit());
    add(run.type().slantDeg());
    for (int i = 0; i < run.glyphs().size(); i++) {
      add(run.glyphs().glyph(i));
      add(run.glyphXPx(i));
      add(run.glyphYPx(i));
    }
  }

  @Override
  public void clip(Mark.Clip clip) {
    add(clip.within());
    clip.marks().forEach(mark -> mark.paintOn(this));
    add(clip.marks().size());
  }

  @Override
  public void group(Mark.Group group) {
    group.marks().forEach(mark -> mark.paintOn(this));
  }
}
