package io.github.readfall.type.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures lines by setting each: for faces and directions whose widths do not add up.
 *
 * @param passage whose lines
 */
record ShapedLines(Passage passage) implements LineTable.Source {

  @Override
  public List<LineBox> linesFrom(int first, int last, double widestPx) {
    List<LineBox> boxes = new ArrayList<>();
    for (int end = first; end <= last; end++) {
      LineBox box = passage.line(first, end).box();
      if (end > first && box.width() > widestPx) {
        break;
      }
      boxes.add(box);
    }
    return boxes;
  }
}
