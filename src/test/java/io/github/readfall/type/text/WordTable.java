package io.github.readfall.type.text;

import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** A table of lines made of plain numbers: words of given widths, alike in height. */
public final class WordTable {

  private WordTable() {}

  /**
   * Lines of words, each as high as the highest of its words and as deep as the deepest.
   *
   * @param words for each word its width, ascent and descent
   * @param space between two words
   */
  public static LineTable of(List<double[]> words, double space) {
    return of(words, space, Set.of(), new double[words.size()], Double.MAX_VALUE);
  }

  /**
   * The same, where lines must end after some words and end after others at a cost.
   *
   * @param forcedAfter numbers of the words that a line must end after
   * @param costs of ending a line after each word
   * @param widestPx lines wider than this are left out
   */
  public static LineTable of(
      List<double[]> words,
      double space,
      Set<Integer> forcedAfter,
      double[] costs,
      double widestPx) {
    LineTable.Source source =
        (first, last, widest) -> {
          List<LineBox> boxes = new ArrayList<>();
          for (int end = first; end <= last; end++) {
            LineBox box = line(words.subList(first, end + 1), space);
            if (end > first && box.width() > widest) {
              break;
            }
            boxes.add(box);
          }
          return boxes;
        };
    List<Segment> segments =
        IntStream.range(0, words.size())
            .mapToObj(i -> new Segment(i, i + 1, forcedAfter.contains(i), false))
            .toList();
    return LineTable.of(source, segments, BreakCosts.of(costs), widestPx);
  }

  private static LineBox line(List<double[]> words, double space) {
    double width = words.stream().mapToDouble(word -> word[0]).sum() + space * (words.size() - 1);
    double ascent = words.stream().mapToDouble(word -> word[1]).max().orElse(0);
    double descent = words.stream().mapToDouble(word -> word[2]).max().orElse(0);
    return new LineBox(0, width, -ascent, descent);
  }
}
