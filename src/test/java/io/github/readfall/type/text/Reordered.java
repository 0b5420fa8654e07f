package io.github.readfall.type.text;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A stretch of one level and one kind of face, by {@link java.text.Bidi}.
 *
 * @param rightToLeft whether its level is odd
 */
public record Reordered(String text, boolean rightToLeft) {

  /** The runs of a line from left to right. */
  public static List<Reordered> runs(
      String text, int from, int to, Language language, IntUnaryOperator face) {
    int base = language.rightToLeft() ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT;
    Bidi line = new Bidi(text.replace('\n', ' '), base).createLineBidi(from, to);
    List<Reordered> runs = new ArrayList<>();
    List<Byte> levels = new ArrayList<>();
    for (int start = 0, end; start < to - from; start = end) {
      int level = line.getLevelAt(start);
      int kind = face.applyAsInt(text.charAt(from + start));
      end = start + 1;
      while (end < to - from
          && line.getLevelAt(end) == level
          && face.applyAsInt(text.charAt(from + end)) == kind) {
        end++;
      }
      runs.add(new Reordered(text.substring(from + start, from + end), (level & 1) != 0));
      levels.add((byte) level);
    }
    byte[] bytes = new byte[levels.size()];
    IntStream.range(0, bytes.length).forEach(i -> bytes[i] = levels.get(i));
    Object[] visual = runs.toArray();
    Bidi.reorderVisually(bytes, 0, visual, 0, visual.length);
    return Stream.of(visual).map(Reordered.class::cast).toList();
  }
}
