package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.plan.ReadingTime;
import io.github.readfall.plan.Split;
import java.util.List;
import javax.swing.table.AbstractTableModel;

/** The parts of a split, a row for each. */
final class PartsTableModel extends AbstractTableModel {

  private static final long serialVersionUID = 1;

  private static final List<String> COLUMNS =
      List.of("number", "panels", "height", "screens", "time");

  private static final int HEIGHT = 2;

  private transient List<PartSpan> parts = List.of();
  private double limitPx = Double.MAX_VALUE;

  /**
   * Shows other parts.
   *
   * @param mostPx the greatest height of a part, in strip pixels
   */
  void show(List<PartSpan> spans, double mostPx) {
    parts = List.copyOf(spans);
    limitPx = mostPx;
    fireTableDataChanged();
  }

  /** The part of a row. */
  PartSpan part(int row) {
    return parts.get(row);
  }

  @Override
  public int getRowCount() {
    return parts.size();
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.size();
  }

  @Override
  public String getColumnName(int column) {
    return Wording.of("plan.part." + COLUMNS.get(column));
  }

  @Override
  public String getValueAt(int row, int column) {
    PartSpan span = parts.get(row);
    Split.Part part = span.part();
    return switch (column) {
      case 0 -> Integer.toString(span.number());
      case 1 -> Wording.of("plan.part.range", part.firstPanel(), part.lastPanel());
      case HEIGHT -> Long.toString(Math.round(part.heightPx()));
      case 3 -> EpisodeFigures.tenths(span.screens());
      default -> ReadingTime.of(part.seconds());
    };
  }

  /** Whether a cell has a height that is above the limit. */
  boolean isTooMuch(int row, int column) {
    return column == HEIGHT && parts.get(row).part().heightPx() > limitPx;
  }
}
