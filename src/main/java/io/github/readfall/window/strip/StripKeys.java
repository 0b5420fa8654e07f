package io.github.readfall.window.strip;

import io.github.readfall.window.canvas.StripPane;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.function.BiConsumer;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keys of the strip, while it has the focus. */
public final class StripKeys {

  /**
   * Distance of a move by key, in strip pixels: about a dp on a usual strip. House default, no
   * source.
   */
  static final double STEP_PX = 4;

  /** Factor of that distance with Shift. */
  private static final double SHIFT_FACTOR = 10;

  /** Change of a gutter by key, in strip pixels. House default, no source. */
  public static final double GUTTER_PX = 40;

  private final StripActions actions;
  private final StripPointerTool pointerTool;
  private final StripPane pane;
  private final JComponent view;

  public StripKeys(StripActions actions, StripPointerTool pointerTool, StripPane pane) {
    this.actions = actions;
    this.pointerTool = pointerTool;
    this.pane = pane;
    this.view = pane.view();
  }

  /** Binds the keys to the strip. */
  public void bind() {
    arrows(0, actions::move, true);
    arrows(InputEvent.ALT_DOWN_MASK, actions::size, false);
    pane.bind(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "leave", this::leave);
    pane.bind(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "draw", pointerTool::drawInMiddle);
    pane.bind(KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), "drop", actions::drop);
    pane.bind(KeyStroke.getKeyStroke(KeyEvent.VK_BACK_SPACE, 0), "drop", actions::drop);
    pane.bind(KeyStroke.getKeyStroke('t'), "aim", actions::aim);
    pane.bind(KeyStroke.getKeyStroke('p'), "pin", actions::pin);
    pane.bind(KeyStroke.getKeyStroke('g'), "openGutter", () -> actions.gutter(GUTTER_PX));
    pane.bind(KeyStroke.getKeyStroke('G'), "closeGutter", () -> actions.gutter(-GUTTER_PX));
  }

  private void leave() {
    if (!pointerTool.stop()) {
      actions.selection().clear();
    }
  }

  /** Binds the arrow keys; they scroll as usual if nothing is selected. */
  private void arrows(int modifiers, BiConsumer<Double, Double> go, boolean scrolls) {
    arrow(KeyEvent.VK_LEFT, modifiers, scrolls, far -> go.accept(-far, 0.0));
    arrow(KeyEvent.VK_RIGHT, modifiers, scrolls, far -> go.accept(far, 0.0));
    arrow(KeyEvent.VK_UP, modifiers, scrolls, far -> go.accept(0.0, -far));
    arrow(KeyEvent.VK_DOWN, modifiers, scrolls, far -> go.accept(0.0, far));
  }

  /** Moves something by a distance. */
  private interface Move {
    void by(double distancePx);
  }

  private void arrow(int key, int modifiers, boolean scrolls, Move move) {
    KeyStroke near = KeyStroke.getKeyStroke(key, modifiers);
    KeyStroke far = KeyStroke.getKeyStroke(key, modifiers | InputEvent.SHIFT_DOWN_MASK);
    Object before = view.getInputMap().get(near);
    Runnable otherwise = scrolls ? () -> scroll(before) : () -> {};
    pane.bind(near, "near" + near, () -> go(() -> move.by(STEP_PX), otherwise));
    pane.bind(far, "far" + far, () -> go(() -> move.by(SHIFT_FACTOR * STEP_PX), otherwise));
  }

  private void go(Runnable ifSelected, Runnable otherwise) {
    (actions.selection().items().isEmpty() ? otherwise : ifSelected).run();
  }

  private void scroll(Object name) {
    Action action = view.getActionMap().get(name);
    if (action != null) {
      action.actionPerformed(new ActionEvent(view, ActionEvent.ACTION_PERFORMED, ""));
    }
  }
}
