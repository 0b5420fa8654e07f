package io.github.readfall.draw;

import io.github.readfall.galley.Galley;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.RegionIndex;
import io.github.readfall.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Finds room for notes on a strip where they hide no letters and no other note. */
final class FreeSpots {

  /** How far out it looks, in steps; the step is half the note's height. House default. */
  private static final int RINGS = 14;

  private static final int DIRECTIONS = 8;

  private final Box strip;
  private final RegionIndex<Box> letters;
  private final List<Box> taken = new ArrayList<>();

  FreeSpots(Galley galley) {
    this.strip = galley.extent();
    this.letters =
        RegionIndex.of(
            galley.balloons().stream().flatMap(LetterBoxes::of).toList(), Function.identity());
  }

  /** Keeps a place free of notes. */
  void keep(Box place) {
    taken.add(place);
  }

  /**
   * Takes the place for a note that is nearest to where it is wanted, there if there is none.
   *
   * @param size width and height of the note
   * @param wanted where its middle should be
   */
  Box take(Box size, XY wanted) {
    Box place = around(size, wanted).filter(this::isFree).findFirst().orElse(centred(size, wanted));
    taken.add(place);
    return place;
  }

  private boolean isFree(Box place) {
    return strip.covers(place)
        && letters.near(place).isEmpty()
        && taken.stream().noneMatch(place::meets);
  }

  /** Places ever further out; at the sides before above and below. */
  private static Stream<Box> around(Box size, XY wanted) {
    double step = size.height() / 2;
    Stream<Box> out =
        Stream.iterate(1, ring -> ring <= RINGS, ring -> ring + 1)
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
