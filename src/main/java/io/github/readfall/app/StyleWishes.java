package io.github.readfall.app;

import io.github.readfall.desk.StyleSpot;
import io.github.readfall.desk.StyleSubject;
import io.github.readfall.style.StyleValue;
import java.util.Optional;

/** What a person wants of the house style. */
interface StyleWishes {

  /** To see a voice, a manner or a limit, as it stands. */
  void see(StyleSubject subject);

  /** To see what a value would do. */
  void tryOut(StyleSpot spot, StyleValue value);

  /** To have a value in series.toml, or the built-in one. */
  void write(StyleSpot spot, Optional<StyleValue> value);

  /** To have the last change undone. */
  void takeBack();
}
