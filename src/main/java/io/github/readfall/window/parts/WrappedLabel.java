package io.github.readfall.window.parts;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** Words that are broken into as many lines as they need; none where there are none. */
public final class WrappedLabel extends JTextArea {

  private static final long serialVersionUID = 1;

  /**
   * No words yet.
   *
   * @param colour the key of their colour
   */
  public WrappedLabel(String name, String colour) {
    setName(name);
    setEditable(false);
    setFocusable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setOpaque(false);
    putClientProperty("FlatLaf.style", "foreground: $" + colour);
    say("");
  }

  /** Says something else; nothing where that is empty. */
  public void say(String words) {
    if (!words.equals(getText()) || isVisible() == words.isEmpty()) {
      setText(words);
      getAccessibleContext().setAccessibleName(words);
      setVisible(!words.isEmpty());
      revalidate();
    }
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean isOther = width != getWidth();
    super.setBounds(x, y, width, height);
    if (isOther) {
      SwingUtilities.invokeLater(this::revalidate); // its height hangs on its width
    }
  }

  /** In the letters of the window, not in those of a text that is written. */
  @Override
  public void updateUI() {
    super.updateUI();
    Font font = UIManager.getFont("defaultFont");
    if (font != null) {
      setFont(font);
    }
    setBorder(BorderFactory.createEmptyBorder());
  }
}
