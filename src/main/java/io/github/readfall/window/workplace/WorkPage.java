package io.github.readfall.window.workplace;

import java.nio.file.Path;
import java.util.Optional;

/** A page that shows a text which is edited and saved. */
interface WorkPage {
  /** Shows another text. */
  void open(String text);

  /** Replaces the text, as one step that can be undone. */
  void replace(String text);

  String text();

  /** Asks for the path of a copy; empty if none is chosen. */
  Optional<Path> copyTo();
}
