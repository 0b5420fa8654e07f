package io.github.readfall.app;

import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Sentences that are broken where there is no room for them in one line. */
final class Sentence {

  private Sentence() {}

  /** Room for one, empty; it can be read, not written. */
  static JTextArea area() {
    JTextArea text = new Words();
    text.setEditable(false);
    text.setFocusable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setOpaque(false);
    text.setBorder(BorderFactory.createEmptyBorder());
    return text;
  }

  /** In the letters of the window, not in those of a text that is written. */
  private static final class Words extends JTextArea {
    private static final long serialVersionUID = 1;

    @Override
    public void updateUI() {
      super.updateUI();
      setFont(UIManager.getFont("defaultFont"));
    }
  }
}
