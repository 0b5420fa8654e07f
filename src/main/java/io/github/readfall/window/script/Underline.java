package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import java.util.List;
import javax.swing.text.Position;

/**
 * A finding at its place in the text; the place moves with the text.
 *
 * @param finding that is underlined
 * @param stretches of the text, at least one, one to a line
 */
record Underline(Finding finding, List<Stretch> stretches) {

  Underline {
    stretches = List.copyOf(stretches);
  }

  /** A range of the text, which may be empty. */
  record Stretch(Position from, Position to) {

    int start() {
      return from.getOffset();
    }

    int end() {
      return Math.max(start(), to.getOffset());
    }

    /** Whether an offset is in the range or at its end. */
    boolean has(int offset) {
      return offset >= start() && offset <= end();
    }
  }

  /** The offset of its beginning. */
  int start() {
    return stretches.get(0).start();
  }

  boolean has(int offset) {
    return stretches.stream().anyMatch(stretch -> stretch.has(offset));
  }
}
