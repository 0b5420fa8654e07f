package io.github.readfall.window.canvas;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.KeyStroke;

/**
 * A phone that may be larger than its room: then it is scrolled, by bars or by keys that do not
 * scroll the strip on it.
 */
public final class PhonePane extends JScrollPane {

  private static final long serialVersionUID = 1;

  /** Round a phone that goes into its room there is nothing to scroll. */
  public PhonePane(PhoneView view) {
    super(view);
    setBorder(BorderFactory.createEmptyBorder()); // none would be replaced by a look's own
    getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    InputMap keys = getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_LEFT, 0), "unitScrollLeft");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_RIGHT, 0), "unitScrollRight");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_UP, InputEvent.CTRL_DOWN_MASK), "unitScrollUp");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, InputEvent.CTRL_DOWN_MASK), "unitScrollDown");
  }
}
