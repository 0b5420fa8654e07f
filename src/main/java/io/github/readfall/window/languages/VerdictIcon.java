package io.github.readfall.window.languages;

import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.parts.SeverityIcon;
import io.github.readfall.window.parts.TickIcon;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;

/**
 * How a cue goes in, told by form as well as colour: a tick where it does as it is, else how grave
 * it is as {@link SeverityIcon} tells it; a dash where there is nothing to tell.
 *
 * @param cell of the matrix
 * @param sizePx of the icon's square, in the window's pixels
 */
record VerdictIcon(LanguageMatrix.Cell cell, int sizePx) implements Icon {

  @Override
  public void paintIcon(Component component, Graphics graphics, int x, int y) {
    boolean isIn = cell.translated().isTranslated() && cell.fitted().isPresent();
    Icon plain = new TickIcon(isIn, sizePx);
    VerdictWords.severity(cell)
        .<Icon>map(severity -> new SeverityIcon(severity, sizePx))
        .orElse(plain)
        .paintIcon(component, graphics, x, y);
  }

  @Override
  public int getIconWidth() {
    return sizePx;
  }

  @Override
  public int getIconHeight() {
    return sizePx;
  }
}
