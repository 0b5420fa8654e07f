package io.github.readfall.window.canvas;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.KeyStroke;

/**
 * A pane for a phone that may be too large for it: it is then scrolled by bars, or by keys that do
 * not scroll the strip on the phone.
 */
public final class PhonePane extends JScrollPane {

  private static final long serialVersionUID = 1;

  /** A pane without scroll bars as long as the phone fits. */
  public PhonePane(PhoneView view) {
    super(view);
    setBorder(BorderFactory.createEmptyBorder()); // a null border would be replaced by the theme's
    getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    InputMap keys = getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_LEFT, 0), "unitScrollLeft");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_RIGHT, 0), "unitScrollRight");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_UP, InputEvent.CTRL_DOWN_MASK), "unitScrollUp");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, InputEvent.CTRL_DOWN_MASK), "unitScrollDown");
  }
}
