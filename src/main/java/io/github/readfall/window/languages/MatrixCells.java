package io.github.readfall.window.languages;

import io.github.readfall.script.Cue;
import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.parts.CueWords;
import java.awt.Color;
import java.awt.Component;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;

/** Renders the matrix: a cue, or how well it fits in one language. */
final class MatrixCells extends DefaultTableCellRenderer {

  private static final long serialVersionUID = 1;

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
    super.getTableCellRendererComponent(table, "", chosen, focused, row, column);
    setBorder(BorderFactory.createEmptyBorder(0, 12, 0, 8));
    Color ink = chosen ? table.getSelectionForeground() : table.getForeground();
    Color quiet = chosen ? ink : UIManager.getColor("Readfall.quiet");
    if (value instanceof Cue cue) {
      render(CueWords.of(cue), Optional.empty(), ink);
    } else if (value instanceof LanguageMatrix.Cell cell) {
      int size = table.getFont().getSize() * 3 / 4;
      boolean isPlain = VerdictWords.severity(cell).isEmpty();
      render(
          VerdictWords.brief(cell),
          Optional.of(new VerdictIcon(cell, size)),
          isPlain ? quiet : ink);
    }
    return this;
  }

  private void render(String words, Optional<Icon> icon, Color ink) {
    setText(words);
    setToolTipText(words);
    setIcon(icon.orElse(null));
    setIconTextGap(8);
    setForeground(ink);
    getAccessibleContext().setAccessibleName(words);
  }
}
