package io.github.readfall.app;

import io.github.readfall.editor.ScriptEditor;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The editor as the place where the script is written.
 *
 * @param editor that shows it
 * @param starting asks for files
 */
record EditorPage(ScriptEditor editor, Starting starting) implements Page {

  @Override
  public void open(String text) {
    editor.open(text);
  }

  @Override
  public void replace(String text) {
    editor.replace(text);
  }

  @Override
  public String text() {
    return editor.text();
  }

  @Override
  public Optional<Path> copyTo() {
    return starting.copyTo();
  }
}
