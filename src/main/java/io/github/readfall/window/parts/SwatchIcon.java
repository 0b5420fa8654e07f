package io.github.readfall.window.parts;

import io.github.readfall.base.viewing.Colour;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.swing.UIManager;

/**
 * A sample of a colour, or an empty frame without one.
 *
 * @param colour shown
 * @param sizePx of the icon's square, in the window's pixels
 */
public record SwatchIcon(Optional<Colour> colour, int sizePx) implements SquareIcon {

  @Override
  public void draw(Graphics2D g) {
    var square = new RoundRectangle2D.Double(0.5, 0.5, sizePx - 1, sizePx - 1, 6, 6);
    colour.ifPresent(
        filled -> {
          g.setColor(new Color(filled.rgb()));
          g.fill(square);
        });
    g.setColor(UIManager.getColor("Readfall.quiet"));
    g.draw(square);
  }
}
