package io.github.readfall.window.workplace;

import io.github.readfall.window.script.ScriptEditor;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The editor as the page of the script.
 *
 * @param editor that shows it
 * @param starter asks for files
 */
public record EditorPage(ScriptEditor editor, EpisodeStarter starter) implements WorkPage {

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
    return starter.copyTo();
  }
}
