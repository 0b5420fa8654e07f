package io.github.readfall.window.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.gesture.ElementPlaces;
import io.github.readfall.strip.gesture.Gesture;
import io.github.readfall.strip.gesture.Grip;
import io.github.readfall.strip.gesture.Grips;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.canvas.StripPointerEvent;
import io.github.readfall.window.canvas.StripPointerListener;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.Selection;
import io.github.readfall.window.parts.NoticeBar;
import java.awt.Cursor;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Edits the strip with the mouse: selects, drags and draws. While something is dragged the strip
 * shows the result; letting go makes one step that can be undone.
 */
public final class StripPointerTool implements StripPointerListener {

  /**
   * Share of a grip's reach within which a drag is only an unsteady click. House default, no
   * source.
   */
  private static final double JITTER = 0.4;

  private final EpisodeModel model;
  private final LayoutModel layoutModel;
  private final Selection selection;
  private final StripPane pane;
  private final ShapeDrawing drawing;
  private Optional<Drag> drag = Optional.empty();
  private Optional<Box> band = Optional.empty();
  private Optional<Box> future = Optional.empty();
  private Runnable listener = () -> {};

  /**
   * A drag under way.
   *
   * @param base the layout at its beginning; empty until it has moved
   * @param edit the change that it would make now
   */
  private record Drag(Gesture gesture, Optional<Layout> base, Optional<StripEdit> edit) {}

  public StripPointerTool(
      EpisodeModel model,
      LayoutModel layoutModel,
      Selection selection,
      StripPane pane,
      NoticeBar notices) {
    this.model = model;
    this.layoutModel = layoutModel;
    this.selection = selection;
    this.pane = pane;
    this.drawing = new ShapeDrawing(model, layoutModel, selection, notices);
    pane.setPointerListener(this);
  }

  /** Sets the listener for changes of {@link #outline}. */
  void onOutlineChange(Runnable listener) {
    this.listener = listener;
  }

  /** The box that is being drawn, or the future box of what is dragged until the strip shows it. */
  Optional<Box> outline() {
    return band.or(() -> future);
  }

  private Optional<Galley> galley() {
    return model.shown().map(EpisodeSnapshot::galley);
  }

  /** Waits for a shape to be drawn. */
  public void draw(PendingShape next) {
    drawing.begin(next, this::drawInMiddle);
    selection.clear();
    pane.view().requestFocusInWindow();
  }

  /** Draws the awaited shape in the middle of the view. */
  void drawInMiddle() {
    Optional<PendingShape> shape = drawing.awaited();
    Box box = drawing.usual(pane.middle(), pane.scene().widthPx());
    stop();
    shape.ifPresent(one -> drawing.put(one, box));
  }

  /**
   * Cancels dragging and drawing.
   *
   * @return whether there was anything to cancel
   */
  boolean stop() {
    boolean was = drawing.awaited().isPresent() || drag.isPresent();
    drawing.end();
    drag = Optional.empty();
    future = Optional.empty();
    band(Optional.empty());
    layoutModel.endPreview();
    return was;
  }

  private void band(Optional<Box> other) {
    band = other;
    listener.run();
  }

  @Override
  public void press(StripPointerEvent event) {
    galley().ifPresent(galley -> press(event, galley));
  }

  private void press(StripPointerEvent event, Galley galley) {
    Grip grip =
        drawing.awaited().isPresent()
            ? new Grip.Background()
            : new Grips(galley, selection.items(), event.reachPx()).at(event.at());
    if (grip instanceof Grip.Body body) {
      select(body.item(), event.addsToSelection());
    }
    Gesture gesture = new Gesture(grip, selection.items(), galley, event.at());
    drag = Optional.of(new Drag(gesture, Optional.empty(), Optional.empty()));
  }

  private void select(StripItem item, boolean addsToSelection) {
    boolean isPart = item instanceof StripItem.Tip;
    if (addsToSelection && !isPart) {
      selection.toggle(item);
    } else if (!selection.items().contains(item)) {
      selection.select(Set.of(item));
    }
  }

  @Override
  public void pressForMenu(StripPointerEvent event) {
    galley()
        .map(galley -> new Grips(galley, selection.items(), event.reachPx()))
        .flatMap(grips -> grips.clicked(event.at()))
        .filter(item -> !selection.items().contains(item))
        .ifPresent(item -> selection.select(Set.of(item)));
  }

  @Override
  public void drag(StripPointerEvent event) {
    drag.ifPresent(now -> drag(now, event));
  }

  private void drag(Drag now, StripPointerEvent event) {
    boolean begun = now.base().isPresent() || band.isPresent();
    double jitterPx = JITTER * event.reachPx();
    if (!begun && now.gesture().from().distanceTo(event.at()) < jitterPx) {
      return;
    }
    if (now.gesture().grip() instanceof Grip.Background) {
      band(Optional.of(whole(between(now.gesture().from(), event.at()))));
    } else if (now.base().isPresent()) {
      drag(now, now.base().get(), event);
    } else if (model.isSettled()) {
      layoutModel.editableLayout().ifPresentOrElse(base -> drag(now, base, event), this::stop);
    }
  }

