package io.github.readfall.lettering.typeset;

import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineBreaks;
import io.github.readfall.type.text.LineBreaks.Segment;
import io.github.readfall.type.text.Passage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Measures the part of a word that fits when the whole does not: it could end between any two
 * letters (UAX #29, grapheme clusters). Remembers its measurements; for one thread.
 */
final class WordTails {

  private final Passage whole;
  private final Passage letters;
  private final Map<Integer, Integer> letterAt = new HashMap<>();
  private final Map<Integer, LineBox> boxes = new HashMap<>();

  /**
   * The beginning of a word.
   *
   * @param units UTF-16; 0 for nothing
   * @param box of those units
   */
  record Tail(int units, LineBox box) {

    static final Tail NOTHING = new Tail(0, new LineBox(0, 0, 0, 0));
  }

  WordTails(Passage whole, LineBreaks breaks) {
    this.whole = whole;
    this.letters = whole.cutFiner(0, breaks);
    List<Segment> segments = letters.segments();
    for (int i = 0; i < segments.size(); i++) {
      letterAt.put(segments.get(i).start(), i);
    }
  }

  /** The longest beginning of a segment that is no wider than this. */
  Tail within(int segment, double widestPx) {
    Segment word = whole.segments().get(segment);
    int first = letterAt.getOrDefault(word.start(), 0);
    int goes = first - 1;
    int tooMany = letterAt.getOrDefault(word.end(), letters.segments().size());
    while (tooMany - goes > 1) {
      int middle = (goes + tooMany) / 2;
      boolean fits = box(first, middle).width() <= widestPx;
      goes = fits ? middle : goes;
      tooMany = fits ? tooMany : middle;
    }
    return goes < first
        ? Tail.NOTHING
        : new Tail(letters.segments().get(goes).end() - word.start(), box(first, goes));
  }

  private LineBox box(int first, int last) {
    return boxes.computeIfAbsent(last, end -> letters.line(first, end).box());
  }
}
