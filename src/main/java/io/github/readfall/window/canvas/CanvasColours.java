package io.github.readfall.window.canvas;

import java.awt.Color;
import javax.swing.UIManager;

/**
 * The colours round a strip, from the theme.
 *
 * @param surroundings behind the strip
 * @param edge a fine line round it
 * @param mark what the caret or the chosen finding means
 * @param ground under lines over the strip, so that they are seen on any art
 * @param focus round what has the focus
 * @param text beside the strip
 */
record CanvasColours(
    Color surroundings, Color edge, Color mark, Color ground, Color focus, Color text) {

  /** As the theme has it now. */
  static CanvasColours now() {
    return new CanvasColours(
        colour("Readfall.canvas.background", "Panel.background", new Color(0xe4e1db)),
        colour("Readfall.canvas.edge", "Component.borderColor", new Color(0xb8b4ac)),
        colour("Readfall.canvas.mark", "Component.accentColor", new Color(0x1f6fb2)),
        colour("Readfall.canvas.ground", "List.background", new Color(0xfdfcfa)),
        colour("Readfall.canvas.focus", "Component.accentColor", new Color(0x1f6fb2)),
        colour("Readfall.canvas.text", "Label.foreground", new Color(0x3b3a38)));
  }

  private static Color colour(String own, String standard, Color plain) {
    Color ours = UIManager.getColor(own);
    Color theirs = ours == null ? UIManager.getColor(standard) : ours;
    return theirs == null ? plain : theirs;
  }
}
