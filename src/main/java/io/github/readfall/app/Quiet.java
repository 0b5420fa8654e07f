package io.github.readfall.app;

import javax.swing.JLabel;

/** Words that stand back; in the colour of whatever look is worn. */
final class Quiet {

  private Quiet() {}

  /** Lets a label stand back, also in a look that is put on later. */
  static void speaks(JLabel label) {
    label.putClientProperty("FlatLaf.style", "foreground: $Readfall.quiet");
  }
}
