package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Room made in a strip, or taken from it: it is cut through at a height, and all below moves.
 *
 * @param atPx height at which it is cut, in strip pixels
 * @param byPx how far down all below moves, in strip pixels; negative where it moves up; not 0
 * @param extra keys that this version does not know
 */
public record Opening(double atPx, double byPx, Extra extra) {

  public Opening(double atPx, double byPx) {
    this(atPx, byPx, Extra.NONE);
  }

  public Opening {
    if (byPx == 0 || Double.isNaN(byPx)) {
      throw new IllegalArgumentException("opens nothing: " + byPx);
    }
  }

  /**
   * The strip with this room in it. A panel that begins at the height or below it moves, and with
   * it its balloons and mouths; areas to keep clear move by where they lie. What is drawn already
   * must be moved by whoever draws it, so the layout remembers the opening.
   */
  public Layout in(Layout layout) {
    Set<Integer> moved = new HashSet<>();
    layout.panels().stream()
        .filter(panel -> panel.box().y() >= atPx)
        .forEach(panel -> moved.add(panel.panel()));
    return new Layout(
        layout.widthPx(),
        layout.heightPx() + byPx,
        layout.panels().stream().map(panel -> panel.at(lowered(panel.box()))).toList(),
        layout.keepClear().stream()
            .map(area -> new KeepClear(lowered(area.box()), area.what(), area.extra()))
            .toList(),
        layout.mouths().stream().map(mouth -> lowered(mouth, moved)).toList(),
        layout.balloons().stream().map(balloon -> lowered(balloon, moved)).toList(),
        layout.cuts().map(cuts -> cuts.stream().map(this::lowered).toList()),
        Stream.concat(layout.openings().stream(), Stream.of(this)).toList(),
        layout.parked(),
        layout.version(),
        layout.extra());
  }

  private double lowered(double y) {
    return y >= atPx ? y + byPx : y;
  }

  private Box lowered(Box box) {
    return box.y() >= atPx ? box.movedBy(0, byPx) : box;
  }

  private Mouth lowered(Mouth mouth, Set<Integer> moved) {
    return moved.contains(mouth.panel())
        ? new Mouth(mouth.panel(), mouth.speaker(), mouth.at().plus(0, byPx), mouth.extra())
        : mouth;
  }

  private LaidBalloon lowered(LaidBalloon balloon, Set<Integer> moved) {
    if (balloon.cue().filter(cue -> moved.contains(cue.panel())).isEmpty()) {
      return balloon;
    }
    Optional<XY> tip = balloon.tailTo().map(at -> at.plus(0, byPx));
    return balloon.at(balloon.box().map(box -> box.movedBy(0, byPx)), tip);
  }

  /** The strip with room in several places, all given as heights of the strip before. */
  public static Layout allIn(Layout layout, List<Opening> openings) {
    Layout opened = layout;
    for (Opening opening :
        openings.stream().sorted((a, b) -> Double.compare(b.atPx, a.atPx)).toList()) {
      opened = opening.in(opened);
    }
    return opened;
  }
}
