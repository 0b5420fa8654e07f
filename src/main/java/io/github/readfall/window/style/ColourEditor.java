package io.github.readfall.window.style;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Words;
import io.github.readfall.window.parts.Listen;
import io.github.readfall.window.parts.SwatchIcon;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** An editor for a colour as {@code #rrggbb}, with a sample of it. */
final class ColourEditor implements ValueEditor {

  private final JTextField text = new JTextField(7);
  private final JLabel swatch = new JLabel();
  private final JPanel both = new JPanel(new MigLayout("insets 0, gap 6, fillx, novisualpadding"));
  private boolean isFilling;

  ColourEditor() {
    both.setOpaque(false);
    both.add(swatch);
    both.add(text, "growx, pushx, wmin 0");
  }

  @Override
  public JComponent field() {
    return text;
  }

  @Override
  public JComponent whole() {
    return both;
  }

  @Override
  public void show(Optional<TomlValue> value) {
    isFilling = true;
    text.setText(value.map(TomlValue::shown).orElse(""));
    text.setCaretPosition(0);
    isFilling = false;
    paint();
  }

  private Optional<Colour> typed() {
    return Colour.parse(text.getText().strip().toLowerCase(Locale.ROOT));
  }

  private void paint() {
    swatch.setIcon(new SwatchIcon(typed(), text.getFont().getSize() * 3 / 2));
  }

  @Override
  public void listen(Consumer<Optional<TomlValue>> changed, Runnable done) {
    Runnable typing =
        () -> {
          paint();
          if (!isFilling) {
            changed.accept(typed().map(colour -> new Words(colour.hex())));
          }
        };
    Listen.toText(text, typing);
    text.addActionListener(event -> done.run());
    text.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            done.run();
          }
        });
  }
}
