package io.github.readfall.strip.galley;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Manner;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.type.balloon.InnerArea;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import io.github.readfall.type.balloon.TailRoot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts set balloons at the places of a layout. */
public final class Compositor {

  private Compositor() {}

  /**
   * The galley of an episode.
   *
   * @param set every cue set; one whose place has a size is set into that size
   * @param layout whose balloons have their cues' ids; those without a box are left out
   * @param cuts of the strip
   */
  public static Galley compose(SetEpisode set, Layout layout, Cuts cuts) {
    Map<String, LaidBalloon> laid = new HashMap<>();
    layout.balloons().forEach(balloon -> laid.put(balloon.id(), balloon));
    List<PlacedBalloon> placed = new ArrayList<>();
    for (SetBalloon balloon : set.balloons()) {
      Optional.ofNullable(laid.get(balloon.cue().id()))
          .flatMap(place -> placed(balloon, place))
          .ifPresent(placed::add);
    }
    return new Galley(
        set,
        layout.widthPx(),
        layout.heightPx(),
        layout.panels(),
        placed,
        layout.keepClear(),
        layout.mouths(),
        cuts);
  }

  /** The requests of a layout to balloons before they are set, by their cues' ids. */
  public static Map<String, BalloonRequest> wanted(Layout layout) {
    Map<String, BalloonRequest> wanted = new HashMap<>();
    for (LaidBalloon laid : layout.balloons()) {
      BalloonRequest request =
          new BalloonRequest(laid.shape(), laid.box(), laid.fontPx(), laid.capitalPx());
      wanted.put(laid.id(), request.inLines(laid.lines()));
    }
    return wanted;
  }

  /** The balloon with its middle at the middle of its place. */
  private static Optional<PlacedBalloon> placed(SetBalloon balloon, LaidBalloon place) {
    return place.box().map(box -> placed(balloon, place, at(balloon, box)));
  }

  private static XY at(SetBalloon balloon, Box box) {
    XY middle = box.centre();
    return new XY(
        middle.x() - balloon.box().width() / 2 - balloon.box().x(),
        middle.y() - balloon.box().height() / 2 - balloon.box().y());
  }

  private static PlacedBalloon placed(SetBalloon balloon, LaidBalloon place, XY at) {
    List<Tail> tails =
        place.tailsTo().stream().flatMap(tip -> tail(balloon, at, tip).stream()).toList();
    boolean bleed = place.bleed() || balloon.cue().has(Manner.BLEED);
    return PlacedBalloon.of(balloon, at, tails, place.pinned(), bleed);
  }

  /** The tail of a balloon at a place; empty if the tip is under the balloon. */
  public static Optional<Tail> tail(SetBalloon balloon, XY at, XY tip) {
    ShapeKind shape = balloon.look().shape();
    InnerArea inner = balloon.innerAt(at);
    if (shape == ShapeKind.NONE || inner.box().covers(tip)) {
      return Optional.empty();
    }
    return Optional.of(TailRoot.tail(inner, balloon.outline().movedBy(at.x(), at.y()), tip));
  }
}
