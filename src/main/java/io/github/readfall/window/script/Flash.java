package io.github.readfall.window.script;

import java.awt.Color;
import java.util.Optional;
import javax.swing.Timer;

/** Highlights the line that was navigated to, and fades it. */
final class Flash {

  private static final int STEPS = 12;
  private static final int STEP_MS = 70;

  private final ScriptArea area;
  private final Timer timer = new Timer(STEP_MS, e -> fade());
  private int left;
  private int offset;

  Flash(ScriptArea area) {
    this.area = area;
  }

  void light(int at) {
    offset = at;
    left = STEPS;
    timer.restart();
    area.repaint();
  }

  Optional<Color> of(int start, int end) {
    boolean lit = left > 0 && offset >= start && offset < end;
    return lit ? Optional.of(colour()) : Optional.empty();
  }

  private Color colour() {
    ScriptColours colours = area.look().colours();
    float part = (float) left / STEPS;
    return new Color(
        mix(colours.flash().getRed(), colours.caretLine().getRed(), part),
        mix(colours.flash().getGreen(), colours.caretLine().getGreen(), part),
        mix(colours.flash().getBlue(), colours.caretLine().getBlue(), part));
  }

  private static int mix(int lit, int usual, float part) {
    return Math.round(lit * part + usual * (1 - part));
  }

  private void fade() {
    left--;
    if (left <= 0) {
      timer.stop();
    }
    area.repaint();
  }
}
