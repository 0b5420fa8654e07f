package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.ScreenScale;
import io.github.readfall.base.wording.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.BoundedRangeModel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** The outline of a bank card, whose right edge is dragged until a real card is as wide. */
final class CardFrame extends JPanel {

  private static final long serialVersionUID = 1;

  /** Radius of a card's corner (ISO/IEC 7810, 3.18 mm; from memory). */
  private static final double CORNER_MM = 3.18;

  private final BoundedRangeModel width;

  /**
   * A frame.
   *
   * @param width of the card, in {@link CardDialog#STEPS_PER_PX} steps to a pixel
   */
  CardFrame(BoundedRangeModel width) {
    this.width = width;
    setName("card.frame");
    setOpaque(false);
    getAccessibleContext().setAccessibleName(Wording.of("card.frame"));
    setBorder(BorderFactory.createEmptyBorder(4, 4, 4, 16));
    setCursor(Cursor.getPredefinedCursor(Cursor.E_RESIZE_CURSOR));
    width.addChangeListener(event -> changed());
    MouseAdapter dragging = new Dragging();
    addMouseListener(dragging);
    addMouseMotionListener(dragging);
  }

  private void changed() {
    revalidate();
    repaint();
  }

  /** Drags the edge by as much as the mouse moves. */
  private final class Dragging extends MouseAdapter {
    private int gripX;
    private int gripValue;

    @Override
    public void mousePressed(MouseEvent event) {
      gripX = event.getX();
      gripValue = width.getValue();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
      width.setValue(gripValue + (event.getX() - gripX) * CardDialog.STEPS_PER_PX);
    }
  }

  private double widthPx() {
    return (double) width.getValue() / CardDialog.STEPS_PER_PX;
  }

  private double px(double mm) {
    return ScreenScale.ofCard(widthPx()).px(mm);
  }

  @Override
  public Dimension getPreferredSize() {
    Insets air = getInsets();
    return new Dimension(
        (int) Math.ceil(widthPx()) + air.left + air.right,
        (int) Math.ceil(px(ScreenScale.CARD_HEIGHT_MM)) + air.top + air.bottom);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    Insets air = getInsets();
    g.translate(air.left, air.top);
    double tall = px(ScreenScale.CARD_HEIGHT_MM);
    double round = 2 * px(CORNER_MM);
    RoundRectangle2D card = new RoundRectangle2D.Double(0, 0, widthPx(), tall, round, round);
    g.setColor(UIManager.getColor("List.background"));
    g.fill(card);
    g.setColor(UIManager.getColor("Readfall.quiet"));
    g.draw(card);
    edge(g, tall);
    g.dispose();
  }

  /** Draws the edge with its handle. */
  private void edge(Graphics2D g, double tall) {
    Color mark = UIManager.getColor("Readfall.canvas.mark");
    double x = widthPx();
    double inset = px(CORNER_MM);
    g.setColor(mark);
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(x, inset, x, tall - inset));
    double knob = getFont().getSize2D() * 0.8;
    g.fill(new Ellipse2D.Double(x - knob / 2, (tall - knob) / 2, knob, knob));
  }
}
