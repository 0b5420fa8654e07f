package io.github.readfall.window.help;

import io.github.readfall.base.wording.Wording;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.KeyStroke;

/**
 * Keys and their action.
 *
 * @param where key of the words for the menu or the part of the window that takes them
 * @param does key of the words for the action; mnemonics are left out
 * @param strokes any of which triggers it, or one for each direction
 */
record KeyRow(String where, String does, List<KeyStroke> strokes) {

  KeyRow {
    strokes = List.copyOf(strokes);
  }

  /**
   * Keys and their action.
   *
   * @param strokes as {@link KeyStroke#getKeyStroke(String)} reads them, e.g. {@code ctrl SPACE}
   */
  static KeyRow of(String where, String does, String... strokes) {
    return new KeyRow(where, does, Arrays.stream(strokes).map(KeyStroke::getKeyStroke).toList());
  }

  /** The keys in words, e.g. {@code Page Up, Page Down}. */
  String keys() {
    return strokes.stream().map(KeyRow::words).collect(Collectors.joining(", "));
  }

  private static String words(KeyStroke stroke) {
    String modifiers = InputEvent.getModifiersExText(stroke.getModifiers());
    String key = KeyEvent.getKeyText(stroke.getKeyCode());
    return modifiers.isEmpty() ? key : modifiers + "+" + key;
  }

  /** The menu or part of the window that takes the keys, in words. */
  String whereInWords() {
    return plain(where);
  }

  /** The action, in words. */
  String doesInWords() {
    return plain(does);
  }

  private static String plain(String key) {
    return Wording.of(key).replace("&", "");
  }
}
