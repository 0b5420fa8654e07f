package io.github.readfall.window.workplace;

import java.nio.file.Path;
import java.util.Optional;

/** Where the script is written. */
interface WorkPage {
  /** Shows another script. */
  void open(String text);

  /** Shows other words of the same script, as one step that can be undone. */
  void replace(String text);

  String text();

  /** Asks for a file to write a copy to; empty where none is chosen. */
  Optional<Path> copyTo();
}
