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

/**
 * The table of how large the smallest letters of the strip look, phone by phone and reader by
 * reader.
 */
public final class ReadersView extends JPanel {

  private static final long serialVersionUID = 1;

  /** Widths of the columns, as multiples of the font size. House default, no source. */
  private static final List<Integer> SHARES = List.of(14, 9, 6, 6, 12, 24);

  private static final int LEAST_SHARE_PERCENT = 83;
  private static final int LEAST_EM = 5;

  private final ReadersTableModel model = new ReadersTableModel();
  private final JTable table = new JTable(model);
  private final JLabel sum = new JLabel(" ");
  private transient Chosen chosen = (phone, line) -> {};
  private boolean isRefreshing;

  /** A listener for selected rows. */
  public interface Chosen {
    /**
     * Called when a row is selected.
     *
     * @param line of the script, from 1, with the smallest letters
     */
    void at(Phone phone, int line);
  }

  /**
   * A table without rows.
   *
   * @param head component above it on the left
   */
  public ReadersView(JComponent head) {
    super(new BorderLayout());
    setName("readers");
    JPanel above = new JPanel(new MigLayout("insets 8 12 6 14, gap 8, fillx", "[][grow,right]"));
    above.add(head);
    SecondaryLabel.style(sum);
    sum.setName("readers.sum");
    above.add(sum, "wmin 0");
    add(above, BorderLayout.NORTH);
    add(PlainTable.scrolled(table));
    setUp();
    listen();
    share();
  }

  private void setUp() {
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

  /** Selects a row. */
  public void choose(int row) {
    table.setRowSelectionInterval(row, row);
  }

  /** Shows the figures of another strip; the selected row stays selected. */
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
      boolean isLast = i == SHARES.size() - 1; // text may end in an ellipsis, figures may not
      column.setMinWidth(isLast ? LEAST_EM * em : LEAST_SHARE_PERCENT * em * SHARES.get(i) / 100);
    }
    table.setRowHeight(2 * em);
  }

  public void onChosen(Chosen listener) {
    chosen = listener;
  }

  /** Moves the focus to the table. */
  public void focusTable() {
    table.requestFocusInWindow();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (table != null) { // the superclass calls this before the fields are set
      share();
    }
  }
}
