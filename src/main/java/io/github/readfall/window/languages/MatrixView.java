package io.github.readfall.window.languages;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.polyglot.Verdict;
import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.parts.Listen;
import io.github.readfall.window.parts.PlainTable;
import io.github.readfall.window.parts.SecondaryLabel;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** The table of every cue in every language, and how well it fits. */
public final class MatrixView extends JPanel {

  private static final long serialVersionUID = 1;

  private static final int CUE_SHARE = 2;

  private final MatrixTableModel model = new MatrixTableModel();
  private final JTable table = new JTable(model);
  private final JLabel sum = new JLabel(" ");
  private final transient List<Chosen> listeners = new ArrayList<>();

  /** A listener for selected cells. */
  public interface Chosen {
    /**
     * Called when a cell is selected.
     *
     * @param line of the script, from 1
     * @param language of the column; empty for the column of cues
     */
    void at(int line, Optional<String> language);
  }

  /**
   * A matrix without rows.
   *
   * @param head component above it on the left
   */
  public MatrixView(JComponent head) {
    super(new BorderLayout());
    setName("matrix");
    JPanel above = new JPanel(new MigLayout("insets 8 12 6 14, gap 8, fillx", "[][grow,right]"));
    above.add(head);
    SecondaryLabel.style(sum);
    above.add(sum, "wmin 0");
    add(above, BorderLayout.NORTH);
    add(PlainTable.scrolled(table));
    setUp();
  }

  private void setUp() {
    String title = Wording.of("matrix.title");
    PlainTable.style(table, "matrix.table", title, new MatrixCells(), SwingConstants.LEADING);
    table.setCellSelectionEnabled(true);
    Listen.toChoice(table, this::choose);
  }

  private void choose() {
    int row = table.getSelectedRow();
    int column = table.getSelectedColumn();
    if (row >= 0 && column >= 0) {
      int line = model.row(row).cue().line();
      listeners.forEach(listener -> listener.at(line, model.language(column)));
    }
  }

  /** Shows another matrix; the selected cell stays selected. */
  public void show(LanguageMatrix matrix) {
    boolean isOther = !matrix.languages().equals(model.matrix().languages());
    model.show(matrix);
    if (isOther) {
      share();
    }
    sum.setText(sum(matrix));
  }

  /** Sets the widths of the columns: a cue needs more room than its verdicts. */
  private void share() {
    for (int i = 0; i < table.getColumnCount(); i++) {
      int width = table.getFont().getSize() * 10;
      table.getColumnModel().getColumn(i).setPreferredWidth(i == 0 ? CUE_SHARE * width : width);
    }
    table.setRowHeight(table.getFont().getSize() * 2);
  }

  private static String sum(LanguageMatrix matrix) {
    List<LanguageMatrix.Cell> cells =
        matrix.rows().stream().flatMap(row -> row.cells().stream()).toList();
    return Wording.of(
        "matrix.sum",
        count(cells, Verdict.SHORTER),
        count(cells, Verdict.LARGER),
        count(cells, Verdict.TIGHTER),
        cells.stream().filter(cell -> !cell.translated().isTranslated()).count());
  }

  private static long count(List<LanguageMatrix.Cell> cells, Verdict verdict) {
    return cells.stream()
        .filter(cell -> cell.translated().isTranslated())
        .filter(cell -> cell.fitted().filter(cue -> cue.verdict() == verdict).isPresent())
        .count();
  }

  /** Selects the row of a cue, and scrolls to it. */
  public void point(String cueId) {
    for (int i = 0; i < model.getRowCount(); i++) {
      if (model.row(i).cue().id().equals(cueId) && table.getSelectedRow() != i) {
        int column = Math.max(0, table.getSelectedColumn());
        table.changeSelection(i, column, false, false);
      }
    }
  }

  public void onChosen(Chosen listener) {
    listeners.add(listener);
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
