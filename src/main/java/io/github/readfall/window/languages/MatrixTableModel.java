package io.github.readfall.window.languages;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.parts.LanguageName;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;

/** The matrix as a table: first the cue, then a column for every language. */
final class MatrixTableModel extends AbstractTableModel {

  private static final long serialVersionUID = 1;

  private transient LanguageMatrix matrix = LanguageMatrix.EMPTY;

  /** Shows another matrix. */
  void show(LanguageMatrix next) {
    boolean isSameTable =
        next.languages().equals(matrix.languages()) && next.rows().size() == matrix.rows().size();
    matrix = next;
    if (isSameTable && getRowCount() > 0) {
      fireTableRowsUpdated(0, getRowCount() - 1);
    } else {
      fireTableStructureChanged();
    }
  }

  LanguageMatrix matrix() {
    return matrix;
  }

  /** The row of a cue. */
  LanguageMatrix.Row row(int index) {
    return matrix.rows().get(index);
  }

  /** The language of a column; empty for the column of cues. */
  Optional<String> language(int column) {
    return column == 0 ? Optional.empty() : Optional.of(matrix.languages().get(column - 1));
  }

  @Override
  public int getRowCount() {
    return matrix.rows().size();
  }

  @Override
  public int getColumnCount() {
    return 1 + matrix.languages().size();
  }

  @Override
  public String getColumnName(int column) {
    return language(column).map(LanguageName::of).orElse(Wording.of("matrix.cue"));
  }

  @Override
  public Object getValueAt(int row, int column) {
    LanguageMatrix.Row cues = row(row);
    return column == 0 ? cues.cue() : cues.cells().get(column - 1);
  }
}
