package io.github.readfall.window.languages;

import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.parts.SeverityIcon;
import io.github.readfall.window.parts.SquareIcon;
import io.github.readfall.window.parts.TickIcon;
import java.awt.Graphics2D;

/**
 * How well a cue fits, shown by form as well as colour: a tick if it fits as it is, else the icon
 * of its severity; a dash if there is nothing to judge.
 *
 * @param cell of the matrix
 * @param sizePx of the icon's square, in the window's pixels
 */
record VerdictIcon(LanguageMatrix.Cell cell, int sizePx) implements SquareIcon {

  @Override
  public void draw(Graphics2D g) {
    boolean isFitted = cell.translated().isTranslated() && cell.fitted().isPresent();
    VerdictWords.severity(cell)
        .<SquareIcon>map(severity -> new SeverityIcon(severity, sizePx))
        .orElse(new TickIcon(isFitted, sizePx))
        .draw(g);
  }
}
