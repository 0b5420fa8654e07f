package io.github.readfall.window.languages;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.languages.translate.Budget;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * A bar that shows how full a balloon is, with marks at the number of characters that fit
 * comfortably and at most. Beyond the second mark it has another colour.
 */
final class BudgetBar extends JComponent implements Accessible {

  private static final long serialVersionUID = 1;

  private static final int HEIGHT_PX = 8;

  /** Position of the maximum, as a share of the bar, so that an excess is visible. */
  private static final double MOST_AT = 0.8;

  private int characters;
  private transient Optional<Budget> budget = Optional.empty();

  BudgetBar() {
    setName("translation.budget");
  }

  /** Shows a number of characters, in code points, of a budget. */
  void show(int written, Optional<Budget> of) {
    characters = written;
    budget = of;
    setVisible(of.isPresent());
    setToolTipText(of.map(b -> words(written, b)).orElse(""));
    getAccessibleContext().setAccessibleName(getToolTipText());
    repaint();
  }

  private static String words(int written, Budget budget) {
    return Wording.of("translation.budget", written, budget.comfortable(), budget.most());
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(12 * HEIGHT_PX, HEIGHT_PX * 2);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    budget.ifPresent(
        of -> {
          Graphics2D g = (Graphics2D) graphics.create();
          g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
          double perCharacter = MOST_AT * getWidth() / of.most();
          bar(g, UIManager.getColor("Readfall.line"), getWidth());
          bar(g, ink(of), Math.min(getWidth(), perCharacter * characters));
          mark(g, perCharacter * of.comfortable());
          mark(g, perCharacter * of.most());
          g.dispose();
        });
  }

  private Color ink(Budget of) {
    String key =
        characters <= of.comfortable()
            ? "Readfall.fits"
            : characters <= of.most() ? "Readfall.warning" : "Readfall.error";
    return UIManager.getColor(key);
  }

  private void bar(Graphics2D g, Color ink, double length) {
    double y = (getHeight() - HEIGHT_PX) / 2.0;
    g.setColor(ink);
    g.fill(new RoundRectangle2D.Double(0, y, length, HEIGHT_PX, HEIGHT_PX, HEIGHT_PX));
  }

  private void mark(Graphics2D g, double x) {
    g.setColor(UIManager.getColor("Label.foreground"));
    g.fillRect((int) Math.rint(x), (getHeight() - 2 * HEIGHT_PX) / 2, 1, 2 * HEIGHT_PX);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleBar();
    }
    return accessibleContext;
  }

  private final class AccessibleBar extends AccessibleJComponent {
    private static final long serialVersionUID = 1;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.PROGRESS_BAR;
    }
  }
}
