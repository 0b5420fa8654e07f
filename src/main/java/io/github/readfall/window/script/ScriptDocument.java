package io.github.readfall.window.script;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.assist.ScriptLines;
import javax.swing.event.DocumentEvent;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.PlainDocument;
import javax.swing.text.SimpleAttributeSet;

/**
 * A script being edited, with the kind of each of its lines.
 *
 * <p>Lines are read again after every change, before any listener is called: that takes a fraction
 * of a millisecond for an episode, so the view is never out of date.
 */
final class ScriptDocument extends PlainDocument {

  private static final long serialVersionUID = 1;

  private final transient UndoHistory history = new UndoHistory();
  private transient Keywords keywords = Keywords.ENGLISH;
  private int revision;
  private int depth;
  private boolean changed;
  private transient Runnable listener = () -> {};
  private transient ScriptLines lines = ScriptLines.read("", Keywords.ENGLISH);

  ScriptDocument() {
    addUndoableEditListener(history);
  }

  UndoHistory history() {
    return history;
  }

  /** Sets the listener for changes; called once for several that belong together. */
  void onChange(Runnable hearer) {
    listener = hearer;
  }

  /** A number that changes whenever the lines are read again. */
  int revision() {
    return revision;
  }

  /** The kinds and parts of the present lines. */
  ScriptLines lines() {
    return lines;
  }

  /** The script as it is shown, with line feeds. */
  String text() {
    try {
      return getText(0, getLength());
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The text of a line, counted from 1, without its end. */
  String line(int line) {
    int start = startOf(line);
    int end = getDefaultRootElement().getElement(line - 1).getEndOffset() - 1;
    try {
      return getText(start, Math.max(0, end - start));
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  int lineCount() {
    return getDefaultRootElement().getElementCount();
  }

  /** The line, counted from 1, that an offset is on. */
  int lineAt(int offset) {
    return getDefaultRootElement().getElementIndex(offset) + 1;
  }

  int startOf(int line) {
    return getDefaultRootElement().getElement(line - 1).getStartOffset();
  }

  Keywords keywords() {
    return keywords;
  }

  /**
   * Sets the keywords.
   *
   * @return whether they have changed
   */
  boolean readBy(Keywords others) {
    if (keywords.equals(others)) {
      return false;
    }
    keywords = others;
    reread();
    return true;
  }

  /** Sets the whole text, changing no more of it than differs. */
  void become(String text) {
    String old = text();
    int most = Math.min(old.length(), text.length());
    int head = 0;
    while (head < most && old.charAt(head) == text.charAt(head)) {
      head++;
    }
    int tail = 0;
    while (tail < most - head
        && old.charAt(old.length() - 1 - tail) == text.charAt(text.length() - 1 - tail)) {
      tail++;
    }
    put(head, old.length() - tail, text.substring(head, text.length() - tail));
  }

  /** Replaces the text between two offsets, as one edit. */
  void put(int start, int end, String text) {
    try {
      replace(start, end - start, text, SimpleAttributeSet.EMPTY);
    } catch (BadLocationException e) {
      throw new IllegalArgumentException(e);
    }
  }

  @Override
  public void replace(int offset, int length, String text, AttributeSet attributes)
      throws BadLocationException {
    begin();
    try {
      super.replace(offset, length, text, attributes);
    } finally {
      end();
    }
  }

  void undo() {
    begin();
    history.undo();
    end();
  }

  void redo() {
    begin();
    history.redo();
    end();
  }

  private void begin() {
    depth++;
    history.begin();
  }

  private void end() {
    depth--;
    history.end();
    if (depth == 0 && changed) {
      changed = false;
      listener.run();
    }
  }

  @Override
  public void insertString(int offset, String text, AttributeSet attributes)
      throws BadLocationException {
    super.insertString(offset, text == null ? "" : LineEnds.withLineFeeds(text), attributes);
  }

  @Override
  protected void fireInsertUpdate(DocumentEvent e) {
    begin();
    reread();
    super.fireInsertUpdate(e);
    changed = true;
    end();
  }

  @Override
  protected void fireRemoveUpdate(DocumentEvent e) {
    begin();
    reread();
    super.fireRemoveUpdate(e);
    changed = true;
    end();
  }

  private void reread() {
    revision++;
    lines = ScriptLines.read(text(), keywords);
  }
}
