package io.github.readfall.window.parts;

import javax.swing.JLabel;

/** The look of secondary labels: grey in every theme. */
public final class SecondaryLabel {

  private SecondaryLabel() {}

  /** Gives a label that look, in later themes as well. */
  public static void style(JLabel label) {
    label.putClientProperty("FlatLaf.style", "foreground: $Readfall.quiet");
  }
}
