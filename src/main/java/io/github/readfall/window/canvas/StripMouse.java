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

/** Takes the mouse on a strip to whoever works on it, and tells of clicks. */
final class StripMouse extends MouseAdapter {

  /** How far from a grip the pointer may be, in user-interface pixels. House default, no source. */
  private static final double REACH = 8;

  private final StripView view;
  private final Runnable focus;
  private final Consumer<XY> picked;
  private Optional<StripPointerListener> hand = Optional.empty();
  private boolean isDown;
  private boolean wasPulled;

  /**
   * Listens to nothing yet.
   *
   * @param focus gives the strip the keyboard
   * @param picked hears where was clicked
   */
  StripMouse(StripView view, Runnable focus, Consumer<XY> picked) {
    this.view = view;
    this.focus = focus;
    this.picked = picked;
  }

  void hand(StripPointerListener worker) {
    hand = Optional.of(worker);
    view.setAutoscrolls(true);
  }

  private PointerSpot touch(MouseEvent event) {
    int menuKey = InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK;
    boolean more = event.isShiftDown() || (event.getModifiersEx() & menuKey) != 0;
    return new PointerSpot(
        view.toStrip(event.getPoint()), REACH / view.scale(), more, event.isShiftDown());
  }

  @Override
  public void mousePressed(MouseEvent event) {
    focus.run();
    wasPulled = false;
    if (SwingUtilities.isLeftMouseButton(event) && view.isPickOn(event.getPoint())) {
      isDown = true;
      hand.ifPresent(worker -> worker.press(touch(event)));
    } else if (SwingUtilities.isRightMouseButton(event)) {
      hand.ifPresent(worker -> worker.point(touch(event)));
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    if (isDown && hand.isPresent()) {
      hand.get().pull(touch(event));
      view.scrollRectToVisible(new Rectangle(event.getX(), event.getY(), 1, 1));
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (isDown && SwingUtilities.isLeftMouseButton(event)) {
      isDown = false;
      wasPulled = hand.filter(worker -> worker.release(touch(event))).isPresent();
    }
  }

  @Override
  public void mouseClicked(MouseEvent event) {
    boolean isPick = SwingUtilities.isLeftMouseButton(event) && view.isPickOn(event.getPoint());
    if (isPick && !wasPulled && !touch(event).more()) {
      picked.accept(view.toStrip(event.getPoint()));
    }
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    hand.ifPresent(
        worker -> {
          int wanted = worker.pointer(touch(event));
          if (view.getCursor().getType() != wanted) {
            view.setCursor(Cursor.getPredefinedCursor(wanted));
          }
        });
  }
}
