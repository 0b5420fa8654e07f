package io.github.readfall.window.languages;

import io.github.readfall.window.parts.LanguageName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;

/** A list of languages, each named in its own language, and perhaps an entry for none. */
public final class LanguageBox extends JComboBox<LanguageBox.Choice> {

  private static final long serialVersionUID = 1;

  private final transient Optional<String> none;
  private final transient List<Consumer<Optional<String>>> listeners = new ArrayList<>();
  private boolean isFilling;

  /** A language, or none. */
  record Choice(Optional<String> tag, String words) {
    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * An empty list.
   *
   * @param what tooltip and name for screen readers
   * @param none label of the entry for no language; empty if there is no such entry
   */
  public LanguageBox(String name, String what, Optional<String> none) {
    this.none = none;
    setName(name);
    setToolTipText(what);
    getAccessibleContext().setAccessibleName(what);
    addActionListener(event -> callListeners());
  }

  private void callListeners() {
    if (!isFilling) {
      listeners.forEach(listener -> listener.accept(chosen()));
    }
  }

  /** The selected language, as a BCP 47 tag. */
  public Optional<String> chosen() {
    return getSelectedItem() instanceof Choice choice ? choice.tag() : Optional.empty();
  }

  /** Offers languages; listeners are not called. */
  public void offer(List<String> tags, Optional<String> chosen) {
    isFilling = true;
    removeAllItems();
    none.ifPresent(words -> addItem(new Choice(Optional.empty(), words)));
    tags.forEach(tag -> addItem(choice(tag)));
    chosen.ifPresent(tag -> setSelectedItem(choice(tag)));
    isFilling = false;
  }

  /** Selects a language or none, as a person would. */
  public void choose(Optional<String> tag) {
    if (!tag.equals(chosen())) {
      for (int i = 0; i < getItemCount(); i++) {
        if (getItemAt(i).tag().equals(tag)) {
          setSelectedIndex(i);
        }
      }
    }
  }

  private static Choice choice(String tag) {
    return new Choice(Optional.of(tag), LanguageName.of(tag));
  }

  /** Adds a listener for every selection. */
  public void onChosen(Consumer<Optional<String>> listener) {
    listeners.add(listener);
  }
}
