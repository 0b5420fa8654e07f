package io.github.readfall.draw;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import java.util.List;

/** Draws the places of findings. */
record FindingArtist(Pen pen) {

  /** The box drawn round a finding's place. */
  Box round(Box place) {
    return place.grownBy(pen.unitPx() / 3);
  }

  Mark frame(Finding finding, Box round) {
    return new Mark.Line(
        Shapes.box(round),
        colour(finding.severity()),
        pen.unitPx() / 5,
        dashes(finding.severity()));
  }

  /** A part of a frame: an upright or a level line, as a box without an area. */
  Mark side(Finding finding, Box line) {
    return new Mark.Line(
        Shapes.line(new XY(line.x(), line.y()), new XY(line.right(), line.bottom())),
        colour(finding.severity()),
        pen.unitPx() / 5,
        dashes(finding.severity()));
  }

  static Colour colour(Severity severity) {
    return switch (severity) {
      case ERROR -> Pen.ERROR;
      case WARNING -> Pen.WARNING;
      case NOTE -> Pen.REMARK;
    };
  }

  /** Dashes that show the severity, for those who do not see its colour. */
  List<Double> dashes(Severity severity) {
    double unit = pen.unitPx();
    return switch (severity) {
      case ERROR -> List.of();
      case WARNING -> List.of(unit, unit / 2);
      case NOTE -> List.of(unit / 4, unit / 2);
    };
  }
}
