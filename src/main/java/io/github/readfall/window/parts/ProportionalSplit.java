package io.github.readfall.window.parts;

import java.awt.Dimension;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;

/**
 * A split pane whose parts keep their shares when it is resized, until a person moves the divider.
 */
public final class ProportionalSplit extends JSplitPane {

  private static final long serialVersionUID = 1;

  private double share;
  private boolean isLaying;

  /**
   * A split.
   *
   * @param share of the first part at first, 0 to 1
   */
  public ProportionalSplit(
      String name, int orientation, JComponent first, JComponent second, double share) {
    super(orientation, first, second);
    setName("split." + name);
    setResizeWeight(share);
    setContinuousLayout(true);
    setBorder(null);
    first.setMinimumSize(new Dimension(0, 0));
    second.setMinimumSize(new Dimension(0, 0));
    this.share = share;
    resizeByOtherKey();
  }

  /** Binds Ctrl+F8 to resizing, because F8 alone goes to the next finding. */
  private void resizeByOtherKey() {
    var keys = getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_F8, 0), "none");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_F8, InputEvent.CTRL_DOWN_MASK), "startResize");
  }

  /** The share of the first part, 0 to 1. */
  public double share() {
    return share;
  }

  private int wholePx() {
    int allPx = getOrientation() == HORIZONTAL_SPLIT ? getWidth() : getHeight();
    return Math.max(0, allPx - getDividerSize());
  }

  /** Sets the share of the first part, 0 to 1. */
  public void setShare(double part) {
    share = part;
    isLaying = true;
    setDividerLocation((int) Math.rint(part * wholePx()));
    isLaying = false;
  }

  @Override
  public void setDividerLocation(int px) {
    super.setDividerLocation(px);
    if (!isLaying && wholePx() > 0) {
      share = Math.max(0, Math.min(1, (double) px / wholePx()));
    }
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    int before = wholePx();
    super.setBounds(x, y, width, height);
    if (wholePx() != before) {
      setShare(share);
    }
  }

  @Override
  public void doLayout() {
    isLaying = true;
    super.doLayout();
    isLaying = false;
  }

  @Override
  public void paint(java.awt.Graphics g) {
    isLaying = true; // the first painting moves a divider that was never set
    super.paint(g);
    isLaying = false;
  }
}
