package io.github.readfall.type.balloon;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.WordTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Texts too long to try every breaking of: held to the best that a slow search of another kind
 * finds, many random breakings each improved as far as single moves of a break, or of two at once,
 * go.
 */
class LongTextTest {

  private static final FitRules RULES = new FitRules(44, 97, 1, 2.6, 1472, 12, true);
  private static final Enclosure ENCLOSURE = new SuperellipseEnclosure(2.5);
  private static final int STARTS = 60;

  @ParameterizedTest
  @CsvSource({"20, 1", "20, 2", "25, 3", "30, 4", "40, 5", "50, 6", "60, 7", "70, 8", "80, 9"})
  void isWithinThreePercentOfTheBestKnown(int words, int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] costs =
        random.doubles(words, -0.12, 0.37).map(cost -> cost < -0.06 ? -0.06 : cost).toArray();
    LineTable table = WordTable.of(words(random, words), 25, Set.of(), costs, 1472);
    Fit fit = Fitter.fit(table, ENCLOSURE, RULES).orElseThrow();
    double found = score(table, fit.lastSegments());
    double known = Math.min(found, bestKnown(table, fit.lastSegments().size(), random));
    assertTrue(found <= 1.03 * known, found / known + " of the best known");
  }

  private static List<double[]> words(SplittableRandom random, int n) {
    return Stream.generate(() -> new double[] {random.nextDouble(30, 330), 59, 0})
        .limit(n)
        .toList();
  }

  private static double bestKnown(LineTable table, int lines, SplittableRandom random) {
    double best = Double.POSITIVE_INFINITY;
    for (int start = 0; start < STARTS; start++) {
      int count = Math.max(1, lines - 2 + start % 5);
      List<Integer> ends = start(table, count, random);
      double score = score(table, ends);
      double before = Double.POSITIVE_INFINITY;
      while (score < before) {
        before = score;
        for (List<Integer> moved : moves(ends)) {
          double other = score(table, moved);
          ends = other < score ? moved : ends;
          score = Math.min(score, other);
        }
      }
      best = Math.min(best, score);
    }
    return best;
  }

  /** Lines of about the same number of words. */
  private static List<Integer> start(LineTable table, int count, SplittableRandom random) {
    int n = table.size();
    List<Integer> ends = new ArrayList<>();
    for (int line = 1; line < count; line++) {
      int even = (int) Math.round((double) n * line / count) - 1 + random.nextInt(-1, 2);
      int least = ends.isEmpty() ? 0 : ends.get(ends.size() - 1) + 1;
      ends.add(Math.max(least, Math.min(even, n - 1 - (count - line))));
    }
    ends.add(n - 1);
    return ends;
  }

  private static List<List<Integer>> moves(List<Integer> ends) {
    List<List<Integer>> moves = new ArrayList<>();
    for (int i = 0; i < ends.size() - 1; i++) {
      for (int by : new int[] {-2, -1, 1, 2}) {
        moves.add(moved(ends, i, by));
        for (int next = i + 1; next < Math.min(i + 3, ends.size() - 1); next++) {
          moves.add(moved(moved(ends, i, by), next, by));
          moves.add(moved(moved(ends, i, by), next, -by));
        }
      }
    }
    return moves;
  }

  private static List<Integer> moved(List<Integer> ends, int line, int by) {
    List<Integer> moved = new ArrayList<>(ends);
    moved.set(line, moved.get(line) + by);
    return moved;
  }

  private static double score(LineTable table, List<Integer> ends) {
    List<LineBox> boxes = new ArrayList<>();
    double cost = 0;
    int first = 0;
    for (int last : ends) {
      if (last < first || last > table.lastOf(first)) {
        return Double.POSITIVE_INFINITY;
      }
      boxes.add(table.box(first, last));
      cost += table.costs().ofLine(first, last);
      cost += last < table.size() - 1 ? table.costs().after(last) : 0;
      first = last + 1;
    }
    cost += table.costs().ofShape(ends.stream().mapToInt(end -> end).toArray(), ends.size());
    Stack stack = Stack.of(boxes, RULES.leadingPx());
    double area = ENCLOSURE.smallest(stack, RULES, Double.POSITIVE_INFINITY).areaPx2();
    return area * Math.max(0.4, 1 + cost);
  }
}
