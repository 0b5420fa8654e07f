package io.github.readfall.window.script;

import java.awt.Shape;
import java.awt.font.TextHitInfo;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A row of a line, as broken to fit.
 *
 * @param start its first UTF-16 unit, in the line
 * @param end the unit after its last
 * @param x left end of its letters, in user-space pixels from the line's left
 * @param layout its letters; empty if it has none
 */
record TextRow(int start, int end, float x, Optional<TextLayout> layout) {

  static final TextRow EMPTY = new TextRow(0, 0, 0, Optional.empty());

  /** The x of a caret before a unit of the line. */
  float caretX(int index) {
    int at = Math.min(Math.max(index - start, 0), end - start);
    return x + layout.map(l -> l.getCaretInfo(TextHitInfo.leading(at))[0]).orElse(0f);
  }

  /** The unit of the line after a caret at an x. */
  int indexAt(float atX) {
    return start + layout.map(l -> l.hitTestChar(atX - x, 0).getInsertionIndex()).orElse(0);
  }

  /** The next position of the caret to the right or left; empty at the row's end. */
  Optional<Integer> next(int index, boolean right) {
    return layout
        .flatMap(l -> Optional.ofNullable(hit(l, index - start, right)))
        .map(hit -> start + hit.getInsertionIndex());
  }

  private static @Nullable TextHitInfo hit(TextLayout layout, int from, boolean right) {
    return right ? layout.getNextRightHit(from) : layout.getNextLeftHit(from);
  }

  boolean isLeftToRight() {
    return layout.map(TextLayout::isLeftToRight).orElse(true);
  }

  /** The area of some units of the line, in this row; in several pieces if directions mix. */
  Shape room(int from, int to, float top, float height) {
    Path2D room = new Path2D.Float();
    int first = Math.max(from, start) - start;
    int last = Math.min(to, end) - start;
    if (layout.isPresent() && first < last) {
      TextLayout letters = layout.get();
      Rectangle2D bounds = new Rectangle2D.Float(0, top, letters.getAdvance(), height);
      room.append(letters.getLogicalHighlightShape(first, last, bounds), false);
      room.transform(AffineTransform.getTranslateInstance(x, 0));
    }
    return room;
  }
}