  private void drag(Drag now, Layout base, StripPointerEvent event) {
    Optional<StripEdit> edit = now.gesture().to(event.at(), event.isStraight());
    drag = Optional.of(new Drag(now.gesture(), Optional.of(base), edit));
    edit.ifPresentOrElse(one -> layoutModel.preview(one, base), layoutModel::endPreview);
    future = edit.flatMap(one -> preview(now.gesture(), one));
    listener.run();
  }

  private static Optional<Box> preview(Gesture gesture, StripEdit edit) {
    if (edit instanceof StripEdit.Move move && gesture.grip() instanceof Grip.Body body) {
      return new ElementPlaces(gesture.galley())
          .box(body.item())
          .map(box -> box.movedBy(move.dx(), move.dy()));
    }
    if (edit instanceof StripEdit.Size size) {
      return Optional.of(size.box());
    }
    if (edit instanceof StripEdit.PutPanel panel) {
      return Optional.of(panel.box());
    }
    return edit instanceof StripEdit.PutArea area ? Optional.of(area.box()) : Optional.empty();
  }

  private static Box between(XY a, XY b) {
    return Box.ofEdges(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.max(a.x(), b.x()),
        Math.max(a.y(), b.y()));
  }

  private static Box whole(Box box) {
    return new Box(
        Math.rint(box.x()), Math.rint(box.y()), Math.rint(box.width()), Math.rint(box.height()));
  }

  @Override
  public boolean release(StripPointerEvent event) {
    Optional<Drag> last = drag;
    drag = Optional.empty();
    future = Optional.empty();
    return last.filter(now -> release(now, event)).isPresent();
  }

  private boolean release(Drag now, StripPointerEvent event) {
    if (drawing.awaited().isPresent()) {
      finishDrawing(event);
      return true;
    }
    if (band.isPresent()) {
      selectWithin(now.gesture(), band.get(), event.addsToSelection());
      band(Optional.empty());
      return true;
    }
    if (now.base().isPresent()) {
      drop(now, now.base().get());
      return true;
    }
    if (now.gesture().grip() instanceof Grip.Background && !event.addsToSelection()) {
      Optional<StripItem> under =
          new Grips(now.gesture().galley(), Set.of(), event.reachPx()).clicked(event.at());
      selection.select(under.map(Set::of).orElse(Set.of()));
    }
    return false;
  }

  /** Adds the drawn shape; in its usual size if it was only a click. */
  private void finishDrawing(StripPointerEvent event) {
    Optional<PendingShape> shape = drawing.awaited();
    Box box =
        band.filter(one -> one.width() >= 1 && one.height() >= 1)
            .orElseGet(() -> drawing.usual(event.at(), pane.scene().widthPx()));
    stop();
    shape.ifPresent(one -> drawing.put(one, box));
  }

  private void selectWithin(Gesture gesture, Box box, boolean addsToSelection) {
    Set<StripItem> within = new LinkedHashSet<>(addsToSelection ? selection.items() : Set.of());
    within.addAll(gesture.within(box));
    selection.select(within);
  }

  private void drop(Drag now, Layout base) {
    listener.run();
    Optional<StripEdit> edit = now.edit();
    Optional<Script> script = model.shown().map(shown -> shown.episode().script());
    if (edit.isPresent() && script.isPresent()) {
      String name = EditNames.of(now.gesture(), edit.get(), script.get());
      layoutModel.edit(name, "", edit.get(), base);
    } else {
      layoutModel.endPreview();
    }
  }

  @Override
  public int cursor(StripPointerEvent event) {
    if (drawing.awaited().isPresent()) {
      return Cursor.CROSSHAIR_CURSOR;
    }
    return galley()
        .map(galley -> new Grips(galley, selection.items(), event.reachPx()).at(event.at()))
        .map(StripPointerTool::cursor)
        .orElse(Cursor.DEFAULT_CURSOR);
  }

  private static int cursor(Grip grip) {
    if (grip instanceof Grip.Edge edge) {
      return cursor(edge);
    }
    if (grip instanceof Grip.Gutter) {
      return Cursor.N_RESIZE_CURSOR;
    }
    return grip instanceof Grip.Body ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR;
  }

  private static int cursor(Grip.Edge edge) {
    boolean left = edge.dx() < 0;
    return switch (edge.dy()) {
      case -1 ->
          edge.dx() == 0
              ? Cursor.N_RESIZE_CURSOR
              : left ? Cursor.NW_RESIZE_CURSOR : Cursor.NE_RESIZE_CURSOR;
      case 1 ->
          edge.dx() == 0
              ? Cursor.S_RESIZE_CURSOR
              : left ? Cursor.SW_RESIZE_CURSOR : Cursor.SE_RESIZE_CURSOR;
      default -> left ? Cursor.W_RESIZE_CURSOR : Cursor.E_RESIZE_CURSOR;
    };
  }
}
