package io.github.readfall.window.parts;

import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.TableCellRenderer;

/** The look that all tables of the window share: no grid, fixed columns, one selected row. */
public final class PlainTable {

  private PlainTable() {}

  /**
   * Gives a table that look.
   *
   * @param name of the table, in tests
   * @param title of the table, for screen readers
   * @param headings alignment of the headings, as in {@link JLabel#setHorizontalAlignment}
   */
  public static void style(
      JTable table, String name, String title, TableCellRenderer cells, int headings) {
    table.setName(name);
    table.getAccessibleContext().setAccessibleName(title);
    table.setDefaultRenderer(Object.class, cells);
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setShowGrid(false);
    table.getTableHeader().setReorderingAllowed(false);
    if (table.getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
      heading.setHorizontalAlignment(headings);
    }
  }

  /** A table in a scroll pane without a border, and as high as the pane. */
  public static JScrollPane scrolled(JTable table) {
    table.setFillsViewportHeight(true);
    JScrollPane scroll = new JScrollPane(table);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    return scroll;
  }
}
