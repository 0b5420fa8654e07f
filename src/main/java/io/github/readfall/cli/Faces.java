package io.github.readfall.cli;

import io.github.readfall.type.font.FontShelf;

/** Where the command line finds the faces that come with the program. */
@FunctionalInterface
interface Faces {

  /**
   * Returns the shelf of them.
   *
   * @throws CannotProceed if they are not where they were unpacked
   */
  FontShelf shelf() throws CannotProceed;
}
