package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts the boxes found in the art into a layout. The content of a panel moves with it, to the same
 * place in the new box. If the art is the same and the box is only a little more exact, nothing in
 * it moves.
 */
public final class ArtLayout {

  /**
   * Movement of edges below which a box only became more exact, in strip widths. House default, no
   * source.
   */
  private static final double EXACTER = 0.02;

  private final Layout before;
  private final Map<Integer, Box> boxes = new HashMap<>();

  private ArtLayout(Layout before, List<MatchedPanel> panels) {
    this.before = before;
    panels.forEach(panel -> boxes.put(panel.number(), panel.found().box()));
  }

  /** A new layout for an episode without one. */
  public static Layout of(double widthPx, double heightPx, List<MatchedPanel> panels) {
    return in(Layout.of(widthPx, heightPx, List.of()), heightPx, panels);
  }

  /**
   * The layout with these boxes for its panels and no others.
   *
   * @param before on the script that the panels are numbered by
   * @param heightPx of the art, in strip pixels
   */
  public static Layout in(Layout before, double heightPx, List<MatchedPanel> panels) {
    return new ArtLayout(before, panels).layout(heightPx, panels);
  }

  private Layout layout(double heightPx, List<MatchedPanel> panels) {
    Optional<List<Double>> cuts =
        before.cuts().map(all -> all.stream().filter(cut -> cut < heightPx).toList());
    return new Layout(
        before.widthPx(),
        heightPx,
        panels.stream().map(this::box).toList(),
        before.keepClear().stream().map(this::moved).toList(),
        before.mouths().stream().map(this::moved).toList(),
        before.balloons().stream().map(this::moved).toList(),
        cuts,
        List.of(), // the art has the room that was asked for, or never will
        before.parked(),
        before.version(),
        before.extra());
  }

  private PanelBox box(MatchedPanel panel) {
    Box box = panel.found().box();
    return before
        .panel(panel.number())
        .map(old -> old.at(box))
        .orElse(new PanelBox(panel.number(), box));
  }

  /** A movement of a panel's content. */
  private interface Move {
    XY of(XY at);
  }

  private Optional<Move> move(int panel) {
    Optional<Box> old = before.panel(panel).map(PanelBox::box);
    Optional<Box> now = Optional.ofNullable(boxes.get(panel));
    if (old.isEmpty() || now.isEmpty() || isOnlyExacter(old.get(), now.get())) {
      return Optional.empty();
    }
    return Optional.of(at -> moved(at, old.get(), now.get()));
  }

  private boolean isOnlyExacter(Box old, Box now) {
    double most = EXACTER * before.widthPx();
    return Math.abs(old.x() - now.x()) <= most
        && Math.abs(old.y() - now.y()) <= most
        && Math.abs(old.right() - now.right()) <= most
        && Math.abs(old.bottom() - now.bottom()) <= most;
  }

  private static XY moved(XY at, Box old, Box now) {
    double across = old.width() > 0 ? now.width() / old.width() : 1;
    double down = old.height() > 0 ? now.height() / old.height() : 1;
    return new XY(now.x() + (at.x() - old.x()) * across, now.y() + (at.y() - old.y()) * down);
  }

  private static Box moved(Box box, Move move) {
    XY from = box.centre();
    XY to = move.of(from);
    return box.movedBy(to.x() - from.x(), to.y() - from.y());
  }

  private KeepClear moved(KeepClear area) {
    return panelAt(area.box().centre())
        .flatMap(this::move)
        .map(move -> new KeepClear(moved(area.box(), move), area.what(), area.extra()))
        .orElse(area);
  }

  /** The smallest panel of the old layout at a point: an inset before its frame. */
  private Optional<Integer> panelAt(XY at) {
    List<PanelBox> here = new ArrayList<>(before.panels());
    here.removeIf(panel -> !panel.box().covers(at));
    return here.stream()
        .min(
            (a, b) ->
                Double.compare(
                    a.box().width() * a.box().height(), b.box().width() * b.box().height()))
        .map(PanelBox::panel);
  }

  private Mouth moved(Mouth mouth) {
    return move(mouth.panel())
        .map(move -> new Mouth(mouth.panel(), mouth.speaker(), move.of(mouth.at()), mouth.extra()))
        .orElse(mouth);
  }

  private LaidBalloon moved(LaidBalloon balloon) {
    return balloon
        .cue()
        .flatMap(cue -> move(cue.panel()))
        .map(
            move ->
                balloon.at(
                    balloon.box().map(box -> moved(box, move)),
                    balloon.tailsTo().stream().map(move::of).toList()))
        .orElse(balloon);
  }
}
