package io.github.readfall.window.parts;

import javax.swing.JLabel;

/** Words that stand back; in the colour of whatever look is worn. */
public final class SecondaryLabel {

  private SecondaryLabel() {}

  /** Lets a label stand back, also in a look that is put on later. */
  public static void speaks(JLabel label) {
    label.putClientProperty("FlatLaf.style", "foreground: $Readfall.quiet");
  }
}
