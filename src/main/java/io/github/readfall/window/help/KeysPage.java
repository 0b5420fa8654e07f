package io.github.readfall.window.help;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.PlainTable;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** The table of all keys and their actions. */
final class KeysPage extends JPanel {

  private static final long serialVersionUID = 1;

  /** Widths of the columns, as multiples of the font size. House default, no source. */
  private static final List<Integer> SHARES = List.of(16, 26, 14);

  private final JTable table;

  KeysPage(List<KeyRow> rows) {
    super(new BorderLayout());
    table = new JTable(new Model(rows));
    String title = Wording.of("help.keys");
    PlainTable.style(table, "help.keys", title, new Cells(), SwingConstants.LEADING);
    add(PlainTable.scrolled(table));
    share();
  }

  private void share() {
    int em = UIManager.getFont("defaultFont").getSize();
    for (int i = 0; i < SHARES.size(); i++) {
      table.getColumnModel().getColumn(i).setPreferredWidth(em * SHARES.get(i));
    }
    table.setRowHeight(2 * em);
  }

  /** The component that gets the focus. */
  JComponent first() {
    return table;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (table != null) { // the superclass calls this before the fields are set
      share();
    }
  }

  private static final class Cells extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
      super.getTableCellRendererComponent(table, value, chosen, focused, row, column);
      setBorder(BorderFactory.createEmptyBorder(0, 12, 0, 8));
      setToolTipText(getText());
      return this;
    }
  }

  private static final class Model extends AbstractTableModel {
    private static final long serialVersionUID = 1;
    private static final List<String> COLUMNS = List.of("key", "does", "where");

    private final transient List<KeyRow> rows;

    Model(List<KeyRow> rows) {
      this.rows = List.copyOf(rows);
    }

    @Override
    public int getRowCount() {
      return rows.size();
    }

    @Override
    public int getColumnCount() {
      return COLUMNS.size();
    }

    @Override
    public String getColumnName(int column) {
      return Wording.of("help.keys." + COLUMNS.get(column));
    }

    @Override
    public String getValueAt(int row, int column) {
      KeyRow shown = rows.get(row);
      return switch (COLUMNS.get(column)) {
        case "key" -> shown.keys();
        case "does" -> shown.doesInWords();
        default -> shown.whereInWords();
      };
    }
  }
}
