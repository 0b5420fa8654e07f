package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import javax.swing.JMenuBar;
import javax.swing.JTextArea;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class MenuLettersTest {

  private final MenuLetters letters = new MenuLetters();
  private final JTextArea text = new JTextArea();

  @AfterEach
  void closeTheMenu() {
    MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[0]);
  }

  private boolean discards(int id, int code, char letter) {
    return letters.dispatchKeyEvent(new KeyEvent(text, id, 0, 0, code, letter));
  }

  private boolean discardsTyped() {
    assertFalse(discards(KeyEvent.KEY_PRESSED, KeyEvent.VK_P, 'p'));
    closeTheMenu(); // as the entry does that the key chooses
    boolean typed = discards(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, 'p');
    assertFalse(discards(KeyEvent.KEY_RELEASED, KeyEvent.VK_P, 'p'));
    return typed;
  }

  @Test
  void aLetterThatChoseAnEntryIsNotTypedIntoTheTextAsWell() {
    MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[] {new JMenuBar()});
    assertTrue(discardsTyped());
  }

  @Test
  void theNextLetterIsTyped() {
    MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[] {new JMenuBar()});
    discardsTyped();
    assertFalse(discardsTyped());
  }
}
