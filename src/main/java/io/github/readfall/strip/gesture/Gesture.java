package io.github.readfall.strip.gesture;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An element gripped by the pointer, to be dragged to another place.
 *
 * @param grip the part that is gripped
 * @param chosen the selection; selected balloons move together
 * @param galley the strip when the drag begins
 * @param from where the drag begins, in strip pixels
 */
public record Gesture(Grip grip, Set<StripItem> chosen, Galley galley, XY from) {

  /** Least side of a box, in strip pixels. House default, no source. */
  private static final double LEAST_PX = 16;

  public Gesture {
    chosen = Set.copyOf(chosen);
  }

  /**
   * The edit for a drag to a place, in whole pixels; empty if it changes nothing.
   *
   * @param straight true to move along one axis only, the one with the longer way
   */
  public Optional<StripEdit> to(XY at, boolean straight) {
    double dx = Math.rint(at.x() - from.x());
    double dy = Math.rint(at.y() - from.y());
    boolean across = Math.abs(dx) >= Math.abs(dy);
    return by(straight && !across ? 0 : dx, straight && across ? 0 : dy);
  }

  /** The edit for a drag by a distance, in strip pixels. */
  public Optional<StripEdit> by(double dx, double dy) {
    if (dx == 0 && dy == 0) {
      return Optional.empty();
    }
    if (grip instanceof Grip.Body body) {
      return moved(body.item(), dx, dy);
    }
    if (grip instanceof Grip.Edge edge) {
      return new ElementPlaces(galley)
          .box(edge.item())
          .flatMap(box -> sized(edge.item(), pulled(box, edge, dx, dy)));
    }
    if (grip instanceof Grip.Gutter gutter) {
      return dy == 0 ? Optional.empty() : Optional.of(new StripEdit.Gutter(gutter.panel(), dy));
    }
    return Optional.empty();
  }

  private Optional<StripEdit> moved(StripItem item, double dx, double dy) {
    if (item instanceof StripItem.Balloon balloon) {
      return Optional.of(new StripEdit.Move(together(balloon), dx, dy));
    }
    return new ElementPlaces(galley).box(item).flatMap(box -> put(item, box.movedBy(dx, dy)));
  }

  private Set<String> together(StripItem.Balloon balloon) {
    return chosen.contains(balloon)
        ? chosen.stream()
            .flatMap(one -> one instanceof StripItem.Balloon b ? Stream.of(b.id()) : Stream.empty())
            .collect(Collectors.toSet())
        : Set.of(balloon.id());
  }

  private static Optional<StripEdit> put(StripItem item, Box box) {
    XY at = new XY(box.x(), box.y());
    if (item instanceof StripItem.Tip tip) {
      return Optional.of(new StripEdit.Aim(tip.balloon(), tip.tail(), at));
    }
    return item instanceof StripItem.Mouth mouth
        ? Optional.of(new StripEdit.PutMouth(mouth, at))
        : sized(item, box);
  }

  private static Optional<StripEdit> sized(StripItem item, Box box) {
    if (item instanceof StripItem.Balloon balloon) {
      return Optional.of(new StripEdit.Size(balloon.id(), box));
    }
    if (item instanceof StripItem.Panel panel) {
      return Optional.of(new StripEdit.PutPanel(panel.panel(), box));
    }
    return item instanceof StripItem.Area area
        ? Optional.of(new StripEdit.PutArea(area.index(), box))
        : Optional.empty();
  }

  private static Box pulled(Box box, Grip.Edge edge, double dx, double dy) {
    double left = box.x() + (edge.dx() < 0 ? Math.min(dx, box.width() - LEAST_PX) : 0);
    double right = box.right() + (edge.dx() > 0 ? Math.max(dx, LEAST_PX - box.width()) : 0);
    double top = box.y() + (edge.dy() < 0 ? Math.min(dy, box.height() - LEAST_PX) : 0);
    double bottom = box.bottom() + (edge.dy() > 0 ? Math.max(dy, LEAST_PX - box.height()) : 0);
    return Box.ofEdges(left, top, right, bottom);
  }

  /** The balloons in a box that is drawn on the background. */
  public List<StripItem> within(Box band) {
    return galley.balloons().stream()
        .filter(balloon -> band.covers(balloon.box()))
        .map(PlacedBalloon::id)
        .map(id -> (StripItem) new StripItem.Balloon(id))
        .toList();
  }
}
