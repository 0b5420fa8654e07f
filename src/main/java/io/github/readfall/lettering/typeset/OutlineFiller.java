package io.github.readfall.lettering.typeset;

import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.Stack;
import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineTable;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills an outline with a text from its top, line by line, each line as full as its place allows:
 * no other breaking into that many lines in those places reaches further.
 *
 * @param table every line of the text
 * @param tails parts of words that fit when the whole word does not
 * @param rules the text's
 * @param room in the outline
 */
record OutlineFiller(LineTable table, WordTails tails, FitRules rules, OutlineRoom room) {

  /** Shifts of the lines up and down that are tried, as shares of the greatest shift. */
  private static final List<Double> SHIFTS =
      List.of(0.0, -1.0, 1.0, -0.5, 0.5, -0.75, 0.75, -0.25, 0.25);

  /** Times that lines are centred again, once their height is known. */
  private static final int ROUNDS = 3;

  /**
   * A beginning that fits.
   *
   * @param segments number of whole segments
   * @param units number of UTF-16 units of the segment after them
   */
  record Reach(int segments, int units) {

    static final Reach NOTHING = new Reach(0, 0);

    Reach orFurther(Reach other) {
      boolean further =
          other.segments > segments || (other.segments == segments && other.units > units);
      return further ? other : this;
    }
  }

  /** A possible end of the last line. */
  private record End(LineBox box, Reach reach) {}

  Reach furthest() {
    Reach best = Reach.NOTHING;
    for (int rows = 1; (rows - 1) * rules.leadingPx() <= 2 * room.highestPx(); rows++) {
      for (double shift : SHIFTS) {
        int most = table.lastOf(0);
        while (most >= 0) {
          best = best.orFurther(furthest(rows, shift * rules.maxShiftPx(), most, best));
          most = rows == 1 ? -1 : lowerFirstLine(most);
        }
      }
    }
    return best;
  }

  /** The longest first line, shorter than another, that is not as high: an accent may be in it. */
  private int lowerFirstLine(int last) {
    int shorter = last - 1;
    while (shorter >= 0 && table.box(0, shorter).top() <= table.box(0, last).top()) {
      shorter--;
    }
    return shorter;
  }

  private Reach furthest(int rows, double shiftPx, int firstAtMost, Reach before) {
    Reach best = before;
    double span = (rows - 1) * rules.leadingPx();
    double top = table.box(0, 0).top();
    double bottom = table.box(0, 0).bottom();
    for (int round = 0; round < ROUNDS; round++) {
      double baseline = shiftPx - (top + span + bottom) / 2;
      List<LineBox> boxes = new ArrayList<>();
      int next = fill(rows - 1, baseline, firstAtMost, boxes);
      if (boxes.size() < rows - 1 || next == table.size()) {
        return best;
      }
      List<End> ends = ends(next, baseline + span, best);
      best = best.orFurther(furthest(boxes, ends, shiftPx));
      top = rows == 1 ? top : boxes.get(0).top();
      bottom = ends.isEmpty() ? bottom : ends.get(0).box().bottom();
    }
    return best;
  }

  /** Fills so many lines, the first with its baseline so far below the outline's middle. */
  private int fill(int rows, double firstBaselinePx, int firstAtMost, List<LineBox> boxes) {
    int next = 0;
    for (int row = 0; row < rows && next < table.size(); row++) {
      int goes = lastOf(next, firstBaselinePx + row * rules.leadingPx());
      int last = row == 0 ? Math.min(goes, firstAtMost) : goes;
      if (last < next) {
        break;
      }
      boxes.add(table.box(next, last));
      next = last + 1;
    }
    return next;
  }

  private int lastOf(int first, double baselinePx) {
    int last = first - 1;
    while (last < table.lastOf(first) && goes(table.box(first, last + 1), baselinePx)) {
      last++;
    }
    return last;
  }

  private boolean goes(LineBox box, double baselinePx) {
    return box.width() <= room.widthPx(baselinePx, box);
  }

  /**
   * The possible ends of the last line, the most first: part of a word after whole ones, then
   * those.
   */
  private List<End> ends(int first, double baselinePx, Reach best) {
    int last = lastOf(first, baselinePx);
    List<End> ends = new ArrayList<>();
    if (last + 1 < table.size() && last + 1 >= best.segments()) {
      addTail(first, last, baselinePx, ends);
    }
    for (int end = last; end >= Math.max(first, best.segments() - 1); end--) {
      ends.add(new End(table.box(first, end), new Reach(end + 1, 0)));
    }
    return ends;
  }

  private void addTail(int first, int last, double baselinePx, List<End> ends) {
    boolean alone = last < first;
    LineBox before = alone ? new LineBox(0, 0, 0, 0) : table.box(first, last);
    double beforePx = alone ? 0 : before.width() + spacePx(last);
    LineBox word = table.box(last + 1, last + 1);
    double widest =
        alone
            ? room.widthPx(baselinePx, word)
            : Math.min(room.widthPx(baselinePx, word), room.widthPx(baselinePx, before));
    WordTails.Tail tail = tails.within(last + 1, widest - beforePx);
    if (tail.units() > 0) {
      double width = beforePx + tail.box().width();
      double top = Math.min(before.top(), tail.box().top());
      double bottom = Math.max(before.bottom(), tail.box().bottom());
      ends.add(new End(new LineBox(0, width, top, bottom), new Reach(last + 1, tail.units())));
    }
  }

  /** The space between a segment and the next; the rest of the line if that is not known. */
  private double spacePx(int segment) {
    return table.lastOf(segment) > segment
        ? table.box(segment, segment + 1).width()
            - table.box(segment, segment).width()
            - table.box(segment + 1, segment + 1).width()
        : Double.POSITIVE_INFINITY;
  }

  /** The first end with which the lines keep their margin when they are set in the balloon. */
  private Reach furthest(List<LineBox> lines, List<End> ends, double shiftPx) {
    for (End end : ends) {
      List<LineBox> all = new ArrayList<>(lines);
      all.add(end.box());
      if (room.holds(Stack.of(all, rules.leadingPx()), shiftPx)) {
        return end.reach();
      }
    }
    return Reach.NOTHING;
  }
}
