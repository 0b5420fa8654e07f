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

/** Every cue in every language, and how it goes in. */
public final class MatrixView extends JPanel {

  private static final long serialVersionUID = 1;

  private static final int CUE_SHARE = 2;

  private final MatrixTableModel model = new MatrixTableModel();
  private final JTable table = new JTable(model);
  private final JLabel sum = new JLabel(" ");
  private final transient List<Chosen> listeners = new ArrayList<>();

  /** Hears what is chosen. */
  public interface Chosen {
    /**
     * A cell is chosen.
     *
     * @param line of the script, from 1
     * @param language of the column; empty for that of the cues
     */
    void at(int line, Optional<String> language);
  }

  /**
   * A matrix without rows.
   *
   * @param head what stands above it on the left
   */
  public MatrixView(JComponent head) {
    super(new BorderLayout());
    setName("matrix");
    JPanel above = new JPanel(new MigLayout("insets 8 12 6 14, gap 8, fillx", "[][grow,right]"));
    above.add(head);
    SecondaryLabel.speaks(sum);
    above.add(sum, "wmin 0");
    add(above, BorderLayout.NORTH);
    add(PlainTable.scrolled(table));
    tune();
  }

  private void tune() {
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

  /** Shows another matrix; what is chosen stays so. */
  public void show(LanguageMatrix matrix) {
    boolean isOther = !matrix.languages().equals(model.matrix().languages());
    model.show(matrix);
    if (isOther) {
      share();
    }
    sum.setText(sum(matrix));
  }

  /** A cue needs more room than what is said of it. */
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

  /** Marks the row of a cue, and shows it. */
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
