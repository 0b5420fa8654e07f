package io.github.readfall.window.languages;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.WindowAction;
import java.util.Optional;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** A menu of languages, filled when it is opened. */
public final class LanguageMenu extends JMenu {

  private static final long serialVersionUID = 1;

  private final transient LanguageBox box;

  /** A menu that selects in a {@link LanguageBox}. */
  public LanguageMenu(WindowAction named, LanguageBox box) {
    super(named);
    this.box = box;
    setName(named.key());
    addMenuListener(
        new MenuListener() {
          @Override
          public void menuSelected(MenuEvent event) {
            fill();
          }

          @Override
          public void menuDeselected(MenuEvent event) {
            // it is filled again when it is opened
          }

          @Override
          public void menuCanceled(MenuEvent event) {
            // it is filled again when it is opened
          }
        });
  }

  private void fill() {
    removeAll();
    for (int i = 0; i < box.getItemCount(); i++) {
      LanguageBox.Choice choice = box.getItemAt(i);
      JMenuItem item = new JRadioButtonMenuItem(choice.toString());
      Optional<String> tag = choice.tag();
      item.setSelected(tag.equals(box.chosen()));
      item.addActionListener(event -> box.choose(tag));
      add(item);
    }
    if (box.getItemCount() == 0) {
      add(Wording.of("menu.noLanguages")).setEnabled(false);
    }
  }
}
