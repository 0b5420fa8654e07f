package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;

/** Draws panels, and the areas in them that nothing may cover. */
record PanelArtist(Pen pen) {

  /** A panel without its picture. */
  List<Mark> ground(PanelBox panel) {
    return List.of(new Mark.Fill(Shapes.box(panel.box()), Pen.PANEL));
  }

  List<Mark> border(PanelBox panel) {
    return List.of(new Mark.Line(Shapes.box(panel.box()), Pen.BORDER, pen.unitPx() / 8, List.of()));
  }

  /** A number in the lower right corner. */
  List<Mark> number(PanelBox panel) {
    String name = Integer.toString(panel.panel());
    Box box = panel.box();
    double x = box.right() - pen.unitPx() - pen.small().widthPx(name, true);
    XY at = new XY(x, box.bottom() - 0.8 * pen.unitPx());
    return pen.small().line(name, at, true, Pen.BORDER);
  }

  /** An area to keep clear, and its name. */
  List<Mark> kept(KeepClear area) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Fill(Shapes.box(area.box()), Pen.KEPT));
    if (!area.what().isEmpty()) {
      XY at = new XY(area.box().x() + pen.unitPx() / 2, area.box().y() + 1.2 * pen.unitPx());
      marks.addAll(pen.small().line(area.what(), at, false, Pen.QUIET));
    }
    return marks;
  }

  /** The line round an area to keep clear, visible on any picture. */
  List<Mark> keptEdge(KeepClear area) {
    double widthPx = pen.unitPx() / 6;
    List<Double> dots = List.of(pen.unitPx() / 8, pen.unitPx() / 2);
    return List.of(
        new Mark.Line(Shapes.box(area.box()), Colour.WHITE, widthPx, List.of()),
        new Mark.Line(Shapes.box(area.box()), Pen.QUIET, widthPx, dots));
  }
}
