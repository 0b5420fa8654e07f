package io.github.readfall.window.languages;

import io.github.readfall.window.parts.LanguageName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;

/** Languages to choose one from, each by the name it has for itself; perhaps none. */
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
   * Nothing to choose from yet.
   *
   * @param what it is for, for those who do not see where it stands
   * @param none what it is called to choose none; empty where one has to be chosen
   */
  public LanguageBox(String name, String what, Optional<String> none) {
    this.none = none;
    setName(name);
    setToolTipText(what);
    getAccessibleContext().setAccessibleName(what);
    addActionListener(event -> tell());
  }

  private void tell() {
    if (!isFilling) {
      listeners.forEach(listener -> listener.accept(chosen()));
    }
  }

  /** The language that is chosen, as a BCP 47 tag. */
  public Optional<String> chosen() {
    return getSelectedItem() instanceof Choice choice ? choice.tag() : Optional.empty();
  }

  /** Offers languages; nobody is told of what is chosen then. */
  public void offer(List<String> tags, Optional<String> chosen) {
    isFilling = true;
    removeAllItems();
    none.ifPresent(words -> addItem(new Choice(Optional.empty(), words)));
    tags.forEach(tag -> addItem(choice(tag)));
    chosen.ifPresent(tag -> setSelectedItem(choice(tag)));
    isFilling = false;
  }

  /** Chooses a language, or none, as a person would. */
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

  /** Tells of every language that is chosen. */
  public void onChosen(Consumer<Optional<String>> listener) {
    listeners.add(listener);
  }
}
