package io.github.readfall.app;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Plain words that run on in the next line, and can be read out and copied. */
final class Sentence extends JTextArea {

  private static final long serialVersionUID = 1;

  Sentence(String words) {
    setEditable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setOpaque(false);
    say(words);
  }

  /** Says something else. */
  void say(String words) {
    setText(words);
    getAccessibleContext().setAccessibleName(words);
  }

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
