package io.github.readfall.window.style;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.window.parts.Listen;
import io.github.readfall.window.parts.SecondaryLabel;
import io.github.readfall.window.parts.WrappedLabel;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.KeyStroke;

/**
 * One value of the house style: its name, its editor, its source if the series does not set it, and
 * a button that resets it. A change is previewed while it is made, and written when it is
 * confirmed.
 */
final class ValueRow {

  private static final String QUIET_STYLE = "foreground: $Readfall.quiet";

  private final ValueEditor editor;
  private final JLabel label;
  private final JLabel source = new JLabel();
  private final JButton resetButton = new JButton(Wording.of("style.reset"));
  private final WrappedLabel problem;
  private Optional<TomlValue> shown = Optional.empty();
  private Optional<TomlValue> pending = Optional.empty();
  private String problemText = "";
  private Consumer<TomlValue> previewListener = value -> {};
  private Consumer<Optional<TomlValue>> chosen = value -> {};
  private Runnable discardListener = () -> {};

  /**
   * A row.
   *
   * @param name of the field, in tests and for assistive tools
   * @param words label
   * @param meaning the label as a sentence
   */
  ValueRow(String name, String words, String meaning, ValueEditor editor) {
    this.editor = editor;
    JComponent field = editor.field();
    label = new JLabel(words);
    label.setLabelFor(field);
    label.setToolTipText(meaning);
    field.setName(name);
    field.setToolTipText(meaning);
    field.getAccessibleContext().setAccessibleName(words);
    field.getAccessibleContext().setAccessibleDescription(meaning);
    editor.whole().getAccessibleContext().setAccessibleName(words);
    resetButton.setName(name + ".reset");
    resetButton.getAccessibleContext().setAccessibleName(Wording.of("style.reset.of", words));
    resetButton.putClientProperty("FlatLaf.styleClass", "small");
    resetButton.putClientProperty("FlatLaf.style", "margin: 1,6,1,6");
    resetButton.addActionListener(event -> choose(Optional.empty()));
    source.setName(name + ".source");
    SecondaryLabel.style(source);
    problem = new WrappedLabel(name + ".problem", "Readfall.warning");
    editor.listen(this::change, this::confirm);
    Listen.toKey(field, KeyStroke.getKeyStroke("ESCAPE"), "discardChange", this::discard);
  }

  /** Adds itself to the three columns of a layout that ignores hidden components. */
  void addTo(Container panel) {
    panel.add(label, "newline 6");
    panel.add(editor.whole(), editor.whole() instanceof JSpinner ? "growx" : "growx, wmin 64lp");
    panel.add(source, "split 2, wmin 0");
    panel.add(resetButton, "wmin 40lp");
    panel.add(problem, "newline 2, span 3, growx, wmin 0");
  }

  /** Sets the listener for values that are previewed. */
  void onPreview(Consumer<TomlValue> listener) {
    previewListener = listener;
  }

  /** Sets the listener for values that are confirmed; empty to reset the value. */
  void onChosen(Consumer<Optional<TomlValue>> listener) {
    chosen = listener;
  }

  /** Sets the listener for discarded previews. */
  void onDiscard(Runnable listener) {
    discardListener = listener;
  }

  private void change(Optional<TomlValue> value) {
    pending = value.filter(v -> !value.equals(shown));
    problem.showText(value.isPresent() ? problemText : Wording.of("style.noValue"));
    value.ifPresentOrElse(previewListener, discardListener);
  }

  private void confirm() {
    if (pending.isPresent()) {
      choose(pending);
    } else if (!problem.getText().equals(problemText)) {
      discard(); // the text that was no value goes
    }
  }

  private void choose(Optional<TomlValue> value) {
    pending = Optional.empty();
    chosen.accept(value);
  }

  private void discard() {
    forget();
    discardListener.run();
  }

  /**
   * The value in effect.
   *
   * @param value empty if it is not known yet
   * @param isOwn whether the series sets it
   * @param from its source otherwise, in a few words
   */
  record Held(Optional<TomlValue> value, boolean isOwn, String from) {}

  /** Shows the value in effect, unless a change of it is in progress. */
  void show(Held now, boolean canChange) {
    if (pending.equals(now.value())) {
      pending = Optional.empty();
    }
    if (pending.isEmpty() && !shown.equals(now.value())) {
      editor.show(now.value());
    }
    shown = now.value();
    for (JComponent part : List.of(editor.field(), editor.whole())) {
      part.putClientProperty("FlatLaf.style", now.isOwn() ? null : QUIET_STYLE);
    }
    editor.field().setEnabled(canChange);
    editor.whole().setEnabled(canChange);
    source.setText(now.from());
    source.setVisible(!now.isOwn());
    resetButton.setVisible(now.isOwn() && canChange);
  }

  /** Discards a change in progress, because something else is shown from now on. */
  void forget() {
    pending = Optional.empty();
    editor.show(shown);
    problem.showText(problemText);
  }

  /** Shows a problem with the value; nothing if empty. */
  void showProblem(String sentence) {
    problemText = sentence;
    problem.showText(sentence);
  }

  ValueEditor editor() {
    return editor;
  }
}
