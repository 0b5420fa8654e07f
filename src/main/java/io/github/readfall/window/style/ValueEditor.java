package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.TomlValue;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;

/** Where a value of the house style is shown and changed. */
interface ValueEditor {

  /** What takes keys. */
  JComponent field();

  /** What is laid out: the field, and what belongs to it. */
  JComponent whole();

  /** Shows a value; nobody is told. Empty where none is known. */
  void show(Optional<TomlValue> value);

  /**
   * Tells of changes.
   *
   * @param changed hears of every value that it could have now; of none where what is typed is none
   * @param done is told when the person has chosen: by Enter, or by going elsewhere
   */
  void listen(Consumer<Optional<TomlValue>> changed, Runnable done);
}
