package io.github.readfall.window.parts;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** A panel that is scrolled vertically, and always as wide as its viewport. */
public final class WidePanel extends JPanel implements Scrollable {

  private static final long serialVersionUID = 1;

  public WidePanel(JComponent inner) {
    super(new BorderLayout());
    add(inner, BorderLayout.NORTH);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return getFontMetrics(getFont()).getHeight();
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return visible.height;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
