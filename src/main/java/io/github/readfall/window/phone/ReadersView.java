package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.window.parts.CueWords;
import io.github.readfall.window.parts.Listen;
import io.github.readfall.window.parts.PlainTable;
import io.github.readfall.window.parts.SecondaryLabel;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
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
    add(PlainTable.scrolled(table));
    tune();
    listen();
    share();
  }

  private void tune() {
    String title = Wording.of("readers.title");
    var cells = new ReadersCells(model);
    PlainTable.style(table, "readers.table", title, cells, SwingConstants.LEADING);
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
    Listen.toChoice(table, this::choose);
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
