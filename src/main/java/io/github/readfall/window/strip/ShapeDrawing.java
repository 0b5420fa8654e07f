package io.github.readfall.window.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.Selection;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Waits for a shape to be drawn on the strip, adds and selects it. */
final class ShapeDrawing {

  private static final String TOPIC = "drawing";

  private final EpisodeModel model;
  private final LayoutModel layoutModel;
  private final Selection selection;
  private final NoticeBar notices;
  private Optional<PendingShape> awaited = Optional.empty();

  ShapeDrawing(
      EpisodeModel model, LayoutModel layoutModel, Selection selection, NoticeBar notices) {
    this.model = model;
    this.layoutModel = layoutModel;
    this.selection = selection;
    this.notices = notices;
  }

  /** The shape that is to be drawn. */
  Optional<PendingShape> awaited() {
    return awaited;
  }

  /**
   * Waits for a shape.
   *
   * @param inMiddle draws it in the middle of the view
   */
  void begin(PendingShape next, Runnable inMiddle) {
    awaited = Optional.of(next);
    notices.show(
        new Notice(
            TOPIC,
            Wording.of(next instanceof PendingShape.Mouth ? "drawing.point" : "drawing.box"),
            List.of(new Notice.Action(Wording.of("drawing.middle"), inMiddle))));
  }

  /** Stops waiting. */
  void end() {
    awaited = Optional.empty();
    notices.close(TOPIC);
  }

  /** A box of the usual size around a point, in whole strip pixels. */
  Box usual(XY at, double stripWidthPx) {
    double side = Math.rint(awaited.map(PendingShape::share).orElse(0.0) * stripWidthPx);
    return new Box(Math.rint(at.x() - side / 2), Math.rint(at.y() - side / 2), side, side);
  }

  /** Adds a drawn shape to the strip. */
  void put(PendingShape shape, Box box) {
    layoutModel.edit(name(shape), "", shape.in(box));
    model.whenSettled(() -> select(shape));
  }

  private static String name(PendingShape shape) {
    if (shape instanceof PendingShape.Panel panel) {
      return Wording.of("undo.drawPanel", panel.panel());
    }
    return shape instanceof PendingShape.Mouth mouth
        ? Wording.of("undo.mouth", mouth.mouth().speaker())
        : Wording.of("undo.area");
  }

  private void select(PendingShape shape) {
    if (shape instanceof PendingShape.Panel panel) {
      selection.select(Set.of(new StripItem.Panel(panel.panel())));
    } else if (shape instanceof PendingShape.Mouth mouth) {
      selection.select(Set.of(mouth.mouth()));
    } else {
      model
          .shown()
          .map(EpisodeSnapshot::galley)
          .map(galley -> galley.keepClear().size())
          .filter(count -> count > 0)
          .ifPresent(count -> selection.select(Set.of(new StripItem.Area(count - 1))));
    }
  }
}
