package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A gutter opened or closed: the strip is cut at a height, and everything below moves.
 *
 * @param atPx height of the cut, in strip pixels
 * @param byPx how far everything below moves down, in strip pixels; negative to move up; not 0
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
   * The strip after the opening. A panel that begins at the height or below it moves, with its
   * balloons and mouths; areas to keep clear move by their own place. The person moves what is
   * already drawn, so the layout remembers the opening.
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
    boolean moves = balloon.cue().filter(cue -> moved.contains(cue.panel())).isPresent();
    return moves ? balloon.movedBy(0, byPx) : balloon;
  }

  /** The strip after several openings, all at heights of the strip before. */
  public static Layout allIn(Layout layout, List<Opening> openings) {
    Layout opened = layout;
    for (Opening opening :
        openings.stream().sorted((a, b) -> Double.compare(b.atPx, a.atPx)).toList()) {
      opened = opening.in(opened);
    }
    return opened;
  }
}
