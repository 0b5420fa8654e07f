package io.github.readfall.draw;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Draws overflow: text outside its outline, and balloons outside the strip. */
final class OverflowArtist {

  /** Smaller parts than this, over a unit squared, are the thickness of a line. House default. */
  private static final double SEEN = 0.02;

  /** The rules whose findings are about something outside. */
  static final Set<String> RULES = Set.of("space/overflow", "space/outside");

  private final Galley galley;
  private final Pen pen;
  private final FreeSpots spots;

  OverflowArtist(Galley galley, Pen pen, FreeSpots spots) {
    this.galley = galley;
    this.pen = pen;
    this.spots = spots;
  }

  /** The marks of those findings that are about something outside. */
  List<Mark> marks(List<Finding> findings) {
    List<Mark> marks = new ArrayList<>();
    for (Finding finding : findings) {
      if (RULES.contains(finding.rule())) {
        boolean overset = finding.rule().equals("space/overflow");
        galley.balloons().stream()
            .filter(balloon -> finding.where().balloons().contains(balloon.id()))
            .forEach(
                balloon -> marks.addAll(overset ? text(finding, balloon) : off(finding, balloon)));
      }
    }
    return marks;
  }

  /** A bar under the part of each line that leaves the outline; a frame if a word was broken. */
  private List<Mark> text(Finding finding, PlacedBalloon balloon) {
    Colour colour = FindingArtist.colour(finding.severity());
    List<Mark> marks = new ArrayList<>();
    if (balloon.set().brokenWords().isEmpty()) {
      LetterBoxes.of(balloon).forEach(line -> marks.addAll(outside(line, balloon, colour)));
    } else {
      marks.add(frame(balloon.box(), colour));
    }
    XY corner = new XY(balloon.box().centre().x(), balloon.box().bottom() + pen.unitPx());
    marks.addAll(note(finding, corner, colour));
    return marks;
  }

  private List<Mark> outside(Box line, PlacedBalloon balloon, Colour colour) {
    Box left = new Box(line.x(), line.y(), line.width() / 2, line.height());
    return Stream.of(left, left.movedBy(left.width(), 0))
        .map(half -> Region.of(half).minus(balloon.body()))
        .filter(out -> !out.isEmpty() && out.areaPx2() > SEEN * pen.unitPx() * pen.unitPx())
        .map(Region::bounds)
        .map(out -> under(out, line.bottom() + pen.unitPx() / 4, colour))
        .toList();
  }

  private Mark under(Box out, double y, Colour colour) {
    return bar(new XY(out.x(), y), new XY(out.right(), y), colour);
  }

  /** Bars along the edges of the strip that a balloon crosses. */
  private List<Mark> off(Finding finding, PlacedBalloon balloon) {
    Colour colour = FindingArtist.colour(finding.severity());
    Box box = balloon.reach();
    Box strip = galley.extent();
    double inset = pen.unitPx() / 4;
    List<Mark> marks = new ArrayList<>();
    if (box.x() < strip.x()) {
      marks.add(bar(new XY(inset, box.y()), new XY(inset, box.bottom()), colour));
    }
    if (box.right() > strip.right()) {
      double x = strip.right() - inset;
      marks.add(bar(new XY(x, box.y()), new XY(x, box.bottom()), colour));
    }
    if (box.y() < strip.y()) {
      marks.add(bar(new XY(box.x(), inset), new XY(box.right(), inset), colour));
    }
    if (box.bottom() > strip.bottom()) {
      double y = strip.bottom() - inset;
      marks.add(bar(new XY(box.x(), y), new XY(box.right(), y), colour));
    }
    marks.addAll(note(finding, box.centre(), colour));
    return marks;
  }

  private List<Mark> note(Finding finding, XY wanted, Colour colour) {
    return finding
        .measurement()
        .map(Measurement::figure)
        .map(figure -> pen.onPlate(figure, spots.take(pen.plate(figure), wanted), colour))
        .orElse(List.of());
  }

  private Mark frame(Box box, Colour colour) {
    return new Mark.Line(Shapes.box(box), colour, pen.unitPx() / 8, List.of());
  }

  private Mark bar(XY from, XY to, Colour colour) {
    return new Mark.Line(Shapes.line(from, to), colour, pen.unitPx() / 2, List.of());
  }
}
