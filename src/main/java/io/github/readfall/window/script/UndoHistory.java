package io.github.readfall.window.script;

import io.github.readfall.base.wording.Wording;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.UndoableEditEvent;
import javax.swing.event.UndoableEditListener;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;
import javax.swing.undo.CompoundEdit;
import javax.swing.undo.UndoableEdit;

/**
 * The edits of a text and others beside it, in steps that are undone at once: a word as it is
 * typed, a run of deletions, a replacement. A pause of half a second ends a step.
 */
final class UndoHistory implements UndoableEditListener {

  /** House default, no source. */
  private static final int PAUSE_MS = 500;

  /** A key types one letter, of two UTF-16 units at most. */
  private static final int MOST_TYPED = 2;

  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private final List<Runnable> listeners = new ArrayList<>();
  private final Timer pause = new Timer(PAUSE_MS, e -> closeStep());
  private boolean open;
  private int depth;
  private boolean isStepBegun;

  UndoHistory() {
    pause.setRepeats(false);
  }

  /** Edits that are undone together, and the last of them. */
  private static final class Step extends CompoundEdit {

    private static final long serialVersionUID = 1;

    private final String name;
    private transient Change last;

    Step(String name, Change first) {
      this.name = name;
      this.last = first;
    }

    @Override
    public String getPresentationName() {
      return name;
    }

    void add(UndoableEdit edit, Change change) {
      addEdit(edit);
      last = change;
    }

    boolean isFollowedBy(Change next) {
      return last.isFollowedBy(next);
    }
  }

  /**
   * One edit: its offset and the length that it inserts or deletes; or, for one elsewhere than in
   * the text, its kind.
   */
  private record Change(String kind, boolean insert, int offset, int length, boolean space) {

    static Change elsewhere(String kind) {
      return new Change(kind, false, -1, -1, false);
    }

    static Change of(UndoableEdit edit) {
      if (!(edit instanceof DocumentEvent event)) {
        return elsewhere("");
      }
      boolean insert = event.getType() == DocumentEvent.EventType.INSERT;
      int end = event.getOffset() + event.getLength();
      boolean space = insert && isSpace(event.getDocument(), end - 1);
      return new Change("", insert, event.getOffset(), event.getLength(), space);
    }

    private static boolean isSpace(Document document, int offset) {
      try {
        return Character.isWhitespace(document.getText(offset, 1).charAt(0));
      } catch (BadLocationException e) {
        return true;
      }
    }

    String words() {
      return Wording.of(
          !insert ? "undo.deleting" : length > MOST_TYPED ? "undo.inserting" : "undo.typing");
    }

    /**
     * Whether another edit belongs to the same step: a word continues up to the first letter of the
     * next.
     */
    boolean isFollowedBy(Change next) {
      if (offset < 0 || next.offset < 0) {
        return !kind.isEmpty() && kind.equals(next.kind);
      }
      if (insert != next.insert || length > MOST_TYPED || next.length > MOST_TYPED) {
        return false;
      }
      return insert
          ? next.offset == offset + length && (next.space || !space)
          : next.offset == offset || next.offset + next.length == offset;
    }
  }

  void onChange(Runnable listener) {
    listeners.add(listener);
  }

  boolean canUndo() {
    return !done.isEmpty();
  }

  boolean canRedo() {
    return !undone.isEmpty();
  }

  /** The name of the step that would be undone. */
  Optional<String> undoName() {
    return Optional.ofNullable(done.peek()).map(Step::getPresentationName);
  }

  /** The name of the step that would be redone. */
  Optional<String> redoName() {
    return Optional.ofNullable(undone.peek()).map(Step::getPresentationName);
  }

  void undo() {
    if (canUndo()) {
      closeStep();
      Step step = done.pop();
      step.undo();
      undone.push(step);
      notifyListeners();
    }
  }

  void redo() {
    if (canRedo()) {
      Step step = undone.pop();
      step.redo();
      done.push(step);
      notifyListeners();
    }
  }

  /** Forgets all steps. */
  void clear() {
    closeStep();
    done.clear();
    undone.clear();
    notifyListeners();
  }

  /** Begins a step that lasts until the matching {@link #end}. */
  void begin() {
    depth++;
  }

  void end() {
    depth--;
    if (depth == 0) {
      isStepBegun = false;
    }
  }

  /** Ends the step: the next edit begins another. */
  void closeStep() {
    pause.stop();
    if (open) {
      open = false;
      done.element().end();
    }
  }

  @Override
  public void undoableEditHappened(UndoableEditEvent event) {
    UndoableEdit edit = event.getEdit();
    Change change = Change.of(edit);
    add(edit, change, change.words());
  }

  /**
   * Adds an edit made elsewhere than in the text.
   *
   * @param kind consecutive edits of one kind are one step; empty for one of its own
   */
  void add(UndoableEdit edit, String kind) {
    add(edit, Change.elsewhere(kind), edit.getPresentationName());
  }

  private void add(UndoableEdit edit, Change change, String name) {
    undone.clear();
    boolean joins = open && (isStepBegun || done.element().isFollowedBy(change));
    if (!joins) {
      closeStep();
      done.push(new Step(name, change));
      open = true;
    }
    isStepBegun = depth > 0;
    done.element().add(edit, change);
    pause.restart();
    notifyListeners();
  }

  private void notifyListeners() {
    listeners.forEach(Runnable::run);
  }
}
