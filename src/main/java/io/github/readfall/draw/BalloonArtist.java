package io.github.readfall.draw;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.style.LineStyle;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.type.balloon.JoinedOutline;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import io.github.readfall.type.text.PlacedRun;
import java.util.ArrayList;
import java.util.List;
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
   * @param tails in the balloon's own coordinates
   */
  public static Mark.Group draw(SetBalloon balloon, XY at, List<Tail> tails) {
    List<Mark> marks = new ArrayList<>();
    if (balloon.look().shape() != ShapeKind.NONE) {
      marks.addAll(body(balloon, at, tails));
    }
    marks.addAll(letters(balloon, at));
    return new Mark.Group(balloon.cue().id(), text(balloon), marks);
  }

  /** The outline with its tails, filled and lined. */
  private static List<Mark> body(SetBalloon balloon, XY at, List<Tail> tails) {
    Path outline = outline(balloon, tails).movedBy(at.x(), at.y());
    List<Mark> marks = new ArrayList<>(lined(outline, balloon));
    if (isThought(balloon)) {
      tails.stream()
          .flatMap(tail -> tail.bubbles().stream())
          .forEach(bubble -> marks.addAll(lined(bubble.movedBy(at.x(), at.y()), balloon)));
    }
    return marks;
  }

  /**
   * The outline with its tails as one; bubbles of a thought are not joined with it.
   *
   * @param tails in the balloon's own coordinates, as the outline is
   */
  static Path outline(SetBalloon balloon, List<Tail> tails) {
    List<Path> arms = isThought(balloon) ? List.of() : tails.stream().map(Tail::outline).toList();
    return JoinedOutline.of(List.of(balloon.outline()), arms, corner(balloon));
  }

  /** Radius of the curve where a neck or a tail leaves a balloon. */
  static double corner(SetBalloon balloon) {
    return JoinedOutline.cornerPx(balloon.look().shape(), balloon.outlineStyle());
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
