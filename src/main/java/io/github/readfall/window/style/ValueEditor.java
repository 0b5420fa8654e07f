package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.TomlValue;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;

/** An editor for a value of the house style. */
interface ValueEditor {

  /** The component that takes keys. */
  JComponent field();

  /** The whole component: the field and its accessories. */
  JComponent whole();

  /** Shows a value without calling listeners; empty if none is known. */
  void show(Optional<TomlValue> value);

  /**
   * Sets the listeners.
   *
   * @param changed called with every possible value, or empty if the text is not a value
   * @param done called when the person confirms by Enter or by leaving the field
   */
  void listen(Consumer<Optional<TomlValue>> changed, Runnable done);
}
