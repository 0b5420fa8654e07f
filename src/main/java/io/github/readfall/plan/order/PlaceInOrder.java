package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Looks for a place in its panel where a balloon is read in script order and overlaps nothing. It
 * tries places beside, above and below what is there and some between, the nearest first; if it
 * finds none, there may still be one.
 *
 * @param eye that has to read it in order
 * @param room where it may be, in strip pixels
 * @param before balloons of the panel that have to be read before it
 * @param after balloons of the panel that have to be read after it
 * @param taken what it may not overlap
 * @param gapPx distance to keep from that
 */
public record PlaceInOrder(
    Eye eye, Box room, List<Box> before, List<Box> after, List<Box> taken, double gapPx) {

  /** Places tried from one end of the room to the other. House default, no source. */
  private static final int STEPS = 12;

  /** If the panel has more than this, it is left to the person. House default, no source. */
  private static final int MOST_TAKEN = 60;

  public PlaceInOrder {
    before = List.copyOf(before);
    after = List.copyOf(after);
    taken = List.copyOf(taken);
  }

  /**
   * The top left corner of the nearest such place, if one is found.
   *
   * @param following number of balloons that are to find a place between this one and the next;
   *     then it takes the first part of the room between its neighbours
   */
  public Optional<XY> of(Box balloon, int following) {
    Box fit =
        Box.ofEdges(
            room.x(),
            room.y(),
            Math.max(room.x(), room.right() - balloon.width()),
            Math.max(room.y(), room.bottom() - balloon.height()));
    if (balloon.width() > room.width()
        || balloon.height() > room.height()
        || taken.size() > MOST_TAKEN) {
      return Optional.empty();
    }
    XY wish = following == 0 ? corner(balloon) : first(balloon, following);
    return corners(balloon, fit).stream()
        .sorted(Comparator.comparingDouble(corner -> corner.distanceTo(wish)))
        .filter(isFree(balloon))
        .findFirst();
  }

  private XY first(Box balloon, int following) {
    double from = before.stream().mapToDouble(Box::bottom).max().orElse(room.y());
    double to = after.stream().mapToDouble(Box::y).min().orElse(room.bottom());
    double part = (to - from) / (following + 1);
    return new XY(balloon.x(), from + (part - balloon.height()) / 2);
  }

  private List<XY> corners(Box balloon, Box fit) {
    TreeSet<Double> lefts = spread(fit.x(), fit.right(), balloon.x());
    TreeSet<Double> tops = spread(fit.y(), fit.bottom(), balloon.y());
    for (Box box : taken) {
      lefts.add(box.right() + gapPx);
      lefts.add(box.x() - gapPx - balloon.width());
      tops.add(box.bottom() + gapPx);
      tops.add(box.y() - gapPx - balloon.height());
      tops.add(box.y());
    }
    List<XY> corners = new ArrayList<>();
    for (double top : tops.subSet(fit.y(), true, fit.bottom(), true)) {
      for (double left : lefts.subSet(fit.x(), true, fit.right(), true)) {
        corners.add(new XY(left, top));
      }
    }
    return corners;
  }

  private static TreeSet<Double> spread(double from, double to, double now) {
    TreeSet<Double> spread = new TreeSet<>();
    for (int step = 0; step <= STEPS; step++) {
      spread.add(from + (to - from) * step / STEPS);
    }
    spread.add(Math.max(from, Math.min(to, now)));
    return spread;
  }

  private Predicate<XY> isFree(Box balloon) {
    return corner -> {
      Box box = new Box(corner.x(), corner.y(), balloon.width(), balloon.height());
      Box air = box.grownBy(gapPx * (1 - 1e-9));
      return before.stream().allMatch(other -> comesFirst(other, box))
          && after.stream().allMatch(other -> comesFirst(box, other))
          && taken.stream().noneMatch(air::meets);
    };
  }

  private boolean comesFirst(Box first, Box second) {
    ReadFirst meeting = eye.balloons(first, second);
    return meeting.inOrder() && !meeting.why().readersDiffer();
  }

  private static XY corner(Box box) {
    return new XY(box.x(), box.y());
  }
}
