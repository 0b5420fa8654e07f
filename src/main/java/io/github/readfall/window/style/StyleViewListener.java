package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.window.model.StyleEntry;
import io.github.readfall.window.model.StyleSubject;
import java.util.Optional;

/** What a person wants of the house style. */
public interface StyleViewListener {

  /** To see a voice, a manner or a limit, as it stands. */
  void select(StyleSubject subject);

  /** To see what a value would do. */
  void preview(StyleEntry spot, TomlValue value);

  /** To have a value in series.toml, or the built-in one. */
  void write(StyleEntry spot, Optional<TomlValue> value);

  /** To have the last change undone. */
  void revert();
}
