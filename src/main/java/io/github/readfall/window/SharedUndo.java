package io.github.readfall.window;

import io.github.readfall.window.model.UndoSteps;
import io.github.readfall.window.script.ScriptEditor;
import javax.swing.undo.AbstractUndoableEdit;

/**
 * Writes what is done on the strip down with what is typed, so that both are undone in the order in
 * which they were done.
 *
 * @param editor that keeps what was done
 */
record SharedUndo(ScriptEditor editor) implements UndoSteps {

  @Override
  public void add(Step step) {
    editor.addUndoStep(new Done(step), step.kind());
  }

  /** Something that was done on the strip. */
  private static final class Done extends AbstractUndoableEdit {

    private static final long serialVersionUID = 1;

    private final transient Step step;

    Done(Step step) {
      this.step = step;
    }

    @Override
    public String getPresentationName() {
      return step.name();
    }

    @Override
    public void undo() {
      super.undo();
      step.back().run();
    }

    @Override
    public void redo() {
      super.redo();
      step.again().run();
    }
  }
}
