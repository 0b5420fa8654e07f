package io.github.readfall.window.parts;

import io.github.readfall.base.viewing.Colour;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.UIManager;

/**
 * What a colour looks like; an empty frame where there is none.
 *
 * @param sizePx of the icon's square, in the window's pixels
 */
public record SwatchIcon(Optional<Colour> colour, int sizePx) implements Icon {

  @Override
  public void paintIcon(Component component, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    var square = new RoundRectangle2D.Double(x + 0.5, y + 0.5, sizePx - 1, sizePx - 1, 6, 6);
    colour.ifPresent(
        filled -> {
          g.setColor(new Color(filled.rgb()));
          g.fill(square);
        });
    g.setColor(UIManager.getColor("Readfall.quiet"));
    g.draw(square);
    g.dispose();
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
