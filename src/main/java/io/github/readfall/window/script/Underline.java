package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import java.util.List;
import javax.swing.text.Position;

/**
 * A finding at its place in the text; the place moves with the text.
 *
 * @param finding what was found
 * @param stretches of text it is about, at least one, one to a line
 */
record Underline(Finding finding, List<Stretch> stretches) {

  Underline {
    stretches = List.copyOf(stretches);
  }

  /** From one place of the text up to another, or a place alone. */
  record Stretch(Position from, Position to) {

    int start() {
      return from.getOffset();
    }

    int end() {
      return Math.max(start(), to.getOffset());
    }

    /** Whether an offset is in it or at its end. */
    boolean has(int offset) {
      return offset >= start() && offset <= end();
    }
  }

  /** Where it begins. */
  int start() {
    return stretches.get(0).start();
  }

  boolean has(int offset) {
    return stretches.stream().anyMatch(stretch -> stretch.has(offset));
  }
}
