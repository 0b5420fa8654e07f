package io.github.readfall.draw;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.style.LineStyle;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import io.github.readfall.type.text.PlacedRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Draws set balloons: outline, tail, then the letters. */
public final class BalloonArtist {

  /** Width of the line round a balloon over the height of a capital. House defaults, no source. */
  private static final double LINE = 0.088;

  private static final double DASH = 0.3;
  private static final double GAP = 0.2;

  private BalloonArtist() {}

  /**
   * A balloon at a place.
   *
   * @param at the top left corner of its box
   * @param tail in the balloon's own coordinates
   */
  public static Mark.Group draw(SetBalloon balloon, XY at, Optional<Tail> tail) {
    List<Mark> marks = new ArrayList<>();
    if (balloon.look().shape() != ShapeKind.NONE) {
      marks.addAll(body(balloon, at, tail));
    }
    marks.addAll(letters(balloon, at));
    return new Mark.Group(balloon.cue().id(), text(balloon), marks);
  }

  /** The outline with its tail, filled and lined. */
  private static List<Mark> body(SetBalloon balloon, XY at, Optional<Tail> tail) {
    Path outline = outline(balloon, tail).movedBy(at.x(), at.y());
    List<Mark> marks = new ArrayList<>(lined(outline, balloon));
    tail.filter(t -> isThought(balloon))
        .ifPresent(
            t -> t.bubbles().forEach(b -> marks.addAll(lined(b.movedBy(at.x(), at.y()), balloon))));
    return marks;
  }

  /**
   * The outline with its tail as one; bubbles of a thought are not joined with it.
   *
   * @param tail in the balloon's own coordinates, as the outline is
   */
  static Path outline(SetBalloon balloon, Optional<Tail> tail) {
    return tail.filter(t -> !isThought(balloon))
        .map(t -> balloon.outline().joinedWith(t.outline()))
        .orElse(balloon.outline());
  }

  /** Returns true if its tail is a row of bubbles. */
  static boolean isThought(SetBalloon balloon) {
    return balloon.look().shape() == ShapeKind.CLOUD;
  }

  /** Width of the line round a balloon, in strip pixels. */
  static double lineWidthPx(SetBalloon balloon) {
    return LINE * balloon.outlineStyle().capitalPx();
  }

  /** An outline in a balloon's colours, whatever it is the outline of. */
  static List<Mark> lined(Path outline, SetBalloon balloon) {
    Look look = balloon.look();
    double unit = balloon.outlineStyle().capitalPx();
    List<Double> dashes =
        look.lineStyle() == LineStyle.DASHED ? List.of(DASH * unit, GAP * unit) : List.of();
    return List.of(
        new Mark.Fill(outline, look.fill()),
        new Mark.Line(outline, look.line(), lineWidthPx(balloon), dashes));
  }

  /** The letters alone. */
  static List<Mark> letters(SetBalloon balloon, XY at) {
    Colour colour = balloon.look().text();
    List<Mark> marks = new ArrayList<>();
    for (SetLine line : balloon.lines()) {
      for (PlacedRun run : line.line().runs()) {
        marks.add(new Mark.Glyphs(run, at.plus(line.xPx(), line.baselinePx()), colour));
      }
    }
    return marks;
  }

  static String text(SetBalloon balloon) {
    return balloon.lines().stream()
        .map(line -> line.line().text())
        .collect(Collectors.joining(" "));
  }
}
