package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.window.parts.Listen;
import java.awt.BorderLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.undo.UndoableEdit;

/**
 * The editor of the script: text with every line shown by its kind, findings underlined,
 * completions of names and manners, and a bar to find words.
 *
 * <p>Texts passed in and out are those of the file, with its line ends and its byte order mark.
 * Used on the event thread only.
 */
public final class ScriptEditor extends JPanel {

  private static final long serialVersionUID = 1;

  private final ScriptArea area = new ScriptArea();
  private final FindBar findBar = new FindBar(area);
  private final transient Completer completer = new Completer(area);
  private final transient List<Consumer<String>> typedListeners = new ArrayList<>();
  private final transient List<IntConsumer> caretListeners = new ArrayList<>();
  private transient LineEnds ends = LineEnds.of("");
  private boolean opening;
  private int caretLine = 1;

  /** An empty script. */
  public ScriptEditor() {
    super(new BorderLayout());
    setName("script editor");
    JScrollPane scroll = new JScrollPane(area);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    add(scroll, BorderLayout.CENTER);
    add(findBar, BorderLayout.PAGE_END);
    area.script().onChange(this::changed);
    area.addCaretListener(e -> caretMoved());
    Listen.toKey(
        area,
        KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, InputEvent.CTRL_DOWN_MASK),
        "complete",
        completer::ask);
  }

  /** Shows another script, from its top; earlier edits cannot be undone any more. */
  public void open(String fileText) {
    ends = LineEnds.of(fileText);
    opening = true;
    area.underline(List.of());
    area.script().become(ends.withLineFeeds());
    opening = false;
    area.script().history().clear();
    area.setCaretPosition(0);
    findBar.look();
  }

  /** Replaces the text, as one edit that can be undone; the caret stays if it can. */
  public void replace(String fileText) {
    area.script().history().closeStep();
    area.script().become(LineEnds.withLineFeeds(fileText));
    area.script().history().closeStep();
  }

  /** The text as it is to be saved in the file. */
  public String text() {
    return ends.restored(area.script().text());
  }

  /** The position of the caret. */
  public ScriptPosition caret() {
    int offset = area.getCaretPosition();
    int line = area.script().lineAt(offset);
    int index = offset - area.script().startOf(line);
    return new ScriptPosition(line, area.script().line(line).codePointCount(0, index) + 1);
  }

  /**
   * Moves the caret to a position and scrolls to it; to the end of the text or of the line if there
   * is no such position.
   *
   * @param line from 1
   * @param column in code points, from 1
   */
  public void goTo(int line, int column) {
    int at = Math.max(1, Math.min(area.script().lineCount(), line));
    String text = area.script().line(at);
    int most = text.codePointCount(0, text.length());
    int units = text.offsetByCodePoints(0, Math.max(0, Math.min(most, column - 1)));
    area.goTo(area.script().startOf(at) + units);
  }

  /** Gives the focus to the text. */
  public void focusText() {
    area.requestFocusInWindow();
  }

  /** Adds a listener for the whole text; called after every change but {@link #open}. */
  public void onTextChange(Consumer<String> listener) {
    typedListeners.add(listener);
  }

  /** Adds a listener for the caret's line, from 1; called when it changes. */
  public void onCaretLine(IntConsumer listener) {
    caretListeners.add(listener);
  }

  /**
   * Shows findings and completions of the script. Findings of a text that has changed since are not
   * shown, since their places are of that text.
   */
  public void show(ReadScript read, List<Finding> findings, Completions completions) {
    if (area.script().readBy(read.script().keywords())) {
      area.refresh();
    }
    completer.know(completions);
    if (LineEnds.withLineFeeds(read.script().text()).equals(area.script().text())) {
      area.underline(new FindingPlaces(area.script(), read.script()).of(findings));
    }
  }

  public boolean canUndo() {
    return area.script().history().canUndo();
  }

  public boolean canRedo() {
    return area.script().history().canRedo();
  }

  /** The name of the edit that would be undone; empty if there is none. */
  public Optional<String> undoName() {
    return area.script().history().undoName();
  }

  /** The name of the edit that would be redone; empty if there is none. */
  public Optional<String> redoName() {
    return area.script().history().redoName();
  }

  /**
   * Adds an edit made elsewhere than in the text, to be undone and redone with the text's.
   *
   * @param kind consecutive edits of one kind are undone together; empty for one of its own
   */
  public void addUndoStep(UndoableEdit edit, String kind) {
    area.script().history().add(edit, kind);
  }

  public void undo() {
    area.script().undo();
  }

  public void redo() {
    area.script().redo();
  }

  /** Adds a listener for changes of what can be undone or redone. */
  public void onUndoChange(Runnable listener) {
    area.script().history().onChange(listener);
  }

  /** Opens the bar to find words. */
  public void find() {
    findBar.open();
  }

  /** Offers completions at the caret. */
  public void complete() {
    completer.ask();
  }

  ScriptArea area() {
    return area;
  }

  Completer completer() {
    return completer;
  }

  private void changed() {
    findBar.look();
    if (!opening) {
      completer.typed();
      String text = text();
      typedListeners.forEach(listener -> listener.accept(text));
    }
  }

  private void caretMoved() {
    int line = caret().line();
    if (line != caretLine) {
      caretLine = line;
      caretListeners.forEach(listener -> listener.accept(line));
    }
  }
}
