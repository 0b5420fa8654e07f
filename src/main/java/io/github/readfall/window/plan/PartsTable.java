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

/** The parts of a split: which panels, how tall, how long they are read. */
final class PartsTable extends JTable {

  private static final long serialVersionUID = 1;

  private static final int MOST_ROWS = 4;

  /** What a column needs, in tenths of the letters' size. */
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

  /** Shows other parts; what is chosen stays so, where there is as much, and is not told again. */
  void show(List<PartSpan> parts, double mostPx) {
    int chosen = getSelectedRow();
    isFilling = true;
    model.show(parts, mostPx);
    if (chosen >= 0 && chosen < parts.size()) {
      setRowSelectionInterval(chosen, chosen);
    }
    isFilling = false;
  }

  /** The part that is chosen. */
  Optional<PartSpan> chosen() {
    return getSelectedRow() < 0 ? Optional.empty() : Optional.of(model.part(getSelectedRow()));
  }

  /** Tells of every part that the person chooses. */
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

  /** As wide as there is room; where that is not enough, it is scrolled across. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() == null || getPreferredSize().width < getParent().getWidth();
  }

  /** Figures at the trailing edge, a triangle before one that is too much. */
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
    if (model != null) { // called by the constructor above
      share();
    }
  }
}
