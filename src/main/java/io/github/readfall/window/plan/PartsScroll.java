package io.github.readfall.window.plan;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;

/** The scrolled list of the parts of a split; at least two rows are visible. */
final class PartsScroll extends JScrollPane {

  private static final long serialVersionUID = 1;

  private static final int LEAST_ROWS = 2;

  private final PartsTable parts;

  PartsScroll(PartsTable parts) {
    super(parts);
    this.parts = parts;
    setBorder(BorderFactory.createEmptyBorder());
  }

  @Override
  public Dimension getMinimumSize() {
    int header = parts.getTableHeader().getPreferredSize().height;
    return new Dimension(0, header + LEAST_ROWS * parts.getRowHeight());
  }
}
