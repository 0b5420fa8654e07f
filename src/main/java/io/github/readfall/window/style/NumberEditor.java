package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.Range;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.window.parts.Listen;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.text.ParseException;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFormattedTextField;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultFormatterFactory;

/** An editor for a number that is typed or stepped through. */
final class NumberEditor implements ValueEditor {

  private final Range range;
  private final JSpinner spinner;
  private final JFormattedTextField text;
  private final FigureFormat format;
  private String last = "";
  private boolean isFilling;

  /**
   * An editor.
   *
   * @param step between neighbouring values
   */
  NumberEditor(Range range, double step) {
    this.range = range;
    spinner = new JSpinner(new Steps(range, step));
    text = ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField();
    format = new FigureFormat(range);
    text.setFormatterFactory(new DefaultFormatterFactory(format));
    text.setColumns(3);
  }

  /** Sets the step between neighbouring values. */
  void step(double other) {
    if (spinner.getModel() instanceof Steps steps) {
      steps.setStepSize(other);
    }
  }

  /** Numbers rounded to the precision of the step. */
  private static final class Steps extends SpinnerNumberModel {
    private static final long serialVersionUID = 1;
    private static final double ROUND = 1e6;

    Steps(Range range, double step) {
      super(
          Double.valueOf(range.least()),
          Double.valueOf(range.least()),
          Double.valueOf(range.most()),
          Double.valueOf(step));
    }

    @Override
    public Object getNextValue() {
      return stepped(1);
    }

    @Override
    public Object getPreviousValue() {
      return stepped(-1);
    }

    private Object stepped(int by) {
      double raw = getNumber().doubleValue() + by * getStepSize().doubleValue();
      double least = ((Number) getMinimum()).doubleValue();
      double most = ((Number) getMaximum()).doubleValue();
      return Math.max(least, Math.min(most, Math.rint(raw * ROUND) / ROUND));
    }
  }

  @Override
  public JComponent field() {
    return text;
  }

  @Override
  public JComponent whole() {
    return spinner;
  }

  @Override
  public void show(Optional<TomlValue> value) {
    isFilling = true;
    if (value.orElse(new Figure(range.least())) instanceof Figure figure) {
      spinner.setValue(Math.max(range.least(), Math.min(range.most(), figure.number())));
      text.setValue(spinner.getValue()); // also if only the text differs
    }
    last = text.getText();
    isFilling = false;
  }

  @Override
  public void listen(Consumer<Optional<TomlValue>> changed, Runnable done) {
    Runnable report =
        () -> {
          if (!text.getText().equals(last)) { // the field rewrites its text when it gets the focus
            last = text.getText();
            changed.accept(format.read(last).map(Figure::new));
          }
        };
    Runnable typed =
        () -> {
          if (!isFilling) {
            SwingUtilities.invokeLater(report);
          }
        };
    Listen.toText(text, typed);
    text.addActionListener(event -> done.run());
    text.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            SwingUtilities.invokeLater(text::selectAll); // the field places its caret first
          }

          @Override
          public void focusLost(FocusEvent event) {
            done.run();
          }
        });
  }

  /** Numbers as in series.toml; a comma is read as a decimal point. */
  private static final class FigureFormat extends JFormattedTextField.AbstractFormatter {
    private static final long serialVersionUID = 1;
    private final transient Range range;

    FigureFormat(Range range) {
      this.range = range;
    }

    Optional<Double> read(String typed) {
      String plain = typed.strip().replace(',', '.').replace('\u2212', '-');
      if (!plain.matches("-?([0-9]{1,12}(\\.[0-9]{0,9})?|\\.[0-9]{1,9})")) {
        return Optional.empty();
      }
      double number = Double.parseDouble(plain);
      boolean possible =
          number >= range.least()
              && number <= range.most()
              && (!range.isWhole() || number == Math.rint(number));
      return possible ? Optional.of(number) : Optional.empty();
    }

    @Override
    public Object stringToValue(String typed) throws ParseException {
      return read(typed).orElseThrow(() -> new ParseException(typed, 0));
    }

    @Override
    public String valueToString(Object value) {
      return value instanceof Number number ? new Figure(number.doubleValue()).shown() : "";
    }
  }
}
