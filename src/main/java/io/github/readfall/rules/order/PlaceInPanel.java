package io.github.readfall.rules.order;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.order.PlaceInOrder;
import io.github.readfall.plan.order.ReadBalloon;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds a place for a balloon in its own panel, where it is read in script order. */
final class PlaceInPanel {

  private PlaceInPanel() {}

  /**
   * A free place; none for a pinned balloon, for parts of a joined balloon, and if none is found.
   *
   * @param balloon counted in script order
   */
  static Optional<XY> of(int balloon, Galley galley, ReadingOrder order) {
    return of(balloon, galley, order, Map.of(), Set.of());
  }

  /**
   * A free place while others move too.
   *
   * @param settled places of those that have moved already
   * @param moving those still to move, whose order does not matter yet
   */
  static Optional<XY> of(
      int balloon,
      Galley galley,
      ReadingOrder order,
      Map<Integer, Box> settled,
      Set<Integer> moving) {
    PlacedBalloon placed = galley.balloons().get(balloon);
    boolean joined = galley.balloons().stream().anyMatch(placed::isJoinedWith);
    if (placed.pinned() || joined) {
      return Optional.empty();
    }
    return galley
        .panel(placed.panel())
        .flatMap(panel -> room(panel.box(), galley, placed.set().marginPx()))
        .map(room -> search(balloon, room, galley, order, settled, moving))
        .flatMap(search -> search.of(placed.box(), following(balloon, galley, moving)));
  }

  /** The number of balloons right after it in its panel that are still to move. */
  private static int following(int balloon, Galley galley, Set<Integer> moving) {
    int next = balloon + 1;
    while (moving.contains(next)
        && galley.balloons().get(next).panel() == galley.balloons().get(balloon).panel()) {
      next++;
    }
    return next - balloon - 1;
  }

  /** The part of a panel on the strip and in its safe margin. */
  private static Optional<Box> room(Box panel, Galley galley, double airPx) {
    double safePx = galley.style().strip().safeMarginPx();
    double left = Math.max(panel.x() + airPx, safePx);
    double right = Math.min(panel.right() - airPx, galley.widthPx() - safePx);
    double top = Math.max(panel.y() + airPx, 0);
    double bottom = Math.min(panel.bottom() - airPx, galley.heightPx());
    return left < right && top < bottom
        ? Optional.of(Box.ofEdges(left, top, right, bottom))
        : Optional.empty();
  }

  private static PlaceInOrder search(
      int balloon,
      Box room,
      Galley galley,
      ReadingOrder order,
      Map<Integer, Box> settled,
      Set<Integer> moving) {
    PlacedBalloon placed = galley.balloons().get(balloon);
    List<Box> before = new ArrayList<>();
    List<Box> after = new ArrayList<>();
    List<Box> taken = new ArrayList<>();
    for (int other = 0; other < order.stops().size(); other++) {
      ReadBalloon stop = order.stops().get(other);
      Box box = settled.getOrDefault(other, stop.box());
      boolean near = stop.panel() == placed.panel() || sharesHeight(box, room);
      if (other != balloon
          && near
          && !moving.contains(other)
          && order.hangsOnPlace(balloon, other)) {
        (other < balloon ? before : after).add(box);
      }
      if (other != balloon && box.meets(room)) {
        taken.add(box);
      }
    }
    galley.keepClear().stream().map(KeepClear::box).filter(room::meets).forEach(taken::add);
    insets(placed.panel(), galley).forEach(taken::add);
    return new PlaceInOrder(order.eye(), room, before, after, taken, placed.set().marginPx());
  }

  private static boolean sharesHeight(Box a, Box b) {
    return a.y() < b.bottom() && b.y() < a.bottom();
  }

  private static List<Box> insets(int panel, Galley galley) {
    Box frame = galley.panel(panel).map(PanelBox::box).orElseThrow();
    return galley.panels().stream()
        .filter(other -> other.panel() != panel && frame.covers(other.box()))
        .map(PanelBox::box)
        .toList();
  }
}
