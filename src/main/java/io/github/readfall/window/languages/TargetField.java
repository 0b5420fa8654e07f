package io.github.readfall.window.languages;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.type.text.Languages;
import io.github.readfall.window.parts.Listen;
import java.awt.ComponentOrientation;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.text.AbstractDocument;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DocumentFilter;
import javax.swing.undo.UndoManager;

/**
 * The translation of one cue, with the script's markup, in the direction of the language. A cue is
 * one line of a script: a new line becomes a forced break.
 */
final class TargetField extends JTextArea {

  private static final long serialVersionUID = 1;

  private static final String BREAK = " / ";

  private final UndoManager history = new UndoManager();
  private boolean isFilling;

  TargetField() {
    super(3, 20);
    setName("translation.target");
    getAccessibleContext().setAccessibleName(Wording.of("translation.target.any"));
    setLineWrap(true);
    setWrapStyleWord(true);
    if (getDocument() instanceof AbstractDocument document) {
      document.setDocumentFilter(new OneLine());
    }
    getDocument().addUndoableEditListener(history);
    int menu = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    bind(KeyEvent.VK_Z, menu, "undo", this::undo);
    bind(KeyEvent.VK_Z, menu | InputEvent.SHIFT_DOWN_MASK, "redo", this::redo);
    leaveByTab();
  }

  /** Lets Tab move to the next control, because a cue has no tabs. */
  private void leaveByTab() {
    bind(KeyEvent.VK_TAB, 0, "leave", this::transferFocus);
    bind(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK, "leaveBack", this::transferFocusBackward);
  }

  /** Binds a key to an action. */
  void bind(int key, int modifiers, String name, Runnable action) {
    Listen.toKey(this, KeyStroke.getKeyStroke(key, modifiers), name, action);
  }

  private void undo() {
    if (history.canUndo()) {
      history.undo();
    }
  }

  private void redo() {
    if (history.canRedo()) {
      history.redo();
    }
  }

  /** Shows a cue; changes of the previous one can no longer be undone. */
  void open(String language, String words) {
    boolean isRightToLeft = Languages.of(language).rightToLeft();
    applyComponentOrientation(
        isRightToLeft ? ComponentOrientation.RIGHT_TO_LEFT : ComponentOrientation.LEFT_TO_RIGHT);
    isFilling = true;
    setText(words);
    isFilling = false;
    history.discardAllEdits();
  }

  /** Adds a listener for the text after every change except {@link #open}. */
  void onTyped(Consumer<String> listener) {
    Listen.toText(
        this,
        () -> {
          if (!isFilling) {
            listener.accept(getText());
          }
        });
  }

  /** Turns new lines into forced breaks. */
  private static final class OneLine extends DocumentFilter {
    @Override
    public void insertString(FilterBypass by, int at, String text, AttributeSet looks)
        throws BadLocationException {
      super.insertString(by, at, inOneLine(text), looks);
    }

    @Override
    public void replace(FilterBypass by, int at, int length, String text, AttributeSet looks)
        throws BadLocationException {
      super.replace(by, at, length, inOneLine(text), looks);
    }

    private static String inOneLine(String text) {
      return text.replaceAll("[ \\t]*\\R[ \\t]*", BREAK);
    }
  }
}
