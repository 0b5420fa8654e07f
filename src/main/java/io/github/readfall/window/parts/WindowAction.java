package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** An action of a menu, a key or a button. */
public final class WindowAction extends AbstractAction {

  private static final long serialVersionUID = 1;

  private final String key;
  private final transient Runnable go;

  /**
   * An action.
   *
   * @param key of its words, in which {@code &} is before its mnemonic
   */
  public WindowAction(String key, Runnable go) {
    this.key = key;
    this.go = go;
    String words = Wording.of(key);
    int mark = words.indexOf('&');
    putValue(NAME, words.replace("&", ""));
    if (mark >= 0 && mark + 1 < words.length()) {
      putValue(MNEMONIC_KEY, (int) Character.toUpperCase(words.charAt(mark + 1)));
    }
  }

  /**
   * Names the object of the action; without one the action is disabled.
   *
   * @param plain key of the words without a name
   * @param named key of the words with a name
   */
  public void names(String plain, String named, Optional<String> what) {
    setEnabled(what.isPresent());
    putValue(
        NAME, what.map(name -> Wording.of(named, name)).orElse(Wording.of(plain)).replace("&", ""));
  }

  /** Adds a shortcut with the platform's menu key, e.g. Ctrl. */
  public WindowAction menuKey(int keyCode) {
    return stroke(keyCode, Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx());
  }

  /** Adds a shortcut with Shift and the platform's menu key. */
  public WindowAction shiftMenuKey(int keyCode) {
    int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    return stroke(keyCode, menu | InputEvent.SHIFT_DOWN_MASK);
  }

  /** Adds a shortcut with the modifiers of {@link InputEvent}; 0 for none. */
  public WindowAction stroke(int keyCode, int modifiers) {
    putValue(ACCELERATOR_KEY, KeyStroke.getKeyStroke(keyCode, modifiers));
    return this;
  }

  /** The key of its words, and its name in tests. */
  public String key() {
    return key;
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    go.run();
  }
}
