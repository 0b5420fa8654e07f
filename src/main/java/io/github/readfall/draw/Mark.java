package io.github.readfall.draw;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.type.text.PlacedRun;
import java.util.List;

/** One finished mark at a fixed place. Lengths are strip pixels. */
public sealed interface Mark {

  /** Calls the painter's method for this kind of mark. */
  void paintOn(Painter painter);

  /** The same mark at another place. */
  Mark movedBy(double dx, double dy);

  /** A filled outline. */
  record Fill(Path outline, Colour colour) implements Mark {
    @Override
    public Fill movedBy(double dx, double dy) {
      return new Fill(outline.movedBy(dx, dy), colour);
    }

    @Override
    public void paintOn(Painter painter) {
      painter.fill(this);
    }
  }

  /**
   * A line along an outline.
   *
   * @param dashesPx lengths of stroke and gap in turn; none for a line without gaps
   */
  record Line(Path outline, Colour colour, double widthPx, List<Double> dashesPx) implements Mark {
    public Line {
      dashesPx = List.copyOf(dashesPx);
    }

    @Override
    public Line movedBy(double dx, double dy) {
      return new Line(outline.movedBy(dx, dy), colour, widthPx, dashesPx);
    }

    @Override
    public void paintOn(Painter painter) {
      painter.line(this);
    }
  }

  /**
   * Glyphs of one face.
   *
   * @param at left end of the line of text that the run is part of, on the baseline
   */
  record Glyphs(PlacedRun run, XY at, Colour colour) implements Mark {
    @Override
    public Glyphs movedBy(double dx, double dy) {
      return new Glyphs(run, at.plus(dx, dy), colour);
    }

    @Override
    public void paintOn(Painter painter) {
      painter.glyphs(this);
    }
  }

  /**
   * Marks that are seen within an outline only, its edge cut hard.
   *
   * @param within outside it nothing is seen
   */
  record Clip(Path within, List<Mark> marks) implements Mark {
    public Clip {
      marks = List.copyOf(marks);
    }

    @Override
    public Clip movedBy(double dx, double dy) {
      return new Clip(
          within.movedBy(dx, dy), marks.stream().map(mark -> mark.movedBy(dx, dy)).toList());
    }

    @Override
    public void paintOn(Painter painter) {
      painter.clip(this);
    }
  }

  /**
   * Marks that belong together.
   *
   * @param id short and unique in the drawing, e.g. a balloon's
   * @param text its words, for people who cannot see it; empty for decoration
   */
  record Group(String id, String text, List<Mark> marks) implements Mark {
    public Group {
      marks = List.copyOf(marks);
    }

    @Override
    public Group movedBy(double dx, double dy) {
      return new Group(id, text, marks.stream().map(mark -> mark.movedBy(dx, dy)).toList());
    }

    @Override
    public void paintOn(Painter painter) {
      painter.group(this);
    }
  }
}
