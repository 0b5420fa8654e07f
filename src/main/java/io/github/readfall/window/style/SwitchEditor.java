package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Truth;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComponent;

/** An editor for yes or no, which is written as soon as it is changed. */
final class SwitchEditor implements ValueEditor {

  private final JCheckBox box = new JCheckBox();

  @Override
  public JComponent field() {
    return box;
  }

  @Override
  public JComponent whole() {
    return box;
  }

  @Override
  public void show(Optional<TomlValue> value) {
    box.setSelected(value.filter(new Truth(true)::equals).isPresent());
  }

  @Override
  public void listen(Consumer<Optional<TomlValue>> changed, Runnable done) {
    box.addActionListener(
        event -> {
          changed.accept(Optional.of(new Truth(box.isSelected())));
          done.run();
        });
  }
}
