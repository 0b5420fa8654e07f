package io.github.readfall.window.parts;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Listeners with one method in place of several. */
public final class Listen {

  private Listen() {}

  /** Calls a listener after every change of the characters of a text field. */
  public static void toText(JTextComponent field, Runnable listener) {
    field.getDocument().addDocumentListener(new TextListener(listener));
  }

  /** Calls a listener when a list or a table is clicked, and on Enter. */
  public static void toChoice(JComponent list, Runnable listener) {
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            listener.run();
          }
        });
    toKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "choose", listener);
  }

  /**
   * Calls a listener when a key is pressed in the component that has the focus.
   *
   * @param name of the action in the component's maps
   */
  public static void toKey(JComponent component, KeyStroke key, String name, Runnable listener) {
    toKey(component, JComponent.WHEN_FOCUSED, key, name, listener);
  }

  /**
   * Calls a listener when a key is pressed.
   *
   * @param condition as {@link JComponent#getInputMap(int)} takes it
   * @param name of the action in the component's maps
   */
  public static void toKey(
      JComponent component, int condition, KeyStroke key, String name, Runnable listener) {
    component.getInputMap(condition).put(key, name);
    component
        .getActionMap()
        .put(
            name,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent event) {
                listener.run();
              }
            });
  }

  private record TextListener(Runnable listener) implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent event) {
      listener.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
      listener.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
      // another look of the letters, the same characters
    }
  }
}
