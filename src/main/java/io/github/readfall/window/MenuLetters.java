package io.github.readfall.window;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import javax.swing.JMenuBar;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;

/**
 * Discards the letter typed by a key that was pressed in a menu. The key chooses an entry when it
 * is pressed, and the text that has the focus again by then would take its letter.
 */
final class MenuLetters implements KeyEventDispatcher {

  private boolean isPressedInMenu;

  @Override
  public boolean dispatchKeyEvent(KeyEvent event) {
    if (event.getID() == KeyEvent.KEY_PRESSED) {
      MenuElement[] open = MenuSelectionManager.defaultManager().getSelectedPath();
      isPressedInMenu = open.length > 0 && open[0] instanceof JMenuBar;
    }
    return isPressedInMenu && event.getID() == KeyEvent.KEY_TYPED;
  }
}
