package io.github.readfall.draw.render;

import io.github.readfall.base.geom.Box;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.type.font.Ink;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds the marks of a drawing by the heights that their ink reaches, groups taken apart, so that a
 * part of a long drawing is painted without looking at the rest.
 */
public final class Reaches {

  /** Ink is spread over the pixels that it only touches. */
  private static final double BLUR_PX = 1;

  /** Marks are kept by stretches of so many strip pixels. */
  private static final double STRETCH_PX = 512;

  private final List<Reach> all;
  private final List<List<Integer>> stretches;

  /** A mark that is no group, from its highest ink to its lowest in strip pixels. */
  private record Reach(Mark mark, double topPx, double bottomPx) {
    boolean meets(double fromPx, double toPx) {
      return bottomPx >= fromPx && topPx <= toPx;
    }
  }

  private Reaches(List<Reach> all, List<List<Integer>> stretches) {
    this.all = all;
    this.stretches = stretches;
  }

  /**
   * An index of marks.
   *
   * @param marks from back to front
   * @param heightPx of the drawing; ink beyond its ends counts as at its ends
   */
  public static Reaches of(List<Mark> marks, double heightPx) {
    Finder finder = new Finder();
    marks.forEach(mark -> mark.paintOn(finder));
    List<List<Integer>> stretches = new ArrayList<>();
    for (double top = 0; top < heightPx || stretches.isEmpty(); top += STRETCH_PX) {
      stretches.add(new ArrayList<>());
    }
    for (int i = 0; i < finder.found.size(); i++) {
      Reach reach = finder.found.get(i);
      int last = stretch(reach.bottomPx(), stretches.size());
      for (int at = stretch(reach.topPx(), stretches.size()); at <= last; at++) {
        stretches.get(at).add(i);
      }
    }
    return new Reaches(List.copyOf(finder.found), stretches);
  }

  private static int stretch(double y, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.floor(y / STRETCH_PX)));
  }

  /** Returns true if any ink is between two heights. */
  public boolean isInkBetween(double fromPx, double toPx) {
    return all.stream().anyMatch(reach -> reach.meets(fromPx, toPx));
  }

  /** The marks with ink between two heights, from back to front. */
  public List<Mark> between(double fromPx, double toPx) {
    BitSet wanted = new BitSet();
    int last = stretch(toPx, stretches.size());
    for (int at = stretch(fromPx, stretches.size()); at <= last; at++) {
      stretches.get(at).forEach(wanted::set);
    }
    return wanted.stream()
        .mapToObj(all::get)
        .filter(reach -> reach.meets(fromPx, toPx))
        .map(Reach::mark)
        .toList();
  }

  /** Lists marks with their heights. */
  private static final class Finder implements Painter {

    private final List<Reach> found = new ArrayList<>();

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

    /** Adds each glyph by its ink, which its face knows: outlines would take ten times as long. */
    @Override
    public void glyphs(Mark.Glyphs glyphs) {
      PlacedRun run = glyphs.run();
      SizedFace type = run.type();
      double top = Double.POSITIVE_INFINITY;
      double bottom = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < run.glyphs().size(); i++) {
        Ink ink = type.face().ink(run.glyphs().glyph(i), type.slantDeg());
        if (run.glyphs().isDrawn(i) && !ink.isEmpty()) {
          double baseline = glyphs.at().y() - run.glyphYPx(i);
          top = Math.min(top, baseline - ink.top() * type.pxPerUnit());
          bottom = Math.max(bottom, baseline - ink.bottom() * type.pxPerUnit());
        }
      }
      if (top <= bottom) {
        add(glyphs, top, bottom);
      }
    }

    @Override
    public void clip(Mark.Clip clip) {
      Box bounds = clip.within().bounds();
      add(clip, bounds.y(), bounds.bottom());
    }

    @Override
    public void group(Mark.Group group) {
      group.marks().forEach(mark -> mark.paintOn(this));
    }

    private void add(Mark mark, double topPx, double bottomPx) {
      found.add(new Reach(mark, topPx - BLUR_PX, bottomPx + BLUR_PX));
    }
  }
}
