package io.github.readfall.window.workplace;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.series.autosave.WindowState;
import io.github.readfall.series.autosave.WindowStateFile;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** The state that the window remembers; written after every change. */
public final class SavedWindowState {

  private final WindowStateFile file;
  private final Executor disk;
  private final Consumer<String> problems;
  private final Optional<String> trouble;
  private WindowState now;

  /**
   * The state read from a file.
   *
   * @param disk the thread that writes it
   * @param problems called if it cannot be written
   */
  public SavedWindowState(WindowStateFile file, Executor disk, Consumer<String> problems) {
    WindowStateFile.Read read = file.read();
    this.file = file;
    this.disk = disk;
    this.problems = problems;
    this.trouble = read.trouble();
    this.now = read.remembered();
  }

  /** A sentence if the file could not be read. */
  public Optional<String> problem() {
    return trouble;
  }

  public WindowState now() {
    return now;
  }

  /** Changes the state. */
  public void change(UnaryOperator<WindowState> change) {
    WindowState next = change.apply(now);
    if (!next.equals(now)) {
      now = next;
      disk.execute(() -> write(next));
    }
  }

  private void write(WindowState what) {
    try {
      file.write(what);
    } catch (UnusablePath e) {
      problems.accept(String.valueOf(e.getMessage()));
    }
  }
}
