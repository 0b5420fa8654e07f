package io.github.readfall.cli.report;

import io.github.readfall.type.text.DisplayCells;
import java.util.List;
import java.util.stream.Collectors;

/** Rows of text with their columns under one another in a terminal, whatever the script. */
final class TextTable {

  private TextTable() {}

  /**
   * The rows, a line each.
   *
   * @param rows all with as many cells
   * @param right for each column, whether it is flush right
   */
  static String of(List<List<String>> rows, List<Boolean> right) {
    int[] widths = new int[right.size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], DisplayCells.of(row.get(i)));
      }
    }
    return rows.stream().map(row -> line(row, right, widths)).collect(Collectors.joining());
  }

  private static String line(List<String> row, List<Boolean> right, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String gap = " ".repeat(widths[i] - DisplayCells.of(row.get(i)));
      line.append(i == 0 ? "  " : "   ");
      line.append(right.get(i) ? gap + row.get(i) : row.get(i) + gap);
    }
    return line.toString().stripTrailing() + "\n";
  }
}
