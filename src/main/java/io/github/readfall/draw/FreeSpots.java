package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.RegionIndex;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** Finds places for notes on a strip that hide no letters and no other note. */
final class FreeSpots {

  /** Rings searched, in steps of half the note's height. House default. */
  private static final int RINGS = 14;

  private static final int FEW_RINGS = 5;

  /** Height of the stretches by which taken places are kept, in pixels. */
  private static final double STRETCH_PX = 256;

  private static final int DIRECTIONS = 8;

  private final Box strip;
  private final RegionIndex<Box> letters;
  private final RegionIndex<Box> balloons;
  private final Map<Long, List<Box>> taken = new HashMap<>();

  FreeSpots(Galley galley) {
    this.strip = galley.extent();
    this.letters =
        RegionIndex.of(
            galley.balloons().stream().flatMap(LetterBoxes::of).toList(), Function.identity());
    this.balloons =
        RegionIndex.of(
            galley.balloons().stream().map(PlacedBalloon::box).toList(), Function.identity());
  }

  /** Keeps a place free of notes. */
  void keep(Box place) {
    for (long at = stretch(place.y()); at <= stretch(place.bottom()); at++) {
      taken.computeIfAbsent(at, fresh -> new ArrayList<>()).add(place);
    }
  }

  private static long stretch(double y) {
    return (long) Math.floor(y / STRETCH_PX);
  }

  private boolean isTaken(Box place) {
    for (long at = stretch(place.y()); at <= stretch(place.bottom()); at++) {
      if (taken.getOrDefault(at, List.of()).stream().anyMatch(place::meets)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Takes the nearest place for a note: off all balloons if there is one near, else off all
   * letters, else the wanted one.
   *
   * @param size width and height of the note
   * @param wanted place of its middle
   */
  Box take(Box size, XY wanted) {
    Box place =
        around(size, wanted, FEW_RINGS)
            .filter(spot -> isFree(spot) && balloons.near(spot).isEmpty())
            .findFirst()
            .or(() -> around(size, wanted, RINGS).filter(this::isFree).findFirst())
            .orElse(centred(size, wanted));
    keep(place);
    return place;
  }

  /** Returns true if the line round a box crosses letters. */
  boolean isCrossed(Box box) {
    return sides(box).stream().anyMatch(side -> !letters.near(side).isEmpty());
  }

  /** The upper, lower, left and right side of a box, each a box without an area. */
  List<Box> sides(Box box) {
    return List.of(
        new Box(box.x(), box.y(), box.width(), 0),
        new Box(box.x(), box.bottom(), box.width(), 0),
        new Box(box.x(), box.y(), 0, box.height()),
        new Box(box.right(), box.y(), 0, box.height()));
  }

  /**
   * The parts of a side that remain if letters are cut out of it.
   *
   * @param airPx room left on either side of the letters
   */
  List<Box> pieces(Box side, double airPx) {
    List<Box> crossed =
        letters.near(side).stream()
            .map(line -> line.grownBy(airPx))
            .sorted(Comparator.comparingDouble(line -> side.height() > 0 ? line.y() : line.x()))
            .toList();
    List<Box> pieces = new ArrayList<>();
    boolean upright = side.height() > 0;
    double from = upright ? side.y() : side.x();
    double end = upright ? side.bottom() : side.right();
    for (Box line : crossed) {
      addPiece(side, from, Math.min(end, upright ? line.y() : line.x()), pieces);
      from = Math.max(from, upright ? line.bottom() : line.right());
    }
    addPiece(side, from, end, pieces);
    return pieces;
  }

  private static void addPiece(Box side, double from, double to, List<Box> pieces) {
    if (to > from) {
      pieces.add(
          side.height() > 0
              ? new Box(side.x(), from, 0, to - from)
              : new Box(from, side.y(), to - from, 0));
    }
  }

  private boolean isFree(Box place) {
    return strip.covers(place) && letters.near(place).isEmpty() && !isTaken(place);
  }

  /** Places ever further out; at the sides before above and below. */
  private static Stream<Box> around(Box size, XY wanted, int rings) {
    double step = size.height() / 2;
    Stream<Box> out =
        Stream.iterate(1, ring -> ring <= rings, ring -> ring + 1)
            .flatMap(
                ring ->
                    Stream.iterate(0, i -> i < DIRECTIONS, i -> i + 1)
                        .map(i -> centred(size, aside(wanted, i, ring * step, size))));
    return Stream.concat(Stream.of(centred(size, wanted)), out);
  }

  private static XY aside(XY wanted, int direction, double by, Box size) {
    double dx = by + size.width() / 2;
    return switch (direction) {
      case 0 -> wanted.plus(dx, 0);
      case 1 -> wanted.plus(-dx, 0);
      case 2 -> wanted.plus(0, -by);
      case 3 -> wanted.plus(0, by);
      case 4 -> wanted.plus(dx, -by);
      case 5 -> wanted.plus(-dx, -by);
      case 6 -> wanted.plus(dx, by);
      default -> wanted.plus(-dx, by);
    };
  }

  private static Box centred(Box size, XY middle) {
    return size.movedBy(
        middle.x() - size.width() / 2 - size.x(), middle.y() - size.height() / 2 - size.y());
  }
}
