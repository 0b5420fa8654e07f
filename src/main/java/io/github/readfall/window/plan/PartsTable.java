package io.github.readfall.window.plan;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.window.parts.PlainTable;
import io.github.readfall.window.parts.SeverityIcon;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;

/** The parts of a split: their panels, heights and reading times. */
final class PartsTable extends JTable {

  private static final long serialVersionUID = 1;

  private static final int MOST_ROWS = 4;

  /** Widths of the columns, in tenths of the font size. */
  private static final List<Integer> NEEDED = List.of(26, 40, 46, 44, 56);

  private static final int TENTHS = 10;

  private final PartsTableModel model;
  private boolean isFilling;

  PartsTable() {
    this(new PartsTableModel());
  }

  private PartsTable(PartsTableModel parts) {
    super(parts);
    model = parts;
    String title = Wording.of("plan.parts");
    PlainTable.style(this, "plan.parts", title, new Cells(), SwingConstants.TRAILING);
    getTableHeader().putClientProperty("FlatLaf.style", "cellMargins: 3,2,3,3");
    share();
  }

  /**
   * Shows other parts; the selected row stays selected if it still exists, and listeners are not
   * called.
   */
  void show(List<PartSpan> parts, double mostPx) {
    int chosen = getSelectedRow();
    isFilling = true;
    model.show(parts, mostPx);
    if (chosen >= 0 && chosen < parts.size()) {
      setRowSelectionInterval(chosen, chosen);
    }
    isFilling = false;
  }

  /** The selected part. */
  Optional<PartSpan> chosen() {
    return getSelectedRow() < 0 ? Optional.empty() : Optional.of(model.part(getSelectedRow()));
  }

  /** Adds a listener for every part that the person selects. */
  void onChosen(Consumer<PartSpan> listener) {
    getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!event.getValueIsAdjusting() && !isFilling) {
                chosen().ifPresent(listener);
              }
            });
  }

  private void share() {
    int em = getFont().getSize();
    for (int i = 0; i < getColumnCount(); i++) {
      getColumnModel().getColumn(i).setPreferredWidth(NEEDED.get(i) * em / TENTHS);
    }
    setRowHeight(em * 2);
  }

  /** Fills the viewport; if that is too narrow, the table scrolls horizontally. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() == null || getPreferredSize().width < getParent().getWidth();
  }

  /** Renders figures at the trailing edge, with a triangle before one that exceeds the limit. */
  private final class Cells extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1;

    private Cells() {
      setHorizontalAlignment(TRAILING);
    }

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean selected, boolean focused, int row, int column) {
      super.getTableCellRendererComponent(table, value, selected, focused, row, column);
      boolean isTooMuch = model.isTooMuch(row, column);
      setIcon(isTooMuch ? new SeverityIcon(Severity.WARNING, getFont().getSize() * 3 / 4) : null);
      return this;
    }
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return new Dimension(0, getRowHeight() * Math.min(MOST_ROWS, getRowCount()));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (model != null) { // the superclass calls this before the fields are set
      share();
    }
  }
}
