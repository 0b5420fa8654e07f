package io.github.readfall.window.phone;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.window.parts.SeverityIcon;
import io.github.readfall.window.parts.TickIcon;
import java.awt.Color;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;

/** Renders the table of readers: text, and before the verdict an icon with the same meaning. */
final class ReadersCells extends DefaultTableCellRenderer {

  private static final long serialVersionUID = 1;

  private static final int VERDICT = 4;

  private final transient ReadersTableModel model;

  ReadersCells(ReadersTableModel model) {
    this.model = model;
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
    super.getTableCellRendererComponent(table, value, chosen, focused, row, column);
    setBorder(BorderFactory.createEmptyBorder(0, 12, 0, 8));
    boolean passes = model.row(row).seen().passes();
    boolean isQuiet = passes && column >= VERDICT;
    Color ink = chosen ? table.getSelectionForeground() : table.getForeground();
    setForeground(isQuiet && !chosen ? UIManager.getColor("Readfall.quiet") : ink);
    setToolTipText(getText());
    int size = table.getFont().getSize() * 3 / 4;
    Icon icon = passes ? new TickIcon(true, size) : new SeverityIcon(Severity.ERROR, size);
    setIcon(column == VERDICT ? icon : null);
    setIconTextGap(8);
    return this;
  }
}
