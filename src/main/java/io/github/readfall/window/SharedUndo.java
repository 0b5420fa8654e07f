package io.github.readfall.window;

import io.github.readfall.window.model.UndoSteps;
import io.github.readfall.window.script.ScriptEditor;
import javax.swing.undo.AbstractUndoableEdit;

/**
 * Adds changes of the strip to the undo history of the editor, so that changes of strip and script
 * are undone in the order in which they were made.
 *
 * @param editor with the undo history
 */
record SharedUndo(ScriptEditor editor) implements UndoSteps {

  @Override
  public void add(Step step) {
    editor.addUndoStep(new Done(step), step.kind());
  }

  /** A change of the strip. */
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
