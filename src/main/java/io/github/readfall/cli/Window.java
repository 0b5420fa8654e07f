package io.github.readfall.cli;

import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.Optional;

/** The other face of the program, as the command line knows it. */
public interface Window {

  /** No window, as on a machine without a display. */
  Window NONE =
      new Window() {
        @Override
        public boolean canOpen() {
          return false;
        }

        @Override
        public void open(FontShelf faces, Optional<Path> path) {
          throw new IllegalStateException("there is no window");
        }
      };

  /** Returns true if there is a display to open it on. */
  boolean canOpen();

  /**
   * Opens it, and returns when it is closed.
   *
   * @param faces that come with the program
   * @param path to open; empty for the last one
   */
  void open(FontShelf faces, Optional<Path> path);
}
