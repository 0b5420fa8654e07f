package io.github.readfall.window.parts;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** A label that wraps its text; hidden if it is empty. */
public final class WrappedLabel extends JTextArea {

  private static final long serialVersionUID = 1;

  /**
   * A label without text.
   *
   * @param colour key of the text colour
   */
  public WrappedLabel(String name, String colour) {
    setName(name);
    setEditable(false);
    setFocusable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setOpaque(false);
    putClientProperty("FlatLaf.style", "foreground: $" + colour);
    showText("");
  }

  /** Shows another text, or hides the label if it is empty. */
  public void showText(String words) {
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
      SwingUtilities.invokeLater(this::revalidate); // its height depends on its width
    }
  }

  /** Uses the window's label font, not that of text fields. */
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
