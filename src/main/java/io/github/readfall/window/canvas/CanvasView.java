package io.github.readfall.window.canvas;

import io.github.readfall.window.parts.Listen;
import java.awt.Font;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/** A component that draws all of itself; assistive tools know it as a canvas. */
abstract class CanvasView extends JComponent implements Accessible {

  private static final long serialVersionUID = 1;

  /** Size of the letters if the theme names no font, in points. */
  static final int PLAIN_EM = 13;

  /** The theme's usual font. */
  static Font font() {
    Font font = UIManager.getFont("defaultFont");
    return font == null ? new Font(Font.SANS_SERIF, Font.PLAIN, PLAIN_EM) : font;
  }

  /** Runs an action when a key is pressed while this has the focus. */
  final void bind(KeyStroke key, String name, Runnable action) {
    Listen.toKey(this, key, name, action);
  }

  /** Runs something whenever this gets or loses the focus. */
  final void onFocusChange(Runnable listener) {
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent event) {
            listener.run();
          }

          @Override
          public void focusLost(FocusEvent event) {
            listener.run();
          }
        });
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleCanvas();
    }
    return accessibleContext;
  }

  /** The component as assistive tools see it. */
  class AccessibleCanvas extends AccessibleJComponent {
    private static final long serialVersionUID = 1;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.CANVAS;
    }
  }
}
