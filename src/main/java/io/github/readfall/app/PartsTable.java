package io.github.readfall.app;

import io.github.readfall.plan.PartSpan;
import io.github.readfall.wording.Wording;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;

/** The parts of a split: which panels, how tall, how long they are read. */
final class PartsTable extends JTable {

  private static final long serialVersionUID = 1;

  private static final int MOST_ROWS = 5;
  private static final int[] SHARES = {4, 6, 9, 6, 10};

  private final PartsModel model;

  PartsTable() {
    this(new PartsModel());
  }

  private PartsTable(PartsModel parts) {
    super(parts);
    model = parts;
    setName("plan.parts");
    getAccessibleContext().setAccessibleName(Wording.of("plan.parts"));
    DefaultTableCellRenderer trailing = new DefaultTableCellRenderer();
    trailing.setHorizontalAlignment(SwingConstants.TRAILING);
    setDefaultRenderer(Object.class, trailing);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setShowGrid(false);
    getTableHeader().setReorderingAllowed(false);
    if (getTableHeader().getDefaultRenderer() instanceof JLabel names) {
      names.setHorizontalAlignment(SwingConstants.TRAILING);
    }
    share();
  }

  /** Shows other parts; what is chosen stays so, where there is as much. */
  void show(List<PartSpan> parts, double mostPx) {
    int chosen = getSelectedRow();
    model.show(parts, mostPx);
    if (chosen >= 0 && chosen < parts.size()) {
      setRowSelectionInterval(chosen, chosen);
    }
  }

  /** The part that is chosen. */
  Optional<PartSpan> chosen() {
    return getSelectedRow() < 0 ? Optional.empty() : Optional.of(model.part(getSelectedRow()));
  }

  /** Tells of every part that is chosen. */
  void onChosen(Consumer<PartSpan> listener) {
    getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!event.getValueIsAdjusting()) {
                chosen().ifPresent(listener);
              }
            });
  }

  private void share() {
    int em = getFont().getSize();
    for (int i = 0; i < getColumnCount(); i++) {
      getColumnModel().getColumn(i).setPreferredWidth(SHARES[i] * em);
    }
    setRowHeight(em * 2);
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
