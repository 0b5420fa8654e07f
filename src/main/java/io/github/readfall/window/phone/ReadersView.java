package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.window.parts.CueWords;
import io.github.readfall.window.parts.SecondaryLabel;
import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumn;
import net.miginfocom.swing.MigLayout;

/** How the smallest letters of the strip are seen, phone by phone and reader by reader. */
public final class ReadersView extends JPanel {

  private static final long serialVersionUID = 1;

  /** Widths of the columns, as shares of the letters' size. House default, no source. */
  private static final List<Integer> SHARES = List.of(14, 9, 6, 6, 12, 24);

  private static final int LEAST_SHARE_PERCENT = 83;
  private static final int LEAST_EM = 5;

  private final ReadersTableModel model = new ReadersTableModel();
  private final JTable table = new JTable(model);
  private final JLabel sum = new JLabel(" ");
  private transient Chosen chosen = (phone, line) -> {};
  private boolean isRefreshing;

  /** Hears what is chosen. */
  public interface Chosen {
    /**
     * A row is chosen.
     *
     * @param line of the script, from 1, that the smallest letters say
     */
    void at(Phone phone, int line);
  }

  /**
   * A table without rows.
   *
   * @param head what stands above it on the left
   */
  public ReadersView(JComponent head) {
    super(new BorderLayout());
    setName("readers");
    JPanel above = new JPanel(new MigLayout("insets 8 12 6 14, gap 8, fillx", "[][grow,right]"));
    above.add(head);
    SecondaryLabel.speaks(sum);
    sum.setName("readers.sum");
    above.add(sum, "wmin 0");
    add(above, BorderLayout.NORTH);
    JScrollPane scroll = new JScrollPane(table);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    add(scroll);
    tune();
    listen();
    share();
  }

  private void tune() {
    table.setName("readers.table");
    table.getAccessibleContext().setAccessibleName(Wording.of("readers.title"));
    table.setDefaultRenderer(Object.class, new ReadersCells(model));
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setShowGrid(false);
    table.setFillsViewportHeight(true);
    JTableHeader header = table.getTableHeader();
    header.setReorderingAllowed(false);
    if (header.getDefaultRenderer() instanceof JLabel names) {
      names.setHorizontalAlignment(JLabel.LEADING);
    }
  }

  private void listen() {
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!event.getValueIsAdjusting() && !isRefreshing) {
                choose();
              }
            });
    table.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            choose();
          }
        });
    table
        .getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "choose");
    table.getActionMap().put("choose", new Choose());
  }

  private final class Choose extends AbstractAction {
    private static final long serialVersionUID = 1;

    @Override
    public void actionPerformed(ActionEvent event) {
      choose();
    }
  }

  private void choose() {
    int row = table.getSelectedRow();
    if (row >= 0) {
      Phone phone = model.row(row).seen().phone();
      model.cue().ifPresent(cue -> chosen.at(phone, cue.line()));
    }
  }

  /** Chooses a row. */
  public void choose(int row) {
    table.setRowSelectionInterval(row, row);
  }

  /** Shows how another strip is seen; what is chosen stays so. */
  public void show(SetEpisode set) {
    isRefreshing = true;
    model.show(set);
    isRefreshing = false;
    sum.setText(
        model
            .audit()
            .map(
                one ->
                    Wording.of(
                        "readers.sum",
                        one.kind().inWords(),
                        String.format(Locale.ROOT, "%.1f", one.heightPx()),
                        model.cue().map(CueWords::of).orElse("")))
            .orElse(Wording.of("readers.none")));
  }

  private void share() {
    int em = UIManager.getFont("defaultFont").getSize();
    for (int i = 0; i < SHARES.size(); i++) {
      TableColumn column = table.getColumnModel().getColumn(i);
      column.setPreferredWidth(em * SHARES.get(i));
      boolean isLast = i == SHARES.size() - 1; // what is said may end in dots, figures may not
      column.setMinWidth(isLast ? LEAST_EM * em : LEAST_SHARE_PERCENT * em * SHARES.get(i) / 100);
    }
    table.setRowHeight(2 * em);
  }

  public void onChosen(Chosen listener) {
    chosen = listener;
  }

  /** Gives the keyboard to the table. */
  public void focusTable() {
    table.requestFocusInWindow();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (table != null) { // called by the constructor above
      share();
    }
  }
}
