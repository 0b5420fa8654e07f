package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.text.LineBox;
import java.util.stream.Stream;

/** Finds the letters on a strip, line by line. */
final class LetterBoxes {

  private LetterBoxes() {}

  static Stream<Box> of(PlacedBalloon balloon) {
    return balloon.set().lines().stream().map(line -> box(line, balloon.at()));
  }

  private static Box box(SetLine line, XY at) {
    LineBox box = line.line().box();
    double x = at.x() + line.xPx();
    double y = at.y() + line.baselinePx();
    return Box.ofEdges(x + box.left(), y + box.top(), x + box.right(), y + box.bottom());
  }
}
