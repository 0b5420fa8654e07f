package io.github.readfall.cli;

import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.Optional;

/** The other face of the program, as the command line knows it. */
public interface Window {

  /** Where there is none, as on a machine without a display. */
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

  /** Whether there is a display to open it on. */
  boolean canOpen();

  /**
   * Opens it, and comes back when it is closed.
   *
   * @param faces those that come with the program
   * @param path what to open; empty for what was open last
   */
  void open(FontShelf faces, Optional<Path> path);
}
