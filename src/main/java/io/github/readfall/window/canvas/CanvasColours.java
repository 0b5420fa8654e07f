package io.github.readfall.window.canvas;

import java.awt.Color;
import javax.swing.UIManager;

/**
 * The theme's colours around a strip.
 *
 * @param surroundings around the strip
 * @param edge of the fine line around the strip
 * @param mark of what the caret or the selected finding refers to
 * @param ground under lines over the strip, so that they are visible on any art
 * @param focus around the component with the focus
 * @param text beside the strip
 */
record CanvasColours(
    Color surroundings, Color edge, Color mark, Color ground, Color focus, Color text) {

  /** The colours of the present theme. */
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
