package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.read.ReadScript;
import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.undo.UndoableEdit;

/**
 * The script, as it is written: text with every line shown as what it is, what was found underlined
 * in its place, names and manners offered, and a bar to find words.
 *
 * <p>Texts that come in and go out are as they are in the file, with its line ends and its byte
 * order mark. Used on the event thread only.
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
    bind(KeyEvent.VK_SPACE, InputEvent.CTRL_DOWN_MASK, "complete", completer::ask);
  }

  private void bind(int key, int modifiers, String name, Runnable action) {
    area.getInputMap().put(KeyStroke.getKeyStroke(key, modifiers), name);
    area.getActionMap()
        .put(
            name,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent event) {
                action.run();
              }
            });
  }

  /** Shows another script, from its top; what was done before cannot be undone any more. */
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

  /** Gives the script another text, as one edit that can be undone; the caret stays if it can. */
  public void replace(String fileText) {
    area.script().history().closeStep();
    area.script().become(LineEnds.withLineFeeds(fileText));
    area.script().history().closeStep();
  }

  /** The text as it is to stand in the file. */
  public String text() {
    return ends.restored(area.script().text());
  }

  /** Where the caret is. */
  public ScriptPosition caret() {
    int offset = area.getCaretPosition();
    int line = area.script().lineAt(offset);
    int index = offset - area.script().startOf(line);
    return new ScriptPosition(line, area.script().line(line).codePointCount(0, index) + 1);
  }

  /**
   * Puts the caret somewhere and brings its line well into view; the end of the text or of the line
   * where there is no such place.
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

  /** Gives the keyboard to the text. */
  public void focusText() {
    area.requestFocusInWindow();
  }

  /** Hears the whole text after every change but {@link #open}. */
  public void onTextChange(Consumer<String> listener) {
    typedListeners.add(listener);
  }

  /** Hears the caret's line, from 1, when it is another. */
  public void onCaretLine(IntConsumer listener) {
    caretListeners.add(listener);
  }

  /**
   * Shows what the script means now. What was found in a text that has changed since is not shown,
   * since its places are of that text; its words and completions are.
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

  /** What would be undone, in words; empty where there is nothing. */
  public Optional<String> undoName() {
    return area.script().history().undoName();
  }

  /** What would be redone, in words; empty where there is nothing. */
  public Optional<String> redoName() {
    return area.script().history().redoName();
  }

  /**
   * Writes down something that was done elsewhere than in the text, to be undone and redone with
   * it.
   *
   * @param kind edits of one kind right after each other are undone together; empty for one by
   *     itself
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

  /** Is told when something can be undone or redone, or no more. */
  public void onUndoChange(Runnable listener) {
    area.script().history().onChange(listener);
  }

  /** Opens the bar to find words. */
  public void find() {
    findBar.open();
  }

  /** Offers what may be written at the caret. */
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
