package io.github.readfall.draw;

import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;

/** Draws the frames of a strip's panels, in place of pictures. */
public final class StripFrames {

  private StripFrames() {}

  /** A line round each panel that has a place. */
  public static List<Mark> of(Galley galley) {
    double linePx = galley.widthPx() / Pen.UNITS / Pen.LINES;
    List<Mark> marks = new ArrayList<>();
    galley
        .panels()
        .forEach(
            panel ->
                marks.add(new Mark.Line(Shapes.box(panel.box()), Pen.BORDER, linePx, List.of())));
    return marks;
  }
}
