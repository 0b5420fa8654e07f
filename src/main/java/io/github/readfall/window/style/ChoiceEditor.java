package io.github.readfall.window.style;

import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Words;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** An editor for one of several words. */
final class ChoiceEditor implements ValueEditor {

  private final JComboBox<String> box = new JComboBox<>();
  private List<String> offered = List.of();
  private boolean isFilling;

  ChoiceEditor(List<String> words) {
    box.setPrototypeDisplayValue(
        "rounded-box"); // longer words are cut, so that the row stays narrow
    offer(words);
  }

  /** Offers other words; the selected one stays selected. */
  void offer(List<String> words) {
    if (!words.equals(offered)) {
      offered = List.copyOf(words);
      Object chosen = box.getSelectedItem();
      fill(offered, Optional.ofNullable(chosen).map(Object::toString));
    }
  }

  private void fill(List<String> words, Optional<String> chosen) {
    isFilling = true;
    box.setModel(new DefaultComboBoxModel<>(words.toArray(String[]::new)));
    if (chosen.isPresent() && !words.contains(chosen.get())) {
      box.insertItemAt(chosen.get(), 0);
    }
    box.setSelectedItem(chosen.orElse(null));
    isFilling = false;
  }

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
    Optional<String> shown = value.map(TomlValue::shown);
    if (!shown.equals(Optional.ofNullable(box.getSelectedItem()).map(Object::toString))) {
      fill(offered, shown);
    }
  }

  @Override
  public void listen(Consumer<Optional<TomlValue>> changed, Runnable done) {
    box.addActionListener(
        event -> {
          if (!isFilling && box.getSelectedItem() instanceof String word) {
            changed.accept(Optional.of(new Words(word)));
          }
        });
    box.addPopupMenuListener(new Closed(done));
    box.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            done.run();
          }
        });
    box.addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent event) {
            if (event.getKeyCode() == KeyEvent.VK_ENTER && !box.isPopupVisible()) {
              done.run();
            }
          }
        });
  }

  /** Calls a listener after the list has closed, when the selection is known. */
  private record Closed(Runnable listener) implements PopupMenuListener {
    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
      // nothing is chosen yet
    }

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {
      SwingUtilities.invokeLater(listener);
    }

    @Override
    public void popupMenuCanceled(PopupMenuEvent event) {
      // it becomes invisible as well
    }
  }
}
