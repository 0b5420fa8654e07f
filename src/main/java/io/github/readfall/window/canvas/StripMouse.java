package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.XY;
import java.awt.Cursor;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Passes mouse events on the strip to a pointer listener, and reports clicks. */
final class StripMouse extends MouseAdapter {

  /**
   * Greatest distance of the pointer from a grip, in user-interface pixels. House default, no
   * source.
   */
  private static final double REACH = 8;

  private final StripView view;
  private final Runnable focus;
  private final Consumer<XY> clicked;
  private Optional<StripPointerListener> listener = Optional.empty();
  private boolean isDown;
  private boolean wasDragged;

  /**
   * A mouse adapter without a pointer listener.
   *
   * @param focus gives the strip the focus
   * @param clicked is given the position of a click, in strip pixels
   */
  StripMouse(StripView view, Runnable focus, Consumer<XY> clicked) {
    this.view = view;
    this.focus = focus;
    this.clicked = clicked;
  }

  void setListener(StripPointerListener other) {
    listener = Optional.of(other);
    view.setAutoscrolls(true);
  }

  private StripPointerEvent pointerEvent(MouseEvent event) {
    int menuKey = InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK;
    boolean addsToSelection = event.isShiftDown() || (event.getModifiersEx() & menuKey) != 0;
    return new StripPointerEvent(
        view.toStrip(event.getPoint()), REACH / view.scale(), addsToSelection, event.isShiftDown());
  }

  @Override
  public void mousePressed(MouseEvent event) {
    focus.run();
    wasDragged = false;
    if (SwingUtilities.isLeftMouseButton(event) && view.isOnStrip(event.getPoint())) {
      isDown = true;
      listener.ifPresent(pointer -> pointer.press(pointerEvent(event)));
    } else if (SwingUtilities.isRightMouseButton(event)) {
      listener.ifPresent(pointer -> pointer.pressForMenu(pointerEvent(event)));
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    if (isDown && listener.isPresent()) {
      listener.get().drag(pointerEvent(event));
      view.scrollRectToVisible(new Rectangle(event.getX(), event.getY(), 1, 1));
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (isDown && SwingUtilities.isLeftMouseButton(event)) {
      isDown = false;
      wasDragged = listener.filter(pointer -> pointer.release(pointerEvent(event))).isPresent();
    }
  }

  @Override
  public void mouseClicked(MouseEvent event) {
    boolean isOnStrip = SwingUtilities.isLeftMouseButton(event) && view.isOnStrip(event.getPoint());
    if (isOnStrip && !wasDragged && !pointerEvent(event).addsToSelection()) {
      clicked.accept(view.toStrip(event.getPoint()));
    }
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    listener.ifPresent(
        pointer -> {
          int wanted = pointer.cursor(pointerEvent(event));
          if (view.getCursor().getType() != wanted) {
            view.setCursor(Cursor.getPredefinedCursor(wanted));
          }
        });
  }
}
