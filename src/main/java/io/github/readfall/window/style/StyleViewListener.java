package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.window.model.StyleEntry;
import io.github.readfall.window.model.StyleSubject;
import java.util.Optional;

/** Listens to the style page. */
public interface StyleViewListener {

  /** Called when a voice, a manner or a limit is selected. */
  void select(StyleSubject subject);

  /** Called when a value is tried out. */
  void preview(StyleEntry entry, TomlValue value);

  /** Called when a value is to be written to series.toml; empty to remove it. */
  void write(StyleEntry entry, Optional<TomlValue> value);

  /** Called when the last change is to be undone. */
  void revert();
}
