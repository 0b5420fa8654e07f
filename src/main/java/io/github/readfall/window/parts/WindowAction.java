package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** Something the window can be told to do, by menu, key or button. */
public final class WindowAction extends AbstractAction {

  private static final long serialVersionUID = 1;

  private final String key;
  private final transient Runnable go;

  /**
   * An action.
   *
   * @param key of its words; in them {@code &} stands before the letter that chooses it in a menu
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
   * Says what it would be done to; where there is nothing it cannot be done.
   *
   * @param plain key of its words where there is nothing
   * @param named key of its words with a name
   */
  public void names(String plain, String named, Optional<String> what) {
    setEnabled(what.isPresent());
    putValue(
        NAME, what.map(name -> Wording.of(named, name)).orElse(Wording.of(plain)).replace("&", ""));
  }

  /** The same, also done by a key with the platform's menu key held down. */
  public WindowAction menuKey(int keyCode) {
    return stroke(keyCode, Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx());
  }

  /** The same, also done by a key with the platform's menu key and Shift held down. */
  public WindowAction shiftMenuKey(int keyCode) {
    int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    return stroke(keyCode, menu | InputEvent.SHIFT_DOWN_MASK);
  }

  /** The same, also done by a key alone or with modifiers of {@link InputEvent}. */
  public WindowAction stroke(int keyCode, int modifiers) {
    putValue(ACCELERATOR_KEY, KeyStroke.getKeyStroke(keyCode, modifiers));
    return this;
  }

  /** What it is called in tests and for assistive tools. */
  public String key() {
    return key;
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    go.run();
  }
}
